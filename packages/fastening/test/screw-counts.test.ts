import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  countScrewsAgainstRacking,
  countScrewsToLift,
  type HangingLoad,
  type RackedTop,
} from '../src/index.ts';

const between = (min: number, max: number) => numberArb({ min, max });
const allowedPullThroughN = fc.option(between(50, 3000));

const lifted: fc.Arbitrary<HangingLoad> = fc.record({
  hangingMassKg: between(0, 800),
  offCentrePct: between(0, 100),
  liftFactor: between(1, 3),
  allowedWithdrawalN: between(50, 3000),
  allowedPullThroughN,
});

const racked: fc.Arbitrary<RackedTop> = fc.record({
  pushN: between(0, 2000),
  heightMm: between(0, 1200),
  lineSpacingMm: between(20, 1500),
  framesCount: numberArb({ min: 1, max: 6, integer: true }),
  allowedWithdrawalN: between(50, 3000),
  allowedPullThroughN,
  allowedLateralN: between(50, 3000),
});

/** The least count, by trying one after the other. */
function tried(holds: (count: number) => boolean): number {
  let count = 1;
  while (!holds(count)) count += 1;
  return count;
}

const ALLOWED = 1 + 1e-9;

describe('lifted by its edges', () => {
  test('a base of 100 kg under the edges of its top, centred, lifted without a jerk', () => {
    // 100 × 9.80665 / 2 = 490.3325 N on an edge; 490.3325 / 250 = 1.96, so 2; 490.3325 / 2 = 245.16625 N, 98.07 % of 250 N
    const { cautions, ...result } = countScrewsToLift({
      hangingMassKg: 100,
      offCentrePct: 0,
      liftFactor: 1,
      allowedWithdrawalN: 400,
      allowedPullThroughN: 250,
    });
    expect(result.edgePullN).toBeCloseTo(490.3325, 9);
    expect(result.screwPullN).toBeCloseTo(245.16625, 9);
    expect(result.utilisationRatio).toBeCloseTo(0.980665, 9);
    expect([result.perEdgeCount, result.totalCount, result.governs]).toEqual([2, 4, 'head']);
    expect(cautions.join(' ')).toMatch(/local code decides and a licensed professional/);
    expect(cautions.join(' ')).toMatch(/come before this figure/);
  });

  test('the count is the one found by trying, and the screws of an edge together bear its pull', () => {
    fc.assert(
      fc.property(lifted, (input) => {
        const { perEdgeCount, totalCount, edgePullN, screwPullN, utilisationRatio, governs } =
          countScrewsToLift(input);
        const pullN = input.liftFactor * input.hangingMassKg * 9.80665 * (0.5 + input.offCentrePct / 200);
        const allowedN = Math.min(
          input.allowedWithdrawalN,
          input.allowedPullThroughN ?? Number.POSITIVE_INFINITY,
        );
        expect(perEdgeCount).toBe(tried((count) => pullN / count <= allowedN * ALLOWED));
        expect(edgePullN).toBeCloseTo(pullN, 6);
        expect(perEdgeCount * screwPullN).toBeCloseTo(edgePullN, 6);
        expect(totalCount).toBe(2 * perEdgeCount);
        expect(utilisationRatio).toBeCloseTo(screwPullN / allowedN, 9);
        expect(utilisationRatio).toBeLessThanOrEqual(ALLOWED);
        const headFirst =
          input.allowedPullThroughN !== null && input.allowedPullThroughN < input.allowedWithdrawalN;
        expect(governs).toBe(headFirst ? 'head' : 'withdrawal');
      }),
    );
  });

  test('more mass, a worse balance or a harder jerk never ask for fewer screws', () => {
    const more = fc.record({
      hangingMassKg: between(0, 800),
      offCentrePct: between(0, 100),
      liftFactor: between(1, 3),
    });
    fc.assert(
      fc.property(lifted, more, (input, other) => {
        const worse = {
          ...input,
          hangingMassKg: Math.max(input.hangingMassKg, other.hangingMassKg),
          offCentrePct: Math.max(input.offCentrePct, other.offCentrePct),
          liftFactor: Math.max(input.liftFactor, other.liftFactor),
        };
        expect(countScrewsToLift(worse).perEdgeCount).toBeGreaterThanOrEqual(
          countScrewsToLift(input).perEdgeCount,
        );
      }),
    );
  });

  test('a top and a base of different mass: what is lifted by hand and what hangs are told apart', () => {
    // 45 kg of top on 180 kg of base; one screw may be given 500 N. By the edges of the top the base hangs:
    // 180 × 9.80665 / 2 = 882.6 N, two screws. Hung from above, the top hangs: 45 × 9.80665 / 2 = 220.65 N, one.
    const each = { offCentrePct: 0, liftFactor: 1, allowedWithdrawalN: 500, allowedPullThroughN: null };
    const byItsTop = countScrewsToLift({ ...each, hangingMassKg: 180 });
    expect(byItsTop.edgePullN).toBeCloseTo(882.5985, 6);
    expect(byItsTop.perEdgeCount).toBe(2);
    expect(countScrewsToLift({ ...each, hangingMassKg: 45 }).perEdgeCount).toBe(1);
  });

  test('nothing to lift still takes a screw', () => {
    const nothing = { hangingMassKg: -0, offCentrePct: 0, liftFactor: 1 };
    const { perEdgeCount, utilisationRatio, screwPullN } = countScrewsToLift({
      ...nothing,
      allowedWithdrawalN: 100,
      allowedPullThroughN: null,
    });
    expect([perEdgeCount, utilisationRatio, screwPullN]).toEqual([1, 0, 0]);
  });

  test('refuses what makes no sense, by name', () => {
    const good = { hangingMassKg: 40, offCentrePct: 0, liftFactor: 1, allowedWithdrawalN: 100 };
    const lift = (change: object) => () =>
      countScrewsToLift({ ...good, allowedPullThroughN: null, ...change } as HangingLoad);
    expect(lift({ liftFactor: 0.5 })).toThrow('requires liftFactor between 1 and 5, got 0.5');
    expect(lift({ allowedWithdrawalN: 0 })).toThrow(
      'requires allowedWithdrawalN between 1 and 1000000, got 0',
    );
    expect(lift({ allowedPullThroughN: Number.NaN })).toThrow(
      'requires allowedPullThroughN between 1 and 1000000, got NaN',
    );
    expect(lift({ allowedPullThroughN: undefined })).toThrow(
      'requires allowedPullThroughN between 1 and 1000000',
    );
    expect(() => countScrewsToLift(undefined as never)).toThrow('requires hangingMassKg between 0 and 10000');
  });
});

describe('against racking', () => {
  test('400 N at 900 mm on one frame whose rows are 300 mm apart', () => {
    // Couple: 400 × 900 / 300 = 1200 N on the row that is pulled, 400 / 2 = 200 N across each row.
    // One screw would bear √(1200² + 200²) = 1216.55 N; sin² = 1200² / 1216.55² = 0.972973, cos² = 0.027027;
    // allowed 500 × 400 / (500 × 0.027027 + 400 × 0.972973) = 496.644 N; 1216.55 / 496.644 = 2.4496, so 3.
    const { cautions, ...result } = countScrewsAgainstRacking({
      pushN: 400,
      heightMm: 900,
      lineSpacingMm: 300,
      framesCount: 1,
      allowedWithdrawalN: 500,
      allowedPullThroughN: null,
      allowedLateralN: 400,
    });
    expect([result.perLineCount, result.totalCount, result.governs]).toEqual([3, 6, 'combined']);
    expect(result.screwPullN).toBeCloseTo(400, 9);
    expect(result.screwSidewaysN).toBeCloseTo(200 / 3, 9);
    expect(result.utilisations.withdrawal.utilisationRatio).toBeCloseTo(0.8, 9);
    expect(result.utilisations.combined.utilisationRatio).toBeCloseTo(2.4496 / 3, 4);
    expect(cautions.length).toBeGreaterThan(2);
  });

  test('the forces on the screws balance the push and its moment', () => {
    fc.assert(
      fc.property(racked, (input) => {
        const { perLineCount, totalCount, screwPullN, screwSidewaysN } = countScrewsAgainstRacking(input);
        const momentNmm = perLineCount * screwPullN * input.framesCount * input.lineSpacingMm;
        expect(momentNmm).toBeCloseTo(input.pushN * input.heightMm, 3);
        expect(totalCount * screwSidewaysN).toBeCloseTo(input.pushN, 6);
      }),
    );
  });

  test('the count is the one found by trying every limit, and what governs is used most', () => {
    fc.assert(
      fc.property(racked, (input) => {
        const { perLineCount, utilisations, utilisationRatio, governs } = countScrewsAgainstRacking(input);
        const rowPullN = (input.pushN * input.heightMm) / (input.lineSpacingMm * input.framesCount);
        const rowSidewaysN = input.pushN / (2 * input.framesCount);
        const headN = input.allowedPullThroughN ?? Number.POSITIVE_INFINITY;
        const holds = (count: number) => {
          const [pull, sideways] = [rowPullN / count, rowSidewaysN / count];
          const both = Math.hypot(pull, sideways);
          // With both parts of the force: R (cos² / Z + sin² / W) is at most 1.
          const combined =
            both === 0
              ? 0
              : (sideways ** 2 / input.allowedLateralN + pull ** 2 / input.allowedWithdrawalN) / both;
          const uses = [
            pull / input.allowedWithdrawalN,
            pull / headN,
            sideways / input.allowedLateralN,
            combined,
          ];
          return uses.every((use) => use <= ALLOWED);
        };
        expect(perLineCount).toBe(tried(holds));
        const uses = Object.values(utilisations).map((one) => one.utilisationRatio);
        expect(Math.max(...uses)).toBe(utilisationRatio);
        expect(utilisations[governs].utilisationRatio).toBe(utilisationRatio);
        expect(utilisationRatio).toBeLessThanOrEqual(ALLOWED);
      }),
    );
  });

  test('a harder push never asks for fewer screws, another frame or rows further apart never for more', () => {
    fc.assert(
      fc.property(racked, between(1, 3), (input, times) => {
        const count = (change: Partial<RackedTop>) =>
          countScrewsAgainstRacking({ ...input, ...change }).perLineCount;
        expect(count({ pushN: times * input.pushN })).toBeGreaterThanOrEqual(count({}));
        expect(count({ framesCount: input.framesCount + 1 })).toBeLessThanOrEqual(count({}));
        expect(count({ lineSpacingMm: times * input.lineSpacingMm })).toBeLessThanOrEqual(count({}));
      }),
    );
  });

  test('no push still takes a screw in each row, and a minus before a nought is not handed on', () => {
    const still = { pushN: -0, heightMm: -0, lineSpacingMm: 400, framesCount: 2 };
    const { totalCount, utilisationRatio, screwPullN, screwSidewaysN } = countScrewsAgainstRacking({
      ...still,
      allowedWithdrawalN: 100,
      allowedPullThroughN: 80,
      allowedLateralN: 100,
    });
    expect([totalCount, utilisationRatio, screwPullN, screwSidewaysN]).toEqual([4, 0, 0, 0]);
  });

  test('refuses what makes no sense, by name', () => {
    const good = {
      pushN: 300,
      heightMm: 800,
      lineSpacingMm: 400,
      framesCount: 2,
      allowedWithdrawalN: 100,
      allowedLateralN: 100,
    };
    const rack = (change: object) => () =>
      countScrewsAgainstRacking({ ...good, allowedPullThroughN: null, ...change } as RackedTop);
    expect(rack({ framesCount: 1.5 })).toThrow(
      'requires framesCount a whole number between 1 and 100, got 1.5',
    );
    expect(rack({ lineSpacingMm: 0 })).toThrow('requires lineSpacingMm between 1 and 5000, got 0');
    expect(rack({ allowedPullThroughN: '80' })).toThrow(
      'requires allowedPullThroughN between 1 and 1000000, got "80"',
    );
    expect(() => countScrewsAgainstRacking(null as never)).toThrow('requires pushN between 0 and 100000');
  });
});
