import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Plan, planWorktop } from '../src/index.ts';
import { plainBench } from './plain-bench.ts';

/** A plan that leaves open whatever can be left open. */
const undecided: Plan = {
  ...plainBench,
  base: {
    ...plainBench.base,
    fixedLineMm: 'choose',
    sliding: [
      {
        ...{ name: 'left side', members: ['left leg frame'], fixings: ['left front', 'left back'] },
        ...{ widensTowards: 'left', leastSlideMm: -10, mostSlideMm: 40, slideMm: 'choose' },
      },
      {
        ...{ name: 'back', members: ['back rail'], fixings: ['right back'], widensTowards: 'back' },
        ...{ leastSlideMm: 0, mostSlideMm: 20, slideMm: 'choose' },
      },
    ],
  },
  holes: { ...plainBench.holes, first: 'choose', columns: 6, rows: 2, pitchXMm: 200 },
  screws: {
    ...{ lengthMm: 'choose', stockLengthsMm: [50, 30, 40], layersMm: [1.5, 3], washerDiameterMm: 20 },
    ...{ threadShare: 2 / 3, tipLengthMm: 5, leastThreadMm: 12, leastStockMm: 6, leadHoleShare: 1 },
    ...{ leadBitTipLengthMm: 2, shankBitTipLengthMm: 2, stopLengthMm: 20 },
  },
  strip: {
    ...{ inlay: 'brass cutting guide', thicknessMm: 6, rabbetWidthMm: 27, rabbetDepthMm: 6 },
    ...{ expansionUmPerMK: 19, densityKgPerM3: 8500, buildingDayC: 20, toleranceMm: 0.2 },
    ...{ endDistanceMm: 30, mostPitchMm: 250, fixedScrew: 'middle', shankDiameterMm: 4 },
    ...{ headDiameterMm: 8, headHeightMm: 2.5, headBelowFaceMm: 0.2, screwLengthMm: 20 },
    ...{ slotClearanceMm: 0.3, endClearanceMm: 0.5 },
  },
  glueUp: {
    ...{ boardCount: 'choose', leastWidthMm: 100, mostWidthMm: 180, planingMm: 4, jointingMm: 6 },
    ...{ flatteningMm: 3, trimWidthMm: 10, trimLengthMm: 50, order: 'alternate', clampForceN: 4000 },
    glue: {
      ...{ name: 'glue', pressureMPa: 1, spreadGPerM2: 200, lossPct: 10 },
      ...{ leastMoisturePct: 6, mostMoisturePct: 12 },
    },
  },
  stock: {
    boards: Array.from({ length: 5 }, (_, i) => ({
      ...{ name: `board ${i + 1}`, lengthMm: 1600, widthMm: 140, thicknessMm: 55, eachPrice: 30 },
      defects: [{ xMm: 0, yMm: 0, lengthMm: 20, widthMm: 20 }],
    })),
    ...{ boardKerfMm: 3, boardEndTrimMm: 10, boardEdgeTrimMm: 2, containers: [] },
  },
};

type Content = { [key: string]: unknown };

const paths = (value: unknown, before: readonly string[] = []): (readonly string[])[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, item]) => [[...before, key], ...paths(item, [...before, key])])
    : [];

function spoilt(path: readonly string[], value: unknown): Plan {
  const plan = structuredClone(undecided) as unknown as Content;
  const parent = path.slice(0, -1).reduce((at, key) => at[key] as Content, plan);
  parent[path.at(-1) as string] = value;
  return plan as unknown as Plan;
}

test('whatever is spoilt of a plan that leaves all open, there is a plan or a refusal that names the place', () => {
  const anything = fc.oneof(
    fc.double(),
    fc.integer({ min: -20, max: 700 }),
    fc.double({ min: 0, max: 60, noNaN: true }),
    fc.constantFrom(
      'choose',
      'leave out',
      'left',
      'back',
      'fail',
      null,
      undefined,
      [],
      {},
      0,
      10_000,
      -10_000,
    ),
  );
  let [planned, refused] = [0, 0];
  fc.assert(
    fc.property(fc.constantFrom(...paths(undecided)), anything, (path, value) => {
      try {
        const { chosen, holes, blockedHoles, plan } = planWorktop(spoilt(path, value));
        expect(holes.length + blockedHoles.length).toBe(plan.holes.columns * plan.holes.rows);
        const { base, screws, glueUp } = plan;
        const open = [base.fixedLineMm, plan.holes.first, screws?.lengthMm, glueUp?.boardCount];
        expect([...open, ...(base.sliding ?? []).map(({ slideMm }) => slideMm)]).not.toContain('choose');
        for (const { says } of chosen) expect(says).not.toMatch(/NaN|undefined|Infinity/);
        planned += 1;
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        expect(error.message).toMatch(/^planWorktop requires [a-z]/);
        refused += 1;
      }
    }),
    { numRuns: 60 },
  );
  expect(planned).toBeGreaterThan(3);
  expect(refused).toBeGreaterThan(3);
});
