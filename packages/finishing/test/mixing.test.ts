import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  alligation,
  dilution,
  largestBatch,
  mixByParts,
  thinnedSolids,
  type WholePartsInput,
  wholeParts,
  wipingVarnish,
} from '../src/index.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const close = (ours: number, theirs: number, relative = 1e-9) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(relative * Math.abs(theirs) + 1e-12);

/** Hundredths of a percent, as a decimal of two places. */
const strength = fc.integer({ min: 0, max: 10_000 }).map((hundredths) => hundredths / 100);

describe('wholeParts', () => {
  test('finds the parts that a batch was mixed by', () => {
    const parts = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(parts, fc.integer({ min: 1, max: 4000 }), (parts, quarters) => {
        // Quarters of a millilitre are exact in binary, so what is mixed is exactly what the parts say.
        const volumesMl = parts.map((part) => part * (quarters / 4));
        const divisor = parts.reduce((a, b) => Number(new Fraction(a).gcd(b).n));
        const found = wholeParts({ volumesMl, withinPct: 0 });
        expect(found).toEqual({ parts: parts.map((part) => part / divisor), offByPct: 0 });
        // And back: the parts and the batch give the volumes.
        const again = mixByParts({ parts: found.parts, batchMl: sum(volumesMl) }).volumesMl;
        again.forEach((volume, i) => {
          close(volume, volumesMl[i] ?? Number.NaN);
        });
      }),
    );
  });

  // Outside check: the exact arithmetic of a general library for fractions.
  test('is the exact ratio of decimals', () => {
    const volumes = fc.array(fc.integer({ min: 10_000, max: 1e12 }), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(volumes, (millionths) => {
        const volumesMl = millionths.map((one) => one / 1e6);
        const { parts } = wholeParts({ volumesMl, withinPct: 0 });
        const exact = volumesMl.map((volume) => new Fraction(volume.toFixed(6)));
        parts.forEach((part, i) => {
          const ratio = new Fraction(part).div(parts[0] ?? Number.NaN);
          expect(ratio.equals((exact[i] as Fraction).div(exact[0] as Fraction))).toBe(true);
        });
        expect(parts.reduce((a, b) => Number(new Fraction(a).gcd(b).n))).toBe(1);
      }),
    );
  });

  test('finds nearby parts, no smaller ones are as near, and it says how near they are', () => {
    const volumes = fc.array(numberArb({ min: 1, max: 1000 }), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(volumes, numberArb({ min: 0.5, max: 10 }), (volumesMl, withinPct) => {
        const { parts, offByPct } = wholeParts({ volumesMl, withinPct });
        expect(offByPct).toBeLessThanOrEqual(withinPct);
        const smallest = Math.min(...volumesMl);
        const count = parts[volumesMl.indexOf(smallest)] ?? Number.NaN;
        const off = (of: number) =>
          Math.max(
            ...volumesMl.map((volume) => {
              const exact = (volume / smallest) * of;
              return 100 * Math.abs(exact / Math.round(exact) - 1);
            }),
          );
        close(offByPct, off(count));
        for (let fewer = 1; fewer < count; fewer++) expect(off(fewer)).toBeGreaterThan(withinPct);
      }),
    );
  });

  test.each<[object, string]>([
    [{ volumesMl: [], withinPct: 0 }, 'volumesMl to have 1 to 12 numbers, got 0'],
    [{ volumesMl: [1, 0], withinPct: 0 }, 'volumesMl[1] between 0.01 and 1000000, got 0'],
    [
      { volumesMl: [1, 1 / 3], withinPct: 0 },
      'volumesMl[1] of at most six decimals where withinPct is 0, got 0.3333333333333333',
    ],
    [{ volumesMl: [1], withinPct: 0.001 }, 'withinPct to be 0 or at least 0.01, got 0.001'],
    [{ volumesMl: [1], withinPct: Number.NaN }, 'withinPct between 0 and 10, got NaN'],
  ])('refuses %o', (input, says) => {
    expect(() => wholeParts(input as WholePartsInput)).toThrow(`wholeParts requires ${says}`);
  });
});

test('the largest batch is used up to the last of one can, and could not be larger', () => {
  const can = fc.record({
    part: numberArb({ min: 0.01, max: 100 }),
    onHandMl: numberArb({ min: 0, max: 10_000 }),
  });
  fc.assert(
    fc.property(fc.array(can, { minLength: 1, maxLength: 6 }), (cans) => {
      const parts = cans.map(({ part }) => part);
      const onHandMl = cans.map((one) => one.onHandMl);
      const { batchMl, volumesMl, leftMl } = largestBatch({ parts, onHandMl });
      const wanted = mixByParts({ parts, batchMl }).volumesMl;
      volumesMl.forEach((volume, i) => {
        close(volume, wanted[i] ?? Number.NaN);
        close(volume + (leftMl[i] ?? Number.NaN), onHandMl[i] ?? Number.NaN);
      });
      for (const left of leftMl) expect(left).toBeGreaterThanOrEqual(0);
      expect(leftMl).toContain(0);
    }),
    // Next to nothing of one liquid: a hundredth of it is nothing at all.
    {
      examples: [
        [
          [
            { part: 100, onHandMl: 5e-324 },
            { part: 0.01, onHandMl: 0.00001 },
          ],
        ],
      ],
    },
  );
});

describe('alligation', () => {
  const trio = fc
    .tuple(strength, strength, strength)
    .map((three) => three.sort((a, b) => a - b))
    .filter(([weaker, , stronger]) => weaker !== stronger)
    .map(([weakerPct = 0, targetPct = 0, strongerPct = 0]) => ({ weakerPct, targetPct, strongerPct }));

  // Outside check: the exact arithmetic of a general library for fractions.
  test('gives parts that make exactly the strength wanted', () => {
    fc.assert(
      fc.property(trio, (three) => {
        const { strongerParts, weakerParts } = alligation({ ...three, batchMl: 100 });
        if (strongerParts === null || weakerParts === null) throw new Error('two decimals are exact');
        const strong = new Fraction(strongerParts);
        const weak = new Fraction(weakerParts);
        const dissolved = strong.mul(String(three.strongerPct)).add(weak.mul(String(three.weakerPct)));
        expect(dissolved.div(strong.add(weak)).equals(new Fraction(String(three.targetPct)))).toBe(true);
        expect(Number(strong.gcd(weak).n)).toBe(1);
      }),
    );
  });

  test('keeps the volume and what is dissolved in it', () => {
    fc.assert(
      fc.property(trio, numberArb({ min: 0, max: 10_000 }), (three, batchMl) => {
        const { strongerMl, weakerMl } = alligation({ ...three, batchMl });
        close(strongerMl + weakerMl, batchMl);
        close(strongerMl * three.strongerPct + weakerMl * three.weakerPct, batchMl * three.targetPct);
      }),
    );
  });

  test('has no whole parts for strengths of seven decimals, and its volumes all the same', () => {
    const mix = alligation({ strongerPct: 60.000_000_1, weakerPct: 40, targetPct: 50, batchMl: 200 });
    expect([mix.strongerParts, mix.weakerParts]).toEqual([null, null]);
    close(mix.strongerMl, 100, 1e-8);
  });
});

test('dilution is alligation with a thinner of nought, and thinning as well', () => {
  const two = fc
    .tuple(numberArb({ min: 1, max: 100 }), numberArb({ min: 1, max: 100 }))
    .map((pair) => pair.sort((a, b) => b - a));
  fc.assert(
    fc.property(two, numberArb({ min: 1, max: 10_000 }), ([fromPct = 0, toPct = 0], volumeMl) => {
      const { thinnerMl, totalMl } = dilution({ fromPct, toPct, volumeMl });
      close(totalMl, volumeMl + thinnerMl);
      close(totalMl * toPct, volumeMl * fromPct);
      const mix = alligation({ strongerPct: fromPct, weakerPct: 0, targetPct: toPct, batchMl: totalMl });
      close(mix.weakerMl, thinnerMl, 1e-6);
      const thinnerPct = (100 * thinnerMl) / volumeMl;
      close(
        thinnedSolids({ volumeSolidsPct: fromPct, thinnerPct: Math.min(1000, thinnerPct) }).thinnedSolidsPct,
        thinnerPct > 1000 ? fromPct / 11 : toPct,
      );
    }),
  );
});

test('a wiping varnish is a varnish with as much thinner again', () => {
  fc.assert(
    fc.property(
      numberArb({ min: 1, max: 5000 }),
      numberArb({ min: 1, max: 100 }),
      (batchMl, volumeSolidsPct) => {
        const { varnishMl, thinnerMl, mixSolidsPct } = wipingVarnish({ batchMl, volumeSolidsPct });
        expect([varnishMl, thinnerMl]).toEqual(mixByParts({ parts: [1, 1], batchMl }).volumesMl);
        close(mixSolidsPct, thinnedSolids({ volumeSolidsPct, thinnerPct: 100 }).thinnedSolidsPct);
      },
    ),
  );
});
