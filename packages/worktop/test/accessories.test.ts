import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Accessory, type Plan, planWorktop } from '../src/index.ts';
import { usedBench } from './used-bench.ts';

const sewingFrame = usedBench().accessories?.[0] as Accessory;

const standing = (change: Partial<Accessory>, plan = usedBench()): Plan => ({
  ...plan,
  accessories: [{ ...sewingFrame, ...change }],
});

const planned = (plan: Plan) => {
  const result = planWorktop(plan);
  const check = result.checks.find(({ id }) => id === 'accessories');
  const [one] = result.accessories ?? [];
  if (!one || !check) throw new Error('nothing stands in the holes');
  return { ...one, check, swing: result.swing };
};

/** Pins two pitches of 104 mm apart across the grain. */
const across = [
  { xMm: 10, yMm: 20 },
  { xMm: 10, yMm: 228 },
];

describe('what stands in the holes', () => {
  test('along the grain only errors count against it', () => {
    // Pins 4 pitches apart: from 9 of 13 columns, in 5 rows. Worst case, fixed fasteners of ASME Y14.5: least hole less
    // largest pin less both position errors on both sides, 15.875 − 15.3 − 2 × (0.1 + 0.1) = 0.175 mm.
    const { placeCount, holes, fit, check } = planned(usedBench());
    expect(placeCount).toBe(45);
    expect(holes).toEqual([
      { row: 1, column: 1 },
      { row: 1, column: 5 },
    ]);
    expect(fit?.now.worstCase.marginMm).toBeCloseTo(0.175, 9);
    expect(check.status).toBe('pass');
    expect(check.says).toMatch(
      /^sewing frame: 45 places on the top, first with row 1, column 1 .* as drilled 0\.17 mm to spare/,
    );
  });

  test('across the grain the top carries the pins’ holes away from each other', () => {
    // The holes' distance changes by 208 mm × the share that the top shrinks by, of which each pin takes half; and the
    // hole itself is as much narrower.
    const { fit, swing, check } = planned(standing({ pins: across }));
    const shrunk = swing.shrinkPct / 100;
    expect(fit?.now.worstCase.marginMm).toBeCloseTo(0.175, 9);
    const dry = 15.875 * (1 - shrunk) - 15.3 - 2 * (0.1 + 0.1) - 208 * shrunk;
    expect(fit?.shrunken.worstCase.marginMm).toBeCloseTo(dry, 6);
    // In the damp season places in the wood are off by as much more as it has swollen.
    const swollen = swing.swellPct / 100;
    const damp = 15.875 - 15.3 - 2 * (0.1 * (1 + swollen) + 0.1) - 208 * swollen;
    expect(fit?.swollen.worstCase.marginMm).toBeCloseTo(damp, 6);
    expect(Math.max(dry, damp)).toBeLessThan(-0.9);
    expect(check.status).toBe('fail');
    expect(check.says).toMatch(
      /in the dry season 1\.\d\d mm too tight\. A slot for one pin would do: across the grain, 2\d\.\d mm long overall, for the pin at x 10, y (20|228)/,
    );
  });

  test('the slot that would help does', () => {
    const { fit } = planned(standing({ pins: across }));
    const slot = fit?.slot;
    // Free by the slot’s length, the pin may stand that much nearer: with as much more play all round it fits.
    const slotMm = slot?.lengthMm as number;
    const thinner = standing({
      pins: across,
      leastPinMm: sewingFrame.leastPinMm - slotMm,
      mostPinMm: sewingFrame.mostPinMm - slotMm,
    });
    expect(planned(thinner).check.status).toBe('pass');
  });

  test('what goes in only as far as errors are not all at their limits is a warning', () => {
    // 15.875 − 15.48 − 0.4 is −0.005 mm; independent errors, some 0.3 mm better, still let it in.
    expect(planned(standing({ leastPinMm: 15.4, mostPinMm: 15.48 })).check.status).toBe('warn');
  });

  test.each<[string, Partial<Accessory>]>([
    [
      'longer than the grid',
      {
        pins: [
          { xMm: 0, yMm: 0 },
          { xMm: 13 * 112, yMm: 0 },
        ],
      },
    ],
    [
      'two pins at one hole',
      {
        pins: [
          { xMm: 0, yMm: 0 },
          { xMm: 30, yMm: 0 },
        ],
      },
    ],
  ])('%s it stands nowhere', (_, change) => {
    const { placeCount, fit, holes, check } = planned(standing(change));
    expect([placeCount, fit, holes, check.status]).toEqual([0, null, null, 'fail']);
    expect(check.says).toMatch(
      /^accessories\[0\]\.pins \(sewing frame\): nowhere on the top has it a hole for each pin/,
    );
  });

  test('pins beside the pitch find the nearest hole, and fail by what they miss it by', () => {
    // 450 instead of 448 mm: each pin misses by 1 mm, so 2 mm of the diameter; 0.175 − 2 = −1.825 mm.
    const { fit, check } = planned(
      standing({
        pins: [
          { xMm: 0, yMm: 0 },
          { xMm: 450, yMm: 0 },
        ],
      }),
    );
    expect(fit?.now.worstCase.marginMm).toBeCloseTo(-1.825, 6);
    expect(check.status).toBe('fail');
  });

  test('holes that are left out are no places for it', () => {
    // A rail under the middle column, x = 68 + 6 × 112 = 740, takes its five holes away: 8 of 12 columns remain on each
    // side, and pins 4 columns apart find 9 places in a row less the two that need column 7.
    const plan = usedBench();
    const rail = { name: 'middle rail', xMm: 735, yMm: 40, lengthMm: 10, widthMm: 560, clearanceMm: 6 };
    const { placeCount } = planned({
      ...plan,
      base: { ...plan.base, members: [...plan.base.members, rail] },
      holes: { ...plan.holes, blocked: 'leave out' },
    });
    expect(placeCount).toBe(5 * (9 - 2));
  });

  test.each<[string, Partial<Accessory>, RegExp]>([
    [
      'pins that overlap',
      {
        pins: [
          { xMm: 0, yMm: 0 },
          { xMm: 15, yMm: 0 },
        ],
      },
      /requires accessories\[0\]\.pins\[1\] to be at least 15\.5 mm from pins\[0\]/,
    ],
    [
      'holes of another bit',
      { leastHoleMm: 19, mostHoleMm: 19.2 },
      /requires accessories\[0\]\.leastHoleMm to be at most 17\.463 mm, a tenth over/,
    ],
    [
      'holes that no such bit leaves',
      { leastHoleMm: 12, mostHoleMm: 12.1 },
      /requires accessories\[0\]\.mostHoleMm to be at least 14\.287 mm, a tenth under/,
    ],
    [
      'holes that overlap',
      { mostHoleMm: 110 },
      /requires accessories\[0\]\.mostHoleMm to be at most 103\.8 mm/,
    ],
  ])('%s are refused', (_, change, message) => {
    expect(() => planWorktop(standing(change))).toThrow(message);
  });
});

describe('laws', () => {
  const pins = fc
    .uniqueArray(fc.record({ column: fc.nat(12), row: fc.nat(4) }), {
      minLength: 1,
      maxLength: 4,
      selector: ({ column, row }) => 5 * column + row,
    })
    .map((places) => places.map(({ column, row }) => ({ xMm: 112 * column, yMm: 104 * row })));

  test('it stands wherever each pin has a hole below it, and nowhere else', () => {
    const shift = numberArb({ min: -500, max: 500 });
    fc.assert(
      fc.property(pins, shift, shift, fc.nat(64), (places, dx, dy, leftOut) => {
        const plan = usedBench();
        const gone = { xMm: 68 + 112 * (leftOut % 13), yMm: 160 + 104 * Math.floor(leftOut / 13) };
        const post = {
          name: 'post',
          xMm: gone.xMm - 5,
          yMm: gone.yMm - 5,
          lengthMm: 10,
          widthMm: 10,
          clearanceMm: 1,
        };
        const found = planWorktop({
          ...plan,
          base: { ...plan.base, members: [...plan.base.members, post] },
          holes: { ...plan.holes, blocked: 'leave out' },
          accessories: [
            { ...sewingFrame, pins: places.map(({ xMm, yMm }) => ({ xMm: xMm + dx, yMm: yMm + dy })) },
          ],
        });
        const [first] = places;
        const counted = found.holes.filter((hole) =>
          places.every((pin) =>
            found.holes.some(
              ({ xMm, yMm }) =>
                Math.hypot(
                  hole.xMm + pin.xMm - (first?.xMm ?? 0) - xMm,
                  hole.yMm + pin.yMm - (first?.yMm ?? 0) - yMm,
                ) < 1,
            ),
          ),
        );
        expect(found.accessories?.[0]?.placeCount).toBe(counted.length);
      }),
      { numRuns: 40 },
    );
  });

  test('thicker pins never fit better', () => {
    const grave = { pass: 0, warn: 1, fail: 2 };
    fc.assert(
      fc.property(pins, numberArb({ min: 0, max: 0.8 }), numberArb({ min: 0, max: 0.8 }), (places, a, b) => {
        const of = (thickerMm: number) =>
          planned(standing({ pins: places, leastPinMm: 15, mostPinMm: 15.1 + thickerMm }));
        const [thin, thick] = [of(Math.min(a, b)), of(Math.max(a, b))];
        expect(grave[thick.check.status]).toBeGreaterThanOrEqual(grave[thin.check.status]);
        if (!thin.fit || !thick.fit) return;
        for (const season of ['now', 'swollen', 'shrunken'] as const) {
          const margin = thin.fit[season].worstCase.marginMm;
          expect(thick.fit[season].worstCase.marginMm).toBeLessThanOrEqual(margin + 1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });
});
