import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  alligation,
  blendLiquids,
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

describe('blendLiquids', () => {
  const partsOf = (contentsPct: number[][], targetPct: number[]) =>
    blendLiquids({ contentsPct, targetPct, batchMl: 100 }).corners.map(({ parts }) => parts);

  // Source: "Alligation Method for Mixing 3 strengths", a university course: 50, 20 and 5 % zinc oxide for 10 %, answer
  // 1 part, 1 part and 10 parts.
  test('finds the two ways that the answer of a pharmacy course is a blend of', () => {
    expect(partsOf([[50], [20], [5]], [10])).toEqual([
      [1, 0, 8],
      [0, 1, 2],
    ]);
    // One batch of each corner, nine parts and three: 1, 1 and 10 parts of twelve.
    expect([1 + 0, 0 + 1, 8 + 2]).toEqual([1, 1, 10]);
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
