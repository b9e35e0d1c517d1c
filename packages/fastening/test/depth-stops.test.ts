import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PlanDepthStopsInput, planDepthStops } from '../src/index.ts';

const plans: fc.Arbitrary<PlanDepthStopsInput> = fc
  .record({
    screwLengthMm: numberArb({ min: 10, max: 120 }),
    threadPart: numberArb({ min: 0.2, max: 1 }),
    tipPart: numberArb({ min: 0, max: 0.5 }),
    fixtureThicknessMm: numberArb({ min: 0, max: 30 }),
    topThicknessMm: numberArb({ min: 10, max: 90 }),
    throughPart: fc.constantFrom(0, 1),
    leadHoleShare: numberArb({ min: 0, max: 1 }),
    leadBitTipLengthMm: numberArb({ min: 0, max: 6 }),
    shankBitTipLengthMm: numberArb({ min: 0, max: 6 }),
    stopLengthMm: numberArb({ min: 0, max: 30 }),
    leastStockMm: numberArb({ min: 0, max: 12 }),
  })
  .map(({ threadPart, tipPart, throughPart, ...rest }) => {
    const threadLengthMm = threadPart * rest.screwLengthMm;
    const drilledThroughMm = throughPart * rest.fixtureThicknessMm;
    return { ...rest, threadLengthMm, tipLengthMm: tipPart * threadLengthMm, drilledThroughMm };
  });

const bench: PlanDepthStopsInput = {
  screwLengthMm: 40,
  threadLengthMm: 27,
  tipLengthMm: 8,
  fixtureThicknessMm: 3,
  topThicknessMm: 45,
  drilledThroughMm: 3,
  leadHoleShare: 1,
  leadBitTipLengthMm: 1,
  shankBitTipLengthMm: 2,
  stopLengthMm: 12,
  leastStockMm: 6,
};

describe('planDepthStops', () => {
  test('no tip, of bit or screw, comes nearer to the face than allowed without a fail', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { status, shankHole, leadHole, screw } = planDepthStops(plan);
        // A bit never does, whatever the verdict: its hole is made shallower instead.
        for (const hole of [shankHole, leadHole]) {
          if (hole) expect(hole.stockAboveTipMm).toBeGreaterThanOrEqual(plan.leastStockMm - 1e-9);
        }
        if (screw.stockAboveTipMm < plan.leastStockMm - 1e-9) expect(status).toBe('fail');
      }),
    );
  });

  test('the stop lands when the bit is as deep as the hole and its tip, and bears against the chuck', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { shankHole, leadHole } = planDepthStops(plan);
        const holes = [
          [shankHole, plan.shankBitTipLengthMm],
          [leadHole, plan.leadBitTipLengthMm],
        ] as const;
        for (const [hole, tipMm] of holes) {
          if (!hole) continue;
          const tipDepthMm = hole.stopFromTipMm - plan.drilledThroughMm;
          expect(tipDepthMm).toBeCloseTo(hole.holeDepthMm + tipMm, 9);
          expect(tipDepthMm + hole.stockAboveTipMm).toBeCloseTo(plan.topThicknessMm, 9);
          expect(hole.bitOutOfChuckMm).toBeCloseTo(hole.stopFromTipMm + plan.stopLengthMm, 9);
        }
      }),
    );
  });

  test('a hole has the depth wanted, or says by how much it falls short', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { shankHole, leadHole, screw } = planDepthStops(plan);
        const wantedMm =
          screw.shankInWoodMm + plan.leadHoleShare * (screw.penetrationMm - screw.shankInWoodMm);
        if (shankHole) {
          expect(shankHole.holeDepthMm + shankHole.shortenedMm).toBeCloseTo(screw.shankInWoodMm, 9);
        }
        if (leadHole) expect(leadHole.holeDepthMm + leadHole.shortenedMm).toBeCloseTo(wantedMm, 9);
      }),
    );
  });

  test('a plan that passes measures first, sets and checks each stop before it bores, and checks the screw before it drives', () => {
    let passed = 0;
    fc.assert(
      fc.property(plans, (plan) => {
        const { status, steps, shankHole, leadHole } = planDepthStops(plan);
        if (status === 'fail') {
          expect(steps).toEqual([]);
          return;
        }
        passed += 1;
        const order = steps.map(({ operation }) => operation).join(' ');
        const holes = [shankHole, leadHole].filter((hole) => hole !== null);
        expect(order).toBe(
          ['measure', ...holes.map(() => 'set check bore'), 'check drive'].join(' ').replace(/ +/g, ' '),
        );
        for (const { says, distanceMm } of steps) {
          expect(says).toContain(`${Number(distanceMm.toFixed(2))} mm`);
        }
        const boredMm = steps.filter(({ operation }) => operation === 'bore').map((one) => one.distanceMm);
        expect(boredMm).toEqual(holes.map((hole) => hole.holeDepthMm));
      }),
    );
    expect(passed).toBeGreaterThan(5);
  });

  test('the bindery bench, by hand', () => {
    const { status, steps } = planDepthStops(bench);
    expect(status).toBe('pass');
    // 40 − 27 = 13 mm of shank, 10 in the wood; 37 mm of screw in the wood; the lead bit's tip at 38 mm, 7 below the face.
    expect(steps.map(({ operation, distanceMm }) => [operation, distanceMm])).toEqual([
      ['measure', 45],
      ['set', 15],
      ['check', 33],
      ['bore', 10],
      ['set', 41],
      ['check', 7],
      ['bore', 37],
      ['check', 8],
      ['drive', 37],
    ]);
  });

  test('half to two thirds of the thread, as an army manual has it', () => {
    // Carpentry I, subcourse EN5155: "drilled to a depth 1/2 or 2/3 the length of the threads to be anchored".
    const depthMm = (leadHoleShare: number) =>
      planDepthStops({ ...bench, leadHoleShare }).leadHole?.holeDepthMm;
    expect(depthMm(1 / 2)).toBeCloseTo(10 + 27 / 2, 9);
    expect(depthMm(2 / 3)).toBeCloseTo(10 + 18, 9);
  });

  test('a share of nought bores no lead hole, and says nothing against it', () => {
    const { status, leadHole, shankHole, reasons, steps, cautions } = planDepthStops({
      ...bench,
      leadHoleShare: 0,
    });
    expect([status, leadHole, reasons, shankHole?.holeDepthMm]).toEqual(['pass', null, [], 10]);
    expect(steps.filter(({ operation }) => operation === 'bore')).toHaveLength(1);
    expect(cautions.join(' ')).toMatch(/licensed professional/);
    fc.assert(
      fc.property(plans, (plan) => {
        expect(planDepthStops({ ...plan, leadHoleShare: 0 }).leadHole).toBeNull();
      }),
    );
  });

  test('a long brad point makes the lead hole shallower, and at last impossible', () => {
    const shorter = planDepthStops({ ...bench, leadBitTipLengthMm: 5 });
    expect([shorter.status, shorter.leadHole?.holeDepthMm, shorter.leadHole?.shortenedMm]).toEqual([
      'pass',
      34,
      3,
    ]);
    const thin = { ...bench, topThicknessMm: 38, leastStockMm: 1, leadBitTipLengthMm: 28 };
    expect(planDepthStops(thin).reasons).toEqual([
      'No lead hole fits below the face with this bit: take one with a shorter tip.',
    ]);
  });

  test('says what is wrong with a screw that is too long, too short, or all shank', () => {
    expect(planDepthStops({ ...bench, screwLengthMm: 50 }).reasons).toEqual([
      'The screw comes through the face by 2 mm.',
    ]);
    expect(planDepthStops({ ...bench, screwLengthMm: 44 }).reasons).toEqual([
      'The screw leaves 4 mm above its tip, less than 6 mm.',
    ]);
    expect(planDepthStops({ ...bench, fixtureThicknessMm: 41 }).reasons).toEqual([
      'The screw does not reach the wood.',
    ]);
    expect(planDepthStops({ ...bench, threadLengthMm: 8, shankBitTipLengthMm: 15 }).reasons).toContain(
      'The hole for the shank cannot be as deep as the shank: its bit would come too near to the face.',
    );
  });

  test('refuses what is impossible, by name', () => {
    const refused = [
      [{ leadHoleShare: 1.1 }, 'planDepthStops requires leadHoleShare'],
      [
        { drilledThroughMm: 4 },
        'planDepthStops requires drilledThroughMm at most fixtureThicknessMm, got 4 and 3',
      ],
      [{ leastStockMm: Number.NaN }, 'planDepthStops requires leastStockMm'],
      [
        { tipLengthMm: 30 },
        'planDepthStops requires tipLengthMm <= threadLengthMm <= screwLengthMm, got 30,27,40',
      ],
      [{ screwLengthMm: 0 }, 'planDepthStops requires screwLengthMm between 1 and 1000, got 0'],
    ] as const;
    for (const [change, message] of refused) {
      expect(() => planDepthStops({ ...bench, ...change })).toThrow(
        expect.objectContaining({ name: 'RangeError', message: expect.stringContaining(message) }),
      );
    }
  });
});
