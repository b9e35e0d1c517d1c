import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mixLiquids, thinnedSolids, vocOfSolids, volumeSolids } from '../src/index.ts';

const close = (ours: number, theirs: number) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * Math.abs(theirs) + 1e-9);

describe('data sheets', () => {
  // Source: safety data sheet of an oil-modified polyurethane (1999), maker not named, as text: 7.29 lb/gal, specific
  // gravity 0.88, 66 % volatile by volume, mineral spirits 58 to 59 % by weight, 4.24 lb/gal or 509 g/L. Density of the
  // spirits from memory.
  test('of an oil-modified polyurethane agree with themselves', () => {
    for (const spiritsPct of [58, 59]) {
      const finish = { densityGPerL: 880, massSolidsPct: 100 - spiritsPct };
      const { volumeSolidsPct } = volumeSolids({ ...finish, volatileDensityGPerL: 780 });
      expectWithin(volumeSolidsPct, 34, 0.7, '100 − 66 % volatile by volume');
      const mix = mixLiquids({
        liquids: [{ ...finish, volumeMl: 500, volumeSolidsPct, massWaterPct: 0 }],
        waterDensityGPerL: 998,
      });
      expectWithin(mix.densityLbPerGal, 7.29, 0.06, 'weight of a gallon, from the specific gravity');
      expectWithin(mix.vocLbPerGal, 4.24, 0.11, 'solvent, lb/gal');
      expectWithin(mix.vocGPerL, 509, 12, 'solvent, g/L');
    }
  });

  // Source: data sheet of a water-borne spar varnish, maker not named, as text: 8.50 to 8.60 lb/gal (1.02 to 1.03 kg/L),
  // 26.6 to 27.3 % solids by weight, 24.6 to 25.6 % by volume, below 275 g/L (2.30 lb/gal). What evaporates is nearly
  // all water.
  test('of a water-borne varnish agree with themselves', () => {
    const sheet = { densityGPerL: 1025, massSolidsPct: 26.95 };
    const { volumeSolidsPct } = volumeSolids({ ...sheet, volatileDensityGPerL: 998 });
    expectWithin(volumeSolidsPct, 25.1, 0.5, 'solids by volume, middle of the range');
    // At the limit, by hand: 63.8 % of water leave 9.25 % of solvent, 94.8 g in the 344.7 mL that are not water.
    const liquid = { ...sheet, volumeMl: 1000, volumeSolidsPct, massWaterPct: 63.8 };
    const mix = mixLiquids({ liquids: [liquid], waterDensityGPerL: 998 });
    expectWithin(mix.densityLbPerGal, 8.55, 0.05, 'weight of a gallon, 8.50 to 8.60');
    expectWithin(mix.vocGPerL, 275, 0.5, 'limit of solvent, g/L');
    expectWithin(mix.vocLbPerGal, 2.3, 0.006, 'limit of solvent, lb/gal');
  });
});

describe('vocOfSolids', () => {
  // Source: 30 TAC 115.423(1): S = C / (1 − C/D), D = 7.36 lb/gal.
  test('is the solvent of the liquid over its solids by volume', () => {
    fc.assert(
      fc.property(
        numberArb({ min: 0, max: 0.95 }),
        numberArb({ min: 600, max: 1700 }),
        (solvent, density) => {
          const vocGPerL = Math.min(1000, solvent * density);
          const { perSolidsGPerL } = vocOfSolids({ vocGPerL, solventDensityGPerL: density });
          close(perSolidsGPerL * (1 - vocGPerL / density), vocGPerL);
        },
      ),
    );
  });

  test('stays the same however much of the very solvent is added', () => {
    fc.assert(
      fc.property(
        numberArb({ min: 1, max: 60 }),
        numberArb({ min: 0, max: 100 }),
        (solidsPct, thinnerPct) => {
          const solventOf = (solids: number) => ((100 - solids) / 100) * 780;
          const thinned = thinnedSolids({ volumeSolidsPct: solidsPct, thinnerPct }).thinnedSolidsPct;
          fc.pre(thinned > 6);
          const before = vocOfSolids({ vocGPerL: solventOf(solidsPct), solventDensityGPerL: 780 });
          const after = vocOfSolids({ vocGPerL: solventOf(thinned), solventDensityGPerL: 780 });
          // The solids are the same; the thinner comes on top, as much as it was of the liquid.
          close(after.perSolidsGPerL, before.perSolidsGPerL + ((thinnerPct / 100) * 780) / (solidsPct / 100));
        },
      ),
    );
  });
});
