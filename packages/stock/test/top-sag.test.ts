import { metricStrength } from '@scantling/species';
import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import * as mathjs from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  type BeamLoading,
  beamSag,
  overhangSag,
  rectangularSection,
  type TopSagInput,
  topSag,
} from '../src/index.ts';
import { close, near, plain, wood } from './tops.ts';

/** The library has it, its types do not. */
const { solveODE } = mathjs as unknown as {
  solveODE(
    slopes: (x: number, state: number[]) => number[],
    span: [number, number],
    start: number[],
    options: { tol: number; maxStep: number },
  ): { y: number[][] };
};

describe('closed forms', () => {
  const section = rectangularSection({ widthMm: 600, depthMm: 45, holesMm: 0 });

  // Wood Handbook (FPL-GTR-190), Table 9-1.
  test.each<[BeamLoading, Partial<TopSagInput>]>([
    ['uniform-simple', { spreadLoadNPerMm: 1 }],
    ['midspan-simple', { pointLoads: [{ atMm: 600, forceN: 1200 }] }],
    [
      'quarter-points-simple',
      {
        pointLoads: [
          { atMm: 300, forceN: 600 },
          { atMm: 900, forceN: 600 },
        ],
      },
    ],
  ])('between supports: %s', (loading, load) => {
    const ours = topSag({ ...plain, ...load, lengthMm: 1200, leftSupportMm: 0, rightSupportMm: 1200 });
    const { sagMm } = beamSag({ ...wood, ...section, loading, loadN: 1200, spanMm: 1200 });
    close(ours.midspanSagMm, sagMm);
    close(ours.lowestSagMm, sagMm);
    near(ours.lowestAtMm, 600, 0.01);
  });

  test('at the end of an overhang', () => {
    fc.assert(
      fc.property(
        numberArb({ min: 100, max: 3000 }),
        numberArb({ min: 1, max: 1500 }),
        numberArb({ min: 0, max: 2000 }),
        numberArb({ min: 0, max: 2 }),
        (spanMm, overhangMm, endLoadN, spreadLoadNPerMm) => {
          const lengthMm = spanMm + overhangMm;
          const { rightEndSagMm } = topSag({
            ...plain,
            lengthMm,
            leftSupportMm: 0,
            rightSupportMm: spanMm,
            spreadLoadNPerMm,
            pointLoads: [{ atMm: lengthMm, forceN: endLoadN }],
          });
          const loads = { endLoadN, spreadLoadNPerMm };
          close(
            rightEndSagMm,
            overhangSag({ ...wood, ...section, ...loads, spanMm, overhangMm }).endSagMm,
            1e-7,
          );
        },
      ),
    );
  });
});

// S. J. Record, The Mechanical Properties of Wood (1914), stiffness of beams: E = P l³ / (4 D b h³), and what follows.
describe('a beam that is loaded at its centre', () => {
  const beam = { loading: 'midspan-simple', ...wood } as const;
  const bendingOf = (loadN: number, spanMm: number, widthMm: number, depthMm: number) =>
    beamSag({ ...beam, loadN, spanMm, ...rectangularSection({ widthMm, depthMm, holesMm: 0 }) }).bendingSagMm;
  const sizes = [
    numberArb({ min: 1, max: 5000 }),
    numberArb({ min: 100, max: 3000 }),
    numberArb({ min: 10, max: 900 }),
    numberArb({ min: 5, max: 200 }),
  ] as const;

  test('has the modulus of elasticity that its deflection tells', () => {
    fc.assert(
      fc.property(...sizes, (loadN, spanMm, widthMm, depthMm) => {
        const sagMm = bendingOf(loadN, spanMm, widthMm, depthMm);
        near((loadN * spanMm ** 3) / (4 * sagMm * widthMm * depthMm ** 3), 12_000, 1e-4);
      }),
    );
  });

  test('sags a third when three times as wide, a 27th when as deep, 27 times as far when as long', () => {
    fc.assert(
      fc.property(...sizes, (loadN, spanMm, widthMm, depthMm) => {
        const sagMm = bendingOf(loadN, spanMm, widthMm, depthMm);
        close(bendingOf(loadN, spanMm, 3 * widthMm, depthMm), sagMm / 3);
        close(bendingOf(loadN, spanMm, widthMm, 3 * depthMm), sagMm / 27);
        close(bendingOf(loadN, 3 * spanMm, widthMm, depthMm), sagMm * 27);
      }),
    );
  });
});

// Every wood of the Wood Handbook (FPL-GTR-190), Table 5-3a, at 12 % moisture content.
test('takes the modulus of a wood as its table has it', () => {
  const dry = metricStrength.rows.filter(({ moisture }) => moisture === '12%');
  expect(dry.length).toBeGreaterThan(5);
  const shelf = { ...plain, lengthMm: 1200, leftSupportMm: 0, rightSupportMm: 1200, spreadLoadNPerMm: 1 };
  const sags = dry.flatMap(({ modulusOfElasticityMPa }) => {
    if (modulusOfElasticityMPa === null) return [];
    const shearModulusMPa = modulusOfElasticityMPa / 16;
    return [
      modulusOfElasticityMPa * topSag({ ...shelf, modulusOfElasticityMPa, shearModulusMPa }).midspanSagMm,
    ];
  });
  // With shear in a fixed ratio the sag goes as one over the modulus.
  for (const product of sags) close(product, sags[0] as number);
});

describe('against integration by a general library', () => {
  /** The differential equation of the beam, from one place to the next, by mathjs. */
  function integrated(top: TopSagInput): { sagAt: (x: number) => number } {
    const { leftSupportMm: left, rightSupportMm: right, lengthMm, widthMm, depthMm } = top;
    const [load] = top.pointLoads;
    const { atMm, forceN } = load ?? { atMm: 0, forceN: 0 };
    const w = top.spreadLoadNPerMm;
    const atRight = (w * lengthMm * (lengthMm / 2 - left) + forceN * (atMm - left)) / (right - left);
    const atLeft = w * lengthMm + forceN - atRight;
    const force = (x: number) =>
      (x >= left ? atLeft : 0) + (x >= right ? atRight : 0) - (x >= atMm ? forceN : 0) - w * x;
    const [row] = top.holeRows;
    const width = (x: number) =>
      widthMm - (row && Math.abs(x - row.atMm) < row.diameterMm / 2 ? row.count * row.diameterMm : 0);
    const edges = row ? [row.atMm - row.diameterMm / 2, row.atMm + row.diameterMm / 2] : [];
    const middle = (left + right) / 2;
    const places = [...new Set([0, left, atMm, middle, ...edges, right, lengthMm])].sort((a, b) => a - b);
    // Sag, slope and moment go along; the sag also takes what shear adds.
    let state = [0, 0, 0];
    const sags = new Map([[0, 0]]);
    places.slice(1).forEach((to, i) => {
      const from = places[i] as number;
      const inside = (x: number) => Math.min(to - 1e-9, Math.max(from, x));
      const bending = top.modulusOfElasticityMPa * ((width((from + to) / 2) * depthMm ** 3) / 12);
      const shear = (top.shearModulusMPa * width((from + to) / 2) * depthMm * 5) / 6;
      const slopes = (x: number, [, slope = 0, moment = 0]: number[]) => {
        const forceN = force(inside(x));
        return [slope + forceN / shear, -moment / bending, forceN];
      };
      const { y } = solveODE(slopes, [from, to], state, { tol: 1e-10, maxStep: (to - from) / 8 }) as {
        y: number[][];
      };
      state = y.at(-1) as number[];
      sags.set(to, state[0] as number);
    });
    const at = (x: number) => sags.get(x) as number;
    const turn = (at(right) - at(left)) / (right - left);
    return { sagAt: (x) => at(x) - at(left) - turn * (x - left) };
  }

  test.each([
    ['a top with overhangs', []],
    ['with a row of holes', [{ atMm: 500, diameterMm: 25, count: 12 }]],
    ['with a wide cut-out', [{ atMm: 1100, diameterMm: 180, count: 3 }]],
  ])('%s', (_, holeRows) => {
    const top = {
      ...plain,
      lengthMm: 1900,
      leftSupportMm: 250,
      rightSupportMm: 1500,
      spreadLoadNPerMm: 0.3,
      pointLoads: [{ atMm: 800, forceN: 900 }],
      holeRows,
    };
    const ours = topSag(top);
    const { sagAt } = integrated(top);
    expect(ours.midspanSagMm).toBeGreaterThan(0.3);
    near(ours.midspanSagMm, sagAt(875), 1e-7);
    near(ours.leftEndSagMm, sagAt(0), 1e-7);
    near(ours.rightEndSagMm, sagAt(1900), 1e-7);
  });
});

test('says what is wrong with a top', () => {
  const top = { ...plain, lengthMm: 1000, leftSupportMm: 0, rightSupportMm: 1000 };
  expect(() => topSag({ ...top, rightSupportMm: 1001 })).toThrow(
    'topSag requires rightSupportMm from 1 mm beyond leftSupportMm 0 to lengthMm 1000, got 1001',
  );
  expect(() => topSag({ ...top, leftSupportMm: 999.5 })).toThrow('beyond leftSupportMm 999.5');
  expect(() => topSag({ ...top, pointLoads: [{ atMm: 1200, forceN: 1 }] })).toThrow(
    'topSag requires pointLoads[0].atMm between 0 and 1000, got 1200',
  );
  expect(() => topSag({ ...top, holeRows: [{ atMm: 500, diameterMm: 100, count: 6 }] })).toThrow(
    'topSag requires holeRows to leave wood of widthMm 600, got 600 mm of holes at',
  );
  // Two rows that overlap, neither of them at the middle of the other.
  const rows = [500, 590].map((atMm) => ({ atMm, diameterMm: 100, count: 4 }));
  expect(() => topSag({ ...top, holeRows: rows })).toThrow('got 800 mm of holes at 54');
  expect(() => topSag({ ...top, holeRows: null as never })).toThrow('holeRows to be a list of at most 500');
});
