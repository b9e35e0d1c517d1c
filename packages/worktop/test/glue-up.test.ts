import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GlueUp, OfferedBoard, Plan, PlannedGlueUp } from '../src/index.ts';
import { planWorktop } from '../src/index.ts';
import { builtBench, checkOf, glueUp } from './shop-sections.ts';

const glued = (changes: Partial<GlueUp> = {}, plan = builtBench()): Plan => ({
  ...plan,
  glueUp: { ...glueUp, ...changes },
});

const partOf = (plan: Plan): PlannedGlueUp => {
  const { glueUp: part } = planWorktop(plan);
  if (!part) throw new Error('no glue-up');
  return part;
};

const ofWood = (species: string, plan = builtBench()): Plan => ({ ...plan, top: { ...plan.top, species } });

test('the bench by hand: boards, joints, glue, clamps and weight', () => {
  const part = partOf(glued());
  // 640 + 10 = 650 mm are glued: 5 boards of 130 mm, 136 mm before they are jointed.
  expect(part.boardCount).toBe(5);
  expect(part.jointedWidthMm).toBeCloseTo(130, 9);
  expect(part.roughWidthMm).toBeCloseTo(136, 9);
  // 44.45 + 2.55 = 47 mm when glued, 47 + 4 = 51 mm rough; 1479.55 + 40.45 = 1520 mm long
  expect(part.gluedThicknessMm).toBeCloseTo(47, 9);
  expect(part.roughThicknessMm).toBeCloseTo(51, 9);
  expect(part.roughLengthMm).toBeCloseTo(1520, 9);
  // 5 mm off each edge: 125, 130, 130, 130, 125
  expect(part.boards.map(({ widthMm }) => Math.round(widthMm))).toEqual([125, 130, 130, 130, 125]);
  expect(part.boards.map(({ heart }) => heart)).toEqual(['up', 'down', 'up', 'down', 'up']);
  expect(part.boards.every(({ ringAngleDeg }) => ringAngleDeg === 0)).toBe(true);
  // Four joints of 1.52 × 0.047 m: 0.28576 m²; 200 g/m² is 57.152 g, and with a fifth lost 71.44 g
  expect(part.glueLineM2).toBeCloseTo(0.28576, 9);
  expect(part.glueMassG).toBeCloseTo(71.44, 6);
  // 1 N/mm² × 1520 × 47 = 71 440 N: 14.3 clamps of 5 kN, so 15, one each 1520 / 15 = 101.33 mm
  expect(part.clamping?.forceN).toBeCloseTo(71_440, 6);
  expect(part.clamping?.clampCount).toBe(15);
  expect(part.clamping?.spacingMm).toBeCloseTo(101.33, 2);
  // 1.47955 × 0.64 × 0.04445 m = 0.0420902 m³, at 695.89 kg/m³ 29.290 kg
  expect(part.stages.at(-1)?.massKg).toBeCloseTo(29.29, 2);
  for (const id of ['boards', 'gluing', 'panel'])
    expect([id, checkOf(glued(), id).status]).toEqual([id, 'pass']);
});

test('quartersawn boards have their rings square to the face, and their check says what 45° would do', () => {
  const plan = builtBench();
  const turned: Plan = { ...plan, top: { ...plan.top, cut: 'quartersawn' } };
  expect(partOf(turned).boards.map(({ ringAngleDeg }) => ringAngleDeg)).toEqual([90, 90, 90, 90, 90]);
  // Sugar maple: (0.00165 + 0.00353) / 2 = 0.00259
  expect(checkOf(turned, 'species').says).toMatch(/quartersawn from 45° on, where it moves by 0\.00259/);
  expect(checkOf(plan, 'species').says).not.toMatch(/45°/);
});

test('a wood whose density no table gives: volumes without masses, and it says so', () => {
  const plan = ofWood('honeylocust');
  expect(partOf(plan).stages.map(({ massKg }) => massKg)).toEqual([null, null, null, null]);
  expect(partOf(plan).stages.map(({ volumeM3 }) => volumeM3)).toEqual(
    partOf(builtBench()).stages.map(({ volumeM3 }) => volumeM3),
  );
  expect(checkOf(plan, 'panel').says).toMatch(/No table gives the density of honeylocust: weigh a board\./);
});

test('one board alone has no joint: no glue, no clamps, no verdict on them', () => {
  const plan = glued({ boardCount: 1, mostWidthMm: 700 });
  expect(partOf(plan)).toMatchObject({ boardCount: 1, glueMassG: 0, clamping: null });
  expect(planWorktop(plan).checks.map(({ id }) => id)).not.toContain('gluing');
  expect(checkOf(plan, 'panel').status).toBe('pass');
});

test('a plan without the section is asked nothing of it', () => {
  const { glueUp: _, ...plan } = builtBench();
  const result = planWorktop(plan);
  expect(result.glueUp).toBeNull();
  expect(result.checks.map(({ id }) => id).filter((id) => /boards|gluing|panel/.test(id))).toEqual([]);
});

describe('boards on offer', () => {
  const board = (changes: Partial<OfferedBoard>): OfferedBoard => ({
    name: 'maple board',
    lengthMm: 1600,
    widthMm: 160,
    thicknessMm: 52,
    eachPrice: 40,
    defects: [],
    ...changes,
  });
  const offering = (...boards: OfferedBoard[]): Plan => ({
    ...builtBench(),
    stock: { boards, boardKerfMm: 3, boardEndTrimMm: 20, boardEdgeTrimMm: 5, containers: [] },
  });

  test('that are large enough pass', () => {
    // 1520 + 2 × 20 = 1560, 136 + 2 × 5 = 146, 51
    expect(checkOf(offering(board({ lengthMm: 1560, widthMm: 146, thicknessMm: 51 })), 'boards').status).toBe(
      'pass',
    );
  });

  test.each<[string, Partial<OfferedBoard>, RegExp]>([
    ['short', { lengthMm: 1559 }, /the longest has 1519\.0 mm when its ends are trimmed$/],
    ['narrow', { widthMm: 145 }, /the widest has 135\.0 mm when its edges are trimmed$/],
    ['thin', { thicknessMm: 50.9 }, /the thickest has 50\.9 mm$/],
  ])('that are too %s fail, with what is needed', (_, changes, why) => {
    const { status, says } = checkOf(offering(board(changes)), 'boards');
    expect(status).toBe('fail');
    expect(says).toMatch(/^stock\.boards: a rough board has to be 1520\.0 mm × 136\.0 mm × 51\.0 mm; /);
    expect(says).toMatch(why);
  });

  test('that are each too small somewhere fail together', () => {
    const plan = offering(board({ name: 'short', lengthMm: 1000 }), board({ name: 'thin', thicknessMm: 40 }));
    expect(checkOf(plan, 'boards').says).toMatch(/none is long, wide and thick enough at once$/);
  });

  test('too few boards fail, and the least number is named', () => {
    // 650 / (180 − 6) = 3.7: 4 boards; 3 would have to be 650 / 3 + 6 = 222.7 mm wide
    const { status, says, margin } = checkOf(glued({ boardCount: 3 }), 'boards');
    expect(status).toBe('fail');
    expect(says).toBe(
      'glueUp.boardCount is 3, so that each has to be 222.7 mm wide; glueUp.mostWidth is 180.0 mm: take at least 4',
    );
    expect(margin?.given).toBe(180);
    expect(margin?.min).toBeCloseTo(650 / 3 + 6, 9);
    expect(checkOf(glued({ boardCount: 4 }), 'boards').status).toBe('pass');
  });
});

describe('gluing', () => {
  const at = (moisturePct: number): Plan => {
    const plan = builtBench();
    return { ...plan, top: { ...plan.top, moisturePct } };
  };

  test.each([
    [12, 'pass', /^12 % moisture content suits the glue/],
    [
      12.1,
      'fail',
      /^top\.moisturePct is 12\.1; glueUp\.glue, white glue, is for wood of 6 to 12 %: let it dry to 12 %/,
    ],
    [6, 'pass', /^6 %/],
    [5.9, 'fail', /: let it take up moisture to 6 %/],
  ])('wood at %d %%: %s', (moisturePct, status, says) => {
    const found = checkOf(at(moisturePct), 'gluing');
    expect([found.status, found.says]).toEqual([status, expect.stringMatching(says)]);
  });

  test('a pressure that the handbook does not speak of is a warning', () => {
    const weak = checkOf(glued({ glue: { ...glueUp.glue, pressureMPa: 0.2 } }), 'gluing');
    expect(weak.status).toBe('warn');
    expect(weak.says).toMatch(/\nglueUp\.glue\.pressureMPa: .*0\.2 MPa is outside 0\.689 to 1\.704 MPa/);
  });
});

describe('how boards lie', () => {
  test('outer boards trimmed to less than half warn', () => {
    // 640 + 140 = 780: 5 × 156; 70 mm off leaves 86, more than 78. With 180 mm: 164, less 90 leaves 74, under 82.
    const wide = { mostWidthMm: 200 };
    expect(checkOf(glued({ ...wide, trimWidthMm: 140 }), 'panel').status).toBe('pass');
    const sliver = checkOf(glued({ ...wide, trimWidthMm: 180 }), 'panel');
    expect(sliver.status).toBe('warn');
    expect(sliver.says).toMatch(
      /^glueUp\.trimWidth is 180\.0 mm and leaves 74\.0 mm of the outer boards, less than half of 164\.0 mm/,
    );
  });

  test('hearts all one way are a warning for flatsawn boards alone', () => {
    expect(checkOf(glued({ order: 'match' }), 'panel').says).toMatch(/^glueUp\.order: all hearts look up/);
    const plan = glued({ order: 'match' });
    expect(checkOf({ ...plan, top: { ...plan.top, cut: 'quartersawn' } }, 'panel').status).toBe('pass');
  });
});

describe('contradictions are refused by their place', () => {
  test.each<[string, Partial<GlueUp>, RegExp]>([
    [
      '200 boards are not enough',
      { leastWidthMm: 1, mostWidthMm: 9 },
      /glueUp\.mostWidthMm to be so wide .* at least 9\.25 mm/,
    ],
    [
      'nothing is left of the outer boards',
      { boardCount: 20, trimWidthMm: 100 },
      /glueUp\.boardCount to be so few/,
    ],
    [
      'all is jointed away',
      { jointingMm: 180 },
      /glueUp\.jointingMm to be less than glueUp\.mostWidthMm, 180, got 180/,
    ],
  ])('%s', (_, changes, message) => {
    expect(() => planWorktop(glued(changes))).toThrow(message);
  });
});

describe('laws of gluing up', () => {
  const changes = fc.record({
    boardCount: numberArb({ min: 1, max: 20, integer: true }),
    planingMm: numberArb({ min: 0, max: 20 }),
    jointingMm: numberArb({ min: 0, max: 20 }),
    flatteningMm: numberArb({ min: 0, max: 20 }),
    trimWidthMm: numberArb({ min: 0, max: 60 }),
    trimLengthMm: numberArb({ min: 0, max: 100 }),
    clampForceN: numberArb({ min: 100, max: 20_000 }),
  });

  test('nothing is lost: boards make up the width, and no stage grows', () => {
    fc.assert(
      fc.property(changes, (some) => {
        const plan = glued(some);
        const part = partOf(plan);
        const width = part.boards.reduce((sum, { widthMm }) => sum + widthMm, 0);
        expect(width).toBeCloseTo(plan.top.widthMm, 6);
        part.boards.forEach((board, i) => {
          const before = part.boards.slice(0, i).reduce((sum, { widthMm }) => sum + widthMm, 0);
          expect(board.fromFrontMm).toBeCloseTo(before, 6);
        });
        const volumes = part.stages.map(({ volumeM3 }) => volumeM3);
        volumes.slice(1).forEach((volume, i) => {
          expect(volume).toBeLessThanOrEqual((volumes[i] as number) * (1 + 1e-12));
        });
        for (const { massKg, volumeM3 } of part.stages) {
          expect(massKg).toBeCloseTo(volumeM3 * (part.densityKgPerM3 as number), 6);
        }
        const { clamping } = part;
        if (clamping) {
          expect(clamping.clampCount * some.clampForceN).toBeGreaterThanOrEqual(clamping.forceN * (1 - 1e-9));
          expect(clamping.clampCount * clamping.spacingMm).toBeCloseTo(part.roughLengthMm, 6);
        }
      }),
    );
  });

  test('more boards, or wider ones, never fail where fewer or narrower pass', () => {
    const width = numberArb({ min: 30, max: 400 });
    fc.assert(
      fc.property(
        changes,
        width,
        fc.integer({ min: 0, max: 10 }),
        numberArb({ min: 0, max: 100 }),
        (some, mostWidthMm, more, wider) => {
          const status = (boardCount: number, mostMm: number) =>
            checkOf(
              glued({ ...some, trimWidthMm: 0, boardCount, leastWidthMm: 1, mostWidthMm: mostMm }),
              'boards',
            ).status;
          if (status(some.boardCount, mostWidthMm) !== 'pass') return;
          expect(status(some.boardCount + more, mostWidthMm)).toBe('pass');
          expect(status(some.boardCount, mostWidthMm + wider)).toBe('pass');
        },
      ),
    );
  });

  test('a glue for more kinds of wood never fails where another passes', () => {
    const pct = numberArb({ min: 0, max: 30 });
    fc.assert(
      fc.property(
        numberArb({ min: 1, max: 25 }),
        pct,
        pct,
        numberArb({ min: 0, max: 5 }),
        (moisturePct, a, b, more) => {
          const status = (least: number, most: number) => {
            const glue = {
              ...glueUp.glue,
              leastMoisturePct: Math.max(0, least),
              mostMoisturePct: Math.min(30, most),
            };
            const plan = glued({ glue });
            return checkOf({ ...plan, top: { ...plan.top, moisturePct } }, 'gluing').status;
          };
          const [least, most] = [Math.min(a, b), Math.max(a, b)];
          expect(status(least, most)).toBe(moisturePct >= least && moisturePct <= most ? 'pass' : 'fail');
          if (status(least, most) === 'pass') expect(status(least - more, most + more)).toBe('pass');
        },
      ),
    );
  });
});
