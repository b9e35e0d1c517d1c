import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stepTemplate, type TemplatePlan, type TemplateSteppingInput } from '../src/index.ts';

// Small against the pitch, so that an exact turn differs from a small one by less than the allowance below.
const limit = numberArb({ min: 0, max: 0.001 });
const inputs: fc.Arbitrary<TemplateSteppingInput> = fc
  .record({
    columns: fc.integer({ min: 2, max: 6 }),
    rows: fc.integer({ min: 2, max: 5 }),
    template: fc.record({ columns: fc.integer({ min: 2, max: 4 }), rows: fc.integer({ min: 2, max: 4 }) }),
    pitchXMm: numberArb({ min: 60, max: 120 }),
    pitchYMm: numberArb({ min: 60, max: 120 }),
    leastPinSpanMm: fc.constant(0),
    playInTemplateMm: limit,
    playInHoleMm: limit,
    datumErrorMm: limit,
    boringErrorMm: limit,
    templatePitchErrorMm: limit,
  })
  .filter(({ columns, rows, template }) => template.columns <= columns && template.rows <= rows)
  // Pins a millionth further apart are as far apart: which pair is taken then depends on the unit.
  .filter(({ pitchXMm, pitchYMm }) =>
    [1, 2, 3, 4].every((m) =>
      [1, 2, 3, 4].every(
        (n) => m * pitchXMm === n * pitchYMm || Math.abs(m * pitchXMm - n * pitchYMm) > 0.01,
      ),
    ),
  );

/** Even numbers from a seed (the linear congruence of the ISO C standard's example). */
function seeded(seed: number) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    return ((state >> 8) & 0xffff) / 0x10000;
  };
}

type Vector = readonly [number, number];

/** Bores the plan once with errors spread evenly over discs, turning the template exactly; gives each hole's error. */
function boredOnce(input: TemplateSteppingInput, plan: TemplatePlan, random: () => number) {
  const disc = (radiusMm: number): Vector => {
    const [far, angle] = [radiusMm * Math.sqrt(random()), 2 * Math.PI * random()];
    return [far * Math.cos(angle), far * Math.sin(angle)];
  };
  const oneWay = (limitMm: number) => disc(limitMm)[0];
  const { pitchXMm, pitchYMm, template } = input;
  const off = [oneWay(input.templatePitchErrorMm), oneWay(input.templatePitchErrorMm)] as const;
  const guide = (i: number, j: number): Vector => [i * (pitchXMm + off[0]), j * (pitchYMm + off[1])];
  const bored = new Map<string, Vector>();
  for (const { column, row, pins, bores } of plan.placements) {
    let turn: number;
    let shift: Vector;
    if (pins.length === 0) {
      const [lengthMm, depthMm] = [(template.columns - 1) * pitchXMm, (template.rows - 1) * pitchYMm];
      const [one, two, three] = [0, 1, 2].map(() => oneWay(input.datumErrorMm)) as [number, number, number];
      const long = lengthMm >= depthMm;
      turn = long ? Math.atan((two - one) / lengthMm) : -Math.atan((two - one) / depthMm);
      shift = [column * pitchXMm + (long ? three : one), row * pitchYMm + (long ? one : three)];
    } else {
      const [[a, g], [b, h]] = pins.map((pin) => {
        const [x, y] = bored.get(`${pin.column}/${pin.row}`) as Vector;
        const [[p, q], [r, s]] = [disc(input.playInTemplateMm / 2), disc(input.playInHoleMm / 2)];
        return [[x + p + r, y + q + s], guide(pin.column - column, pin.row - row)] as const;
      }) as [readonly [Vector, Vector], readonly [Vector, Vector]];
      turn = Math.atan2(b[1] - a[1], b[0] - a[0]) - Math.atan2(h[1] - g[1], h[0] - g[0]);
      const [mx, my] = [(g[0] + h[0]) / 2, (g[1] + h[1]) / 2];
      shift = [
        (a[0] + b[0]) / 2 - Math.cos(turn) * mx + Math.sin(turn) * my,
        (a[1] + b[1]) / 2 - Math.sin(turn) * mx - Math.cos(turn) * my,
      ];
    }
    for (const at of bores) {
      const [x, y] = guide(at.column - column, at.row - row);
      const [p, q] = disc(input.boringErrorMm);
      bored.set(`${at.column}/${at.row}`, [
        shift[0] + Math.cos(turn) * x - Math.sin(turn) * y + p,
        shift[1] + Math.sin(turn) * x + Math.cos(turn) * y + q,
      ]);
    }
  }
  return plan.holes.map(({ column, row }) => {
    const [x, y] = bored.get(`${column}/${row}`) as Vector;
    return [x - column * pitchXMm, y - row * pitchYMm] as const;
  });
}

test('bored by chance with exact turns, no hole passes the worst case and the spread is half the root-sum-square', () => {
  fc.assert(
    fc.property(inputs, fc.nat(1e6), (input, seed) => {
      const plan = stepTemplate(input);
      const RUNS = 400;
      const squares = plan.holes.map(() => [0, 0] as [number, number]);
      const random = seeded(seed);
      for (let run = 0; run < RUNS; run++) {
        for (const [i, [x, y]] of boredOnce(input, plan, random).entries()) {
          const { worstCase } = plan.holes[i] as TemplatePlan['holes'][number];
          expect(Math.abs(x)).toBeLessThanOrEqual(worstCase.xMm * 1.001 + 1e-5);
          expect(Math.abs(y)).toBeLessThanOrEqual(worstCase.yMm * 1.001 + 1e-5);
          const sum = squares[i] as [number, number];
          sum[0] += x * x;
          sum[1] += y * y;
        }
      }
      for (const [i, [x, y]] of squares.entries()) {
        const { rootSumSquare } = plan.holes[i] as TemplatePlan['holes'][number];
        // 400 draws know a spread to 3.5 %; six times that is allowed.
        for (const [sum, limitMm] of [
          [x, rootSumSquare.xMm],
          [y, rootSumSquare.yMm],
        ] as const) {
          expect(Math.abs(Math.sqrt(sum / RUNS) - limitMm / 2)).toBeLessThanOrEqual(0.11 * limitMm + 1e-5);
        }
      }
    }),
    { numRuns: 30 },
  );
});

test('larger limits never lower an error; the first placement knows nothing of pins; inches and millimetres agree', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      const { holes } = stepTemplate(input);
      const loose = stepTemplate({ ...input, playInHoleMm: input.playInHoleMm + 0.5 }).holes;
      const inInches = Object.fromEntries(
        Object.entries(input).map(([name, value]) => [
          name,
          typeof value === 'number' && name.endsWith('Mm') ? value / 25.4 : value,
        ]),
      ) as unknown as TemplateSteppingInput;
      const converted = stepTemplate(inInches).holes;
      for (const [i, { worstCase, rootSumSquare, placementIndex }] of holes.entries()) {
        const after = loose[i];
        expect(worstCase.distanceMm).toBeGreaterThanOrEqual(rootSumSquare.distanceMm - 1e-12);
        expect(after?.worstCase.distanceMm).toBeGreaterThanOrEqual(worstCase.distanceMm - 1e-12);
        if (placementIndex === 0) expect(after?.worstCase).toEqual(worstCase);
        const share = (converted[i]?.worstCase.distanceMm ?? Number.NaN) * 25.4;
        expect(Math.abs(share - worstCase.distanceMm)).toBeLessThanOrEqual(
          1e-9 + worstCase.distanceMm * 1e-9,
        );
      }
    }),
  );
});

test('turned over its diagonal, the problem takes as many placements; a larger template never more', () => {
  let looked = 0;
  fc.assert(
    fc.property(inputs, (input) => {
      const swap = ({ columns, rows }: { columns: number; rows: number }) => ({
        columns: rows,
        rows: columns,
      });
      const plan = stepTemplate(input);
      const turned = stepTemplate({
        ...input,
        ...swap(input),
        template: swap(input.template),
        pitchXMm: input.pitchYMm,
        pitchYMm: input.pitchXMm,
      });
      const wider = { ...input.template, columns: Math.min(input.columns, input.template.columns + 1) };
      const larger = stepTemplate({ ...input, template: wider });
      if (!plan.proven || !turned.proven || !larger.proven) return;
      looked += 1;
      expect(turned.placements.length).toBe(plan.placements.length);
      expect(larger.placements.length).toBeLessThanOrEqual(plan.placements.length);
    }),
  );
  expect(looked).toBeGreaterThan(50);
});
