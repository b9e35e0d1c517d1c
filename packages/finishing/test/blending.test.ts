import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { alligation, blendLiquids } from '../src/index.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const close = (ours: number, theirs: number, relative = 1e-9) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(relative * Math.abs(theirs) + 1e-12);

/** Hundredths of a percent, as a decimal of two places. */
const strength = fc.integer({ min: 0, max: 10_000 }).map((hundredths) => hundredths / 100);

describe('blendLiquids', () => {
  const partsOf = (contentsPct: number[][], targetPct: number[]) =>
    blendLiquids({ contentsPct, targetPct, batchMl: 100 }).corners.map(({ parts }) => parts);

  // Source: "Alligation Method for Mixing 3 strengths", a university course: 50, 20 and 5 % zinc oxide for 10 %, answer
  // 1 part, 1 part and 10 parts.
  test('finds the two ways that the answer of a pharmacy course is a blend of', () => {
    const corners = partsOf([[50], [20], [5]], [10]);
    expect(corners).toEqual([
      [1, 0, 8],
      [0, 1, 2],
    ]);
    // One batch of each corner, nine parts and three: 1, 1 and 10 parts of twelve.
    const both = [0, 1, 2].map((liquid) => sum(corners.map((parts) => parts[liquid] ?? Number.NaN)));
    expect(both).toEqual([1, 1, 10]);
  });

  // Source: "Alligation (handout)": 3000 mL at 40 %, 1000 mL at 60 % and 1000 mL at 70 % make 5000 mL at 50 %; and
  // elixirs of 70 % and 20 % make 30 % as 1 to 4.
  test('allows what a handout mixes', () => {
    const { leastMl, mostMl, corners } = blendLiquids({
      contentsPct: [[40], [60], [70]],
      targetPct: [50],
      batchMl: 5000,
    });
    expect(corners.map(({ volumesMl }) => volumesMl)).toEqual([
      [2500, 2500, 0],
      [(2 / 3) * 5000, 0, (1 / 3) * 5000].map((volume) => expect.closeTo(volume, 9)),
    ]);
    // 0.4 of the first corner and 0.6 of the second.
    const blend = [0, 1, 2].map(
      (i) => 0.4 * (corners[0]?.volumesMl[i] ?? 0) + 0.6 * (corners[1]?.volumesMl[i] ?? 0),
    );
    expect(blend).toEqual([3000, 1000, 1000].map((volume) => expect.closeTo(volume, 9)));
    [3000, 1000, 1000].forEach((volume, i) => {
      expect(volume).toBeGreaterThanOrEqual(leastMl[i] ?? Number.NaN);
      expect(volume).toBeLessThanOrEqual(mostMl[i] ?? Number.NaN);
    });
    expect(partsOf([[70], [20]], [30])).toEqual([[1, 4]]);
  });

  test('with two liquids is alligation', () => {
    fc.assert(
      fc.property(strength, strength, strength, (one, other, targetPct) => {
        fc.pre(one !== other);
        const found = partsOf([[one], [other]], [targetPct]);
        const [weakerPct, strongerPct] = [Math.min(one, other), Math.max(one, other)];
        if (targetPct < weakerPct || targetPct > strongerPct) expect(found).toEqual([]);
        else {
          const { strongerParts, weakerParts } = alligation({
            strongerPct,
            weakerPct,
            targetPct,
            batchMl: 1,
          });
          expect(found).toEqual([one > other ? [strongerParts, weakerParts] : [weakerParts, strongerParts]]);
        }
      }),
    );
  });

  /** Liquids of whole percents, and a mix of them by whole parts of a hundred, so that its contents have two decimals. */
  const mixes = fc
    .record({ substances: fc.integer({ min: 1, max: 3 }), count: fc.integer({ min: 1, max: 6 }) })
    .chain(({ substances, count }) => {
      const contents = fc.array(fc.integer({ min: 0, max: 100 }), {
        minLength: substances,
        maxLength: substances,
      });
      const cuts = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: count - 1, maxLength: count - 1 });
      return fc.tuple(fc.array(contents, { minLength: count, maxLength: count }), cuts);
    })
    .map(([contentsPct, cuts]) => {
      const marks = [0, ...cuts.sort((a, b) => a - b), 100];
      const shares = contentsPct.map((_, i) => (marks[i + 1] ?? 0) - (marks[i] ?? 0));
      const targetPct = (contentsPct[0] ?? []).map(
        (_, j) => sum(contentsPct.map((contents, i) => (contents[j] ?? 0) * (shares[i] ?? 0))) / 100,
      );
      return { contentsPct, shares, targetPct };
    });

  // Outside check: the exact arithmetic of a general library for fractions.
  test('every corner hits the target exactly, with no more liquids than there are conditions', () => {
    fc.assert(
      fc.property(mixes, ({ contentsPct, targetPct }) => {
        const { corners } = blendLiquids({ contentsPct, targetPct, batchMl: 1000 });
        expect(corners.length).toBeGreaterThan(0);
        for (const { parts, volumesMl } of corners) {
          const total = parts.reduce((all, part) => all.add(part), new Fraction(0));
          targetPct.forEach((target, j) => {
            const dissolved = parts.reduce(
              (all, part, i) => all.add(new Fraction(part).mul(contentsPct[i]?.[j] ?? 0)),
              new Fraction(0),
            );
            expect(dissolved.div(total).equals(new Fraction(String(target)))).toBe(true);
          });
          expect(parts.filter((part) => part > 0).length).toBeLessThanOrEqual(targetPct.length + 1);
          close(sum(volumesMl), 1000);
        }
        expect(new Set(corners.map(({ parts }) => parts.join())).size).toBe(corners.length);
      }),
    );
  });

  test('no mix that hits the target lies beyond the corners, in whatever direction one looks', () => {
    const direction = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(mixes, fc.array(direction, { minLength: 20, maxLength: 20 }), (mix, directions) => {
        const { contentsPct, targetPct, shares } = mix;
        const { corners, leastMl, mostMl } = blendLiquids({ contentsPct, targetPct, batchMl: 100 });
        const along = (weights: number[], volumes: readonly number[]) =>
          sum(volumes.map((volume, i) => volume * (weights[i] ?? 0)));
        for (const weights of directions) {
          const farthest = Math.max(...corners.map(({ volumesMl }) => along(weights, volumesMl)));
          expect(along(weights, shares)).toBeLessThanOrEqual(farthest + 1e-9);
        }
        shares.forEach((share, i) => {
          expect(share).toBeGreaterThanOrEqual((leastMl[i] ?? Number.NaN) - 1e-9);
          expect(share).toBeLessThanOrEqual((mostMl[i] ?? Number.NaN) + 1e-9);
        });
      }),
    );
  });

  test('says that there is no way where the target lies beyond every liquid', () => {
    const none = blendLiquids({ contentsPct: [[60], [50]], targetPct: [30], batchMl: 500 });
    expect([none.corners, none.leastMl, none.mostMl]).toEqual([[], [], []]);
  });

  test.each<[object, string]>([
    [{ contentsPct: [], targetPct: [1], batchMl: 1 }, 'contentsPct to be a list of 1 to 8 liquids, got 0'],
    [
      { contentsPct: undefined, targetPct: [1], batchMl: 1 },
      'contentsPct to be a list of 1 to 8 liquids, got undefined',
    ],
    [{ contentsPct: [[1, 2]], targetPct: [1], batchMl: 1 }, 'contentsPct[0] to have 1 to 1 numbers, got 2'],
    [
      { contentsPct: [[1.005]], targetPct: [1], batchMl: 1 },
      'contentsPct[0][0] of at most two decimals, got 1.005',
    ],
    [{ contentsPct: [[1]], targetPct: [101], batchMl: 1 }, 'targetPct[0] between 0 and 100, got 101'],
    [{ contentsPct: [[1]], targetPct: [1], batchMl: Number.NaN }, 'batchMl between 0 and 1000000, got NaN'],
    [undefined as unknown as object, 'batchMl between 0 and 1000000, got undefined'],
  ])('refuses %o', (input, says) => {
    expect(() => blendLiquids(input as never)).toThrow(`blendLiquids requires ${says}`);
  });
});
