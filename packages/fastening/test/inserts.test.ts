import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ChooseMachineScrewInput,
  checkInsertHole,
  chooseMachineScrew,
  tappedEngagement,
  tappedEngagementByThumb,
  tappedHoleDepth,
} from '../src/index.ts';

const insert = {
  holeDiameterMm: 9,
  insertLengthMm: 15,
  recessMm: 1,
  roomBelowMm: 3,
  bitTipLengthMm: 2.5,
  topThicknessMm: 45,
  edgeDistanceMm: 30,
  leastStockMm: 8,
  leastWallMm: 9,
};

const holes = fc.record({
  holeDiameterMm: numberArb({ min: 4, max: 20 }),
  insertLengthMm: numberArb({ min: 5, max: 40 }),
  recessMm: numberArb({ min: 0, max: 5 }),
  roomBelowMm: numberArb({ min: 0, max: 10 }),
  bitTipLengthMm: numberArb({ min: 0, max: 6 }),
  topThicknessMm: numberArb({ min: 10, max: 80 }),
  edgeDistanceMm: numberArb({ min: 0, max: 60 }),
  leastStockMm: numberArb({ min: 0, max: 15 }),
  leastWallMm: numberArb({ min: 0, max: 15 }),
});

describe('checkInsertHole', () => {
  test('passes exactly where stock and wall are what is asked for', () => {
    fc.assert(
      fc.property(holes, (hole) => {
        const { status, reasons, stockAboveTipMm, wallMm } = checkInsertHole(hole);
        const keeps = stockAboveTipMm >= hole.leastStockMm - 1e-9 && wallMm >= hole.leastWallMm - 1e-9;
        expect(status).toBe(keeps ? 'pass' : 'fail');
        expect(reasons.length === 0).toBe(keeps);
      }),
    );
  });

  test('says what is wrong, by hand', () => {
    expect(checkInsertHole(insert)).toMatchObject({ status: 'pass', holeDepthMm: 19, wallMm: 25.5 });
    expect(checkInsertHole({ ...insert, topThicknessMm: 20, edgeDistanceMm: 4 }).reasons).toEqual([
      'The bit comes through the face by 1.5 mm.',
      'The hole breaks out of the edge by 0.5 mm.',
    ]);
    expect(checkInsertHole({ ...insert, edgeDistanceMm: 12 }).reasons).toEqual([
      'The hole leaves a wall of 7.5 mm, less than 9 mm.',
    ]);
    expect(() => checkInsertHole({ ...insert, leastWallMm: -1 })).toThrow(
      'checkInsertHole requires leastWallMm between 0 and 500, got -1',
    );
  });
});

const machineScrews: fc.Arbitrary<ChooseMachineScrewInput> = fc
  .record({
    layersMm: fc.array(numberArb({ min: 0, max: 20 }), { maxLength: 3 }),
    threadFromMm: numberArb({ min: 0, max: 5 }),
    threadLengthMm: numberArb({ min: 2, max: 30 }),
    beyondMm: numberArb({ min: 0, max: 20 }),
    stockLengthsMm: fc.array(numberArb({ min: 5, max: 90 }), { minLength: 1, maxLength: 10 }),
    leastEngagementMm: numberArb({ min: 0, max: 15 }),
    leastRoomMm: numberArb({ min: 0, max: 4 }),
  })
  .map(({ beyondMm, ...rest }) => ({
    ...rest,
    clearDepthMm: rest.threadFromMm + rest.threadLengthMm + beyondMm,
  }));

describe('chooseMachineScrew', () => {
  test('says to protect the eyes', () => {
    const one = {
      threadFromMm: 0,
      threadLengthMm: 10,
      clearDepthMm: 12,
      leastEngagementMm: 5,
      leastRoomMm: 1,
    };
    const { cautions } = chooseMachineScrew({ ...one, layersMm: [], stockLengthsMm: [10] });
    expect(cautions.join(' ')).toMatch(/eye protection/);
  });

  test('a screw that passes engages enough and does not strike the bottom', () => {
    fc.assert(
      fc.property(machineScrews, (input) => {
        const { chosen, lengths } = chooseMachineScrew(input);
        for (const { status, engagementMm, roomMm } of lengths) {
          expect(engagementMm).toBeLessThanOrEqual(input.threadLengthMm + 1e-9);
          if (status === 'pass') {
            expect(engagementMm).toBeGreaterThan(0);
            expect(engagementMm).toBeGreaterThanOrEqual(input.leastEngagementMm - 1e-9);
            expect(roomMm).toBeGreaterThanOrEqual(input.leastRoomMm - 1e-9);
            expect(chosen?.engagementMm).toBeGreaterThanOrEqual(engagementMm);
          }
        }
        expect(chosen === null).toBe(lengths.every(({ status }) => status === 'fail'));
      }),
    );
  });

  test('a longer screw never engages less, and has less room', () => {
    fc.assert(
      fc.property(machineScrews, (input) => {
        const { lengths } = chooseMachineScrew(input);
        for (const [i, one] of lengths.entries()) {
          const next = lengths[i + 1];
          if (!next) continue;
          expect(next.engagementMm).toBeGreaterThanOrEqual(one.engagementMm);
          expect(next.roomMm).toBeLessThanOrEqual(one.roomMm);
        }
      }),
    );
  });

  test('says so where a screw does not reach the thread', () => {
    const input = {
      layersMm: [10, 3],
      threadFromMm: 2,
      threadLengthMm: 10,
      clearDepthMm: 14,
      stockLengthsMm: [12, 15],
      leastEngagementMm: 0,
      leastRoomMm: 0,
    };
    const { status, chosen, lengths } = chooseMachineScrew(input);
    expect([status, chosen]).toEqual(['fail', null]);
    expect(lengths.map(({ reasons }) => reasons)).toEqual([
      ['12 mm does not reach the thread.'],
      ['15 mm does not reach the thread.'],
    ]);
  });

  test('a hole shallower than its thread is refused', () => {
    const input = {
      layersMm: [3],
      threadFromMm: 1,
      threadLengthMm: 15,
      clearDepthMm: 12,
      stockLengthsMm: [16],
      leastEngagementMm: 6,
      leastRoomMm: 1,
    };
    expect(() => chooseMachineScrew(input)).toThrow(
      'chooseMachineScrew requires clearDepthMm not less than threadFromMm and threadLengthMm together, got 12 and 16',
    );
    expect(chooseMachineScrew({ ...input, clearDepthMm: 18, stockLengthsMm: [8, 20] }).lengths).toMatchObject(
      [
        { engagementMm: 4, reasons: ['8 mm engages 4 mm of thread, less than 6 mm.'] },
        { engagementMm: 15, roomMm: 1, status: 'pass' },
      ],
    );
  });
});

describe('threads in metal', () => {
  test('for coarse threads the engagement is within the trade’s one diameter, and no less than a nut is high', () => {
    // ISO 261 coarse pitches. One diameter in steel: a column in a magazine for design engineers. Heights of nuts,
    // ISO 4032, least: M5 4.4, M6 4.9, M8 6.44, M10 8.04, M12 10.37 mm (memory); nuts are a little higher than equal
    // strength asks for.
    const coarse = [
      [5, 0.8, 4.4],
      [6, 1, 4.9],
      [8, 1.25, 6.44],
      [10, 1.5, 8.04],
      [12, 1.75, 10.37],
    ] as const;
    for (const [diameterMm, pitchMm, nutMm] of coarse) {
      const { leastEngagementMm } = tappedEngagement({ diameterMm, pitchMm, strengthRatio: 1 });
      expect(leastEngagementMm, `M${diameterMm}`).toBeLessThan(diameterMm);
      expectWithin(leastEngagementMm, nutMm, 0.1 * nutMm, `ISO 4032, M${diameterMm}`);
    }
  });

  test('the rule of thumb asks for no less than the areas do, in steel and in metal two thirds or half as strong', () => {
    const ratios = { steel: 1, brass: 1.5, aluminium: 2 } as const;
    fc.assert(
      fc.property(
        numberArb({ min: 3, max: 24 }),
        numberArb({ min: 0.1, max: 0.2 }),
        (diameterMm, pitchPart) => {
          for (const metal of ['steel', 'brass', 'aluminium'] as const) {
            const strengthRatio = ratios[metal];
            const byAreasMm = tappedEngagement({
              diameterMm,
              pitchMm: pitchPart * diameterMm,
              strengthRatio,
            });
            const byThumbMm = tappedEngagementByThumb({ diameterMm, metal });
            expect(byThumbMm.leastEngagementMm).toBeGreaterThan(byAreasMm.leastEngagementMm);
          }
        },
      ),
    );
  });

  test('lengths in inches give the same engagement in inches', () => {
    const unified = fc.tuple(numberArb({ min: 0.1, max: 1 }), numberArb({ min: 8, max: 40 }));
    fc.assert(
      fc.property(unified, numberArb({ min: 0.2, max: 5 }), ([inches, perInch], strengthRatio) => {
        fc.pre(1 / perInch <= inches / 2);
        const { leastEngagementMm } = tappedEngagement({
          diameterMm: inches * 25.4,
          pitchMm: 25.4 / perInch,
          strengthRatio,
        });
        const byInches = (inches - 0.938194 / perInch) ** 2 / (inches - 0.64952 / perInch);
        expect(leastEngagementMm / 25.4).toBeCloseTo(byInches * Math.max(1, strengthRatio), 9);
      }),
    );
  });

  test('a blind hole is drilled deeper than it is tapped', () => {
    const holes = fc.tuple(numberArb({ min: 1, max: 30 }), numberArb({ min: 1, max: 60 }));
    fc.assert(
      fc.property(holes, ([diameterMm, fullThreadMm]) => {
        const { drillMm } = tappedHoleDepth({ diameterMm, fullThreadMm });
        expect(drillMm / fullThreadMm).toBeGreaterThanOrEqual(1.15 - 1e-9);
        expect(drillMm / fullThreadMm).toBeLessThanOrEqual(1.25 + 1e-9);
      }),
    );
  });
});
