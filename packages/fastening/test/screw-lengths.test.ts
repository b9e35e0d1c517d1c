import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ChooseScrewLengthInput,
  chooseScrewLength,
  leastPenetration,
  pointsidePenetration,
  threadEngagement,
} from '../src/index.ts';

const screws = fc
  .record({
    screwLengthMm: numberArb({ min: 8, max: 100 }),
    threadPart: numberArb({ min: 0.1, max: 1 }),
    tipPart: numberArb({ min: 0, max: 1 }),
    fixtureThicknessMm: numberArb({ min: 0, max: 60 }),
    topThicknessMm: numberArb({ min: 6, max: 120 }),
  })
  .map(({ threadPart, tipPart, ...rest }) => {
    const threadLengthMm = threadPart * rest.screwLengthMm;
    return { ...rest, threadLengthMm, tipLengthMm: tipPart * threadLengthMm };
  });

describe('a screw in a top', () => {
  test('what is in the wood is shank, thread and tip, and nothing twice', () => {
    fc.assert(
      fc.property(screws, (screw) => {
        const lies = threadEngagement(screw);
        const { threadInWoodMm, shankInWoodMm, penetrationMm } = lies;
        const tipInWoodMm = penetrationMm - shankInWoodMm - threadInWoodMm;
        expect(tipInWoodMm).toBeGreaterThanOrEqual(-1e-9);
        expect(tipInWoodMm).toBeLessThanOrEqual(screw.tipLengthMm + 1e-9);
        expect(penetrationMm).toBeLessThanOrEqual(screw.topThicknessMm + 1e-9);
      }),
    );
  });

  test('depth and stock above the tip make up the top, as long as the tip is within it', () => {
    fc.assert(
      fc.property(screws, (screw) => {
        const { penetrationMm, stockAboveTipMm } = threadEngagement(screw);
        const within = stockAboveTipMm >= 0 && screw.screwLengthMm >= screw.fixtureThicknessMm;
        if (within) expect(penetrationMm + stockAboveTipMm).toBeCloseTo(screw.topThicknessMm, 9);
        else if (stockAboveTipMm < 0) expect(penetrationMm).toBeCloseTo(screw.topThicknessMm, 9);
        else expect(penetrationMm).toBe(0);
      }),
    );
  });

  test('a longer screw is never less engaged, up to the face', () => {
    fc.assert(
      fc.property(screws, numberArb({ min: 0, max: 1 }), (screw, share) => {
        const faceMm = screw.fixtureThicknessMm + screw.topThicknessMm;
        fc.pre(screw.screwLengthMm < faceMm);
        const scale = 1 + share * (faceMm / screw.screwLengthMm - 1);
        const short = threadEngagement(screw);
        // Longer with the same thread, and longer with a thread that grows with it.
        const sameThread = { ...screw, screwLengthMm: screw.screwLengthMm * scale };
        const grown = { ...sameThread, threadLengthMm: screw.threadLengthMm * scale };
        for (const longer of [sameThread, grown]) {
          expect(threadEngagement(longer).threadInWoodMm).toBeGreaterThanOrEqual(short.threadInWoodMm - 1e-9);
        }
      }),
    );
  });

  test('inches and millimetres agree to the rounding of the lengths', () => {
    const thirtySeconds = fc.tuple(
      fc.integer({ min: 32, max: 160 }),
      fc.integer({ min: 0, max: 32 }),
      fc.integer({ min: 16, max: 96 }),
    );
    fc.assert(
      fc.property(thirtySeconds, ([length, fixture, top]) => {
        const inMm = (round: (x: number) => number) => {
          const screwLengthMm = round((length / 32) * 25.4);
          return threadEngagement({
            screwLengthMm,
            threadLengthMm: (screwLengthMm * 2) / 3,
            tipLengthMm: 5,
            fixtureThicknessMm: round((fixture / 32) * 25.4),
            topThicknessMm: round((top / 32) * 25.4),
          });
        };
        const exact = inMm((x) => x);
        const rounded = inMm((x) => Math.round(x * 10) / 10);
        for (const name of ['threadInWoodMm', 'shankInWoodMm', 'penetrationMm', 'stockAboveTipMm'] as const) {
          expect(Math.abs(exact[name] - rounded[name])).toBeLessThanOrEqual(0.15 + 1e-9);
        }
      }),
    );
  });

  test('the published penetration of a lag screw: the load over the load of each inch', () => {
    // Worked example E2.3 of the American Wood Council, as an open library for structural analysis carries it: a 1/2 in
    // lag screw of 4 in with a tip of 5/16 in through 1 1/2 in into southern pine (G = 0.55) bears 4247.9398904 N;
    // NDS Table 12.2A prints 437 lb for each inch of thread. The thread of a 4 in screw, ASME B18.2.1: 4/2 + 1/2 in.
    const { threadInWoodMm } = threadEngagement({
      screwLengthMm: 4 * 25.4,
      threadLengthMm: 2.5 * 25.4,
      tipLengthMm: 0.3125 * 25.4,
      fixtureThicknessMm: 1.5 * 25.4,
      topThicknessMm: 3.5 * 25.4,
    });
    const inches = 4247.9398904 / 4.4482216 / 437;
    expectWithin(threadInWoodMm / 25.4, inches, (0.5 / 437) * inches, 'AWC example E2.3, NDS Table 12.2A');
  });
});

const tops: fc.Arbitrary<ChooseScrewLengthInput> = fc.record({
  layersMm: fc.array(numberArb({ min: 0, max: 12 }), { maxLength: 4 }),
  topThicknessMm: numberArb({ min: 10, max: 90 }),
  stockLengthsMm: fc.array(numberArb({ min: 10, max: 120 }), { minLength: 1, maxLength: 12 }),
  threadShare: numberArb({ min: 0.5, max: 1 }),
  tipLengthMm: numberArb({ min: 0, max: 5 }),
  leastThreadMm: numberArb({ min: 0, max: 40 }),
  leastStockMm: numberArb({ min: 0, max: 12 }),
});

describe('chooseScrewLength', () => {
  test('stock above the tip is never below the least, nor below nought, without a fail', () => {
    fc.assert(
      fc.property(tops, (top) => {
        for (const { status, reasons, stockAboveTipMm, threadInWoodMm } of chooseScrewLength(top).lengths) {
          const keepsStock = stockAboveTipMm >= top.leastStockMm - 1e-9;
          const holds = threadInWoodMm >= top.leastThreadMm - 1e-9;
          if (!keepsStock || !holds) expect(status).toBe('fail');
          expect(status === 'pass').toBe(reasons.length === 0);
        }
      }),
    );
  });

  test('no length that passes has more thread in the wood than the one chosen', () => {
    fc.assert(
      fc.property(tops, (top) => {
        const { chosen, lengths, status, why } = chooseScrewLength(top);
        const passing = lengths.filter((one) => one.status === 'pass');
        expect(status).toBe(passing.length > 0 ? 'pass' : 'fail');
        expect(chosen === null).toBe(passing.length === 0);
        expect(why).not.toBe('');
        for (const one of passing) {
          expect(one.threadInWoodMm).toBeLessThanOrEqual(chosen?.threadInWoodMm ?? Number.NaN);
        }
      }),
    );
  });

  test('order and repetition of layers and lengths change nothing', () => {
    fc.assert(
      fc.property(tops, (top) => {
        const turned = {
          ...top,
          stockLengthsMm: [...top.stockLengthsMm, ...top.stockLengthsMm].reverse(),
        };
        expect(chooseScrewLength(turned)).toEqual(chooseScrewLength(top));
        const { layersMm } = top;
        const sumMm = layersMm.reduce((sum, layerMm) => sum + layerMm, 0);
        expect(
          chooseScrewLength({ ...top, layersMm: [...layersMm].reverse() }).fixtureThicknessMm,
        ).toBeCloseTo(sumMm, 9);
      }),
    );
  });

  test('asking for less never turns a pass into a fail', () => {
    fc.assert(
      fc.property(tops, numberArb({ min: 0, max: 1 }), (top, share) => {
        fc.pre(chooseScrewLength(top).status === 'pass');
        const less = { leastThreadMm: share * top.leastThreadMm, leastStockMm: share * top.leastStockMm };
        expect(chooseScrewLength({ ...top, ...less }).status).toBe('pass');
      }),
    );
  });

  test('the bindery bench: brass strip, countersunk screws, and the thread that the European code asks for', () => {
    const { leastThreadMm } = pointsidePenetration({ threadDiameterMm: 4 });
    const bench = {
      layersMm: [4],
      topThicknessMm: 45,
      stockLengthsMm: [16, 20, 25, 30, 35, 40, 45, 50],
      threadShare: 0.6,
      tipLengthMm: 4,
      leastThreadMm,
      leastStockMm: 5,
    };
    // Six diameters, 24 mm, is more than a screw finds here below 5 mm of stock: 0.6 × 40 − 4 = 20 mm at the most.
    expect(chooseScrewLength(bench).why).toBe(
      'None passes. 40 mm has 20 mm of thread in the wood, less than 24 mm. 45 mm has 23 mm of thread in the wood, less than 24 mm. 45 mm leaves 4 mm above its tip, less than 5 mm.',
    );
    const { chosen, lengths } = chooseScrewLength({ ...bench, leastThreadMm: 5 * 4 });
    expect(chosen?.lengthMm).toBe(40);
    expect(chosen?.threadInWoodMm).toBeCloseTo(20, 9);
    // By hand: 45 mm has 0.6 × 45 − 4 = 23 mm of thread, but leaves 4 + 45 − 45 = 4 mm; 50 mm comes 1 mm through.
    expect(lengths.at(-2)?.reasons).toEqual(['45 mm leaves 4 mm above its tip, less than 5 mm.']);
    expect(lengths.at(-1)?.reasons).toEqual(['50 mm comes through the face by 1 mm.']);
  });

  test('says so where no length reaches, or every one comes through', () => {
    const rest = {
      layersMm: [20],
      topThicknessMm: 20,
      threadShare: 1,
      tipLengthMm: 0,
      leastThreadMm: 10,
      leastStockMm: 2,
    };
    expect(chooseScrewLength({ ...rest, stockLengthsMm: [16] }).why).toBe(
      'None passes. 16 mm does not reach the wood.',
    );
    expect(chooseScrewLength({ ...rest, stockLengthsMm: [25, 60] }).why).toBe(
      'None passes. 25 mm has 5 mm of thread in the wood, less than 10 mm. 60 mm comes through the face by 20 mm.',
    );
    expect(chooseScrewLength({ ...rest, stockLengthsMm: [50] }).why).toBe(
      'None passes. 50 mm comes through the face by 10 mm.',
    );
  });

  test('a screw that is too short for its tip fails by itself, not the whole box', () => {
    const box = {
      layersMm: [],
      topThicknessMm: 45,
      threadShare: 2 / 3,
      tipLengthMm: 8,
      leastThreadMm: 15,
      leastStockMm: 3,
    };
    const { chosen, lengths } = chooseScrewLength({ ...box, stockLengthsMm: [10, 40] });
    expect(chosen?.lengthMm).toBe(40);
    expect(lengths[0]?.reasons).toContain('10 mm has no thread but its tip.');
    expect(lengths[0]?.threadInWoodMm).toBe(0);
    fc.assert(
      fc.property(tops, numberArb({ min: 0, max: 100 }), (top, tipLengthMm) => {
        for (const { lengthMm, status } of chooseScrewLength({ ...top, tipLengthMm }).lengths) {
          if (top.threadShare * lengthMm < tipLengthMm) expect(status).toBe('fail');
        }
      }),
    );
  });

  test('a screw up through a rail of 80 mm', () => {
    // By hand: 80 + 2 mm below the top; 110 mm goes 28 mm in, all of it thread but the tip of 5 mm; 40 − 28 = 12 mm above.
    const rail = {
      layersMm: [2, 80],
      topThicknessMm: 40,
      threadShare: 0.4,
      tipLengthMm: 5,
      leastThreadMm: 20,
      leastStockMm: 6,
    };
    const { chosen } = chooseScrewLength({ ...rail, stockLengthsMm: [100, 110, 120] });
    expect([chosen?.lengthMm, chosen?.stockAboveTipMm]).toEqual([110, 12]);
    expect(chosen?.threadInWoodMm).toBeCloseTo(23, 9);
  });

  test('refuses what is impossible, by name', () => {
    const ok: ChooseScrewLengthInput = {
      layersMm: [3],
      topThicknessMm: 40,
      stockLengthsMm: [30],
      threadShare: 0.5,
      tipLengthMm: 5,
      leastThreadMm: 10,
      leastStockMm: 5,
    };
    const refused = [
      [{ layersMm: [-1] }, 'layersMm[0]'],
      [{ stockLengthsMm: [] }, 'stockLengthsMm'],
      [{ stockLengthsMm: [Number.NaN] }, 'stockLengthsMm[0]'],
      [{ topThicknessMm: Number.POSITIVE_INFINITY }, 'topThicknessMm'],
      [{ threadShare: 0 }, 'threadShare'],
      [{ tipLengthMm: 101 }, 'tipLengthMm between 0 and 100'],
      [{ layersMm: [300, 300] }, 'layersMm of at most 500 in all, got 600'],
      [{ leastThreadMm: -1 }, 'leastThreadMm'],
      [{ leastStockMm: -1 }, 'leastStockMm'],
    ] as const;
    for (const [change, name] of refused) {
      expect(() => chooseScrewLength({ ...ok, ...change }), name).toThrow(
        expect.objectContaining({
          name: 'RangeError',
          message: expect.stringContaining(`chooseScrewLength requires ${name}`),
        }),
      );
    }
  });
});

test('the American and the European least depth of a pulled or pushed screw agree in their six diameters', () => {
  // NDS 12.1.5.6 counts the tip, Eurocode 5 8.7.2(3) the thread alone: the same figure, of different lengths.
  fc.assert(
    fc.property(numberArb({ min: 2, max: 12 }), (diameterMm) => {
      expect(leastPenetration({ shankDiameterMm: diameterMm, fastener: 'woodScrew' }).leastMm).toBeCloseTo(
        pointsidePenetration({ threadDiameterMm: diameterMm }).leastThreadMm,
        9,
      );
    }),
  );
});
