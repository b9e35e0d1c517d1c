import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  type LiquidContents,
  type MixLiquidsInput,
  mixLiquids,
  thinnedSolids,
  vocContent,
} from '../src/index.ts';

const close = (ours: number | null, theirs: number | null, relative = 1e-9) =>
  expect(Math.abs((ours ?? Number.NaN) - (theirs ?? Number.NaN))).toBeLessThanOrEqual(
    relative * Math.abs(theirs ?? Number.NaN) + 1e-9,
  );

/** g/L in one lb/gal, from a general library for units. */
const LB_PER_GAL = unit(1, 'lb/gal').toNumber('g/L');
const GAL_ML = unit(1, 'gal').toNumber('ml');

/** A liquid without water and of that much solvent, lb/gal; how dense it is makes no difference to the solvent. */
const liquid = (gallons: number, solventLbPerGal: number): LiquidContents => ({
  volumeMl: gallons * GAL_ML,
  densityGPerL: 9 * LB_PER_GAL,
  massSolidsPct: 100 * (1 - solventLbPerGal / 9),
  volumeSolidsPct: 30,
  massWaterPct: 0,
});
const water = (volumeMl: number): LiquidContents => ({
  volumeMl,
  densityGPerL: 998,
  massSolidsPct: 0,
  volumeSolidsPct: 0,
  massWaterPct: 100,
});
const mixed = (...liquids: LiquidContents[]) => mixLiquids({ liquids, waterDensityGPerL: 998 });

// Source: "Organic Finishing Guidebook" (2013), Appendix B, as text; figures in lb/gal.
describe('the problems of a guidebook for finishing shops', () => {
  test('a gallon of enamel at 2.5 and a quarter of thinner at 6.8 make 3.36', () => {
    expectWithin(mixed(liquid(1, 2.5), liquid(0.25, 6.8)).vocLbPerGal, 3.36, 0.005, 'first problem');
  });

  test('0.55 gal of thinner at 6.4 take 5.0 gal with 15.9 lb up to 3.5', () => {
    expectWithin(
      mixed(liquid(5, 15.9 / 5), liquid(0.55, 6.4)).vocLbPerGal,
      3.5,
      0.005,
      'solution using algebra',
    );
  });

  test('three parts at 3.1 and one at 1.8 make 11.1 lb in 4 gal, less water, however much water goes in', () => {
    const dry = mixed(liquid(3, 3.1), liquid(1, 1.8));
    const wet = mixed(liquid(3, 3.1), liquid(1, 1.8), water(7 * GAL_ML));
    // Printed as 2.75; 11.1 / 4 is 2.775, so its last digit was cut off.
    expectWithin(dry.vocLbPerGal, 2.775, 1e-9, 'example 2: 11.1 / 4');
    expectWithin(wet.vocLbPerGal, 2.75, 0.026, 'example 2, with seven parts of water');
    close(wet.solventGPerL, (dry.solventGPerL * 4) / 11);
  });

  test('1 lb/gal is 119.8 g/L', () => {
    const { vocGPerL, vocLbPerGal } = mixed(liquid(1, 4));
    expectWithin(
      (vocGPerL ?? Number.NaN) / (vocLbPerGal ?? Number.NaN),
      119.8,
      0.05,
      'converting from English to metric',
    );
  });
});

// Source: `voc-answer-2004`: density 8.52 lb/gal, 53.0 % water and 20.8 % solids by weight, water at 8.33 lb/gal: 2.23
// lb/gal as it is, 4.87 less water.
test('a worked answer on a water-borne liquid comes out by the mix as well', () => {
  const one: LiquidContents = {
    volumeMl: GAL_ML,
    densityGPerL: 8.52 * LB_PER_GAL,
    massSolidsPct: 20.8,
    volumeSolidsPct: 20,
    massWaterPct: 53,
  };
  const mix = mixLiquids({ liquids: [one], waterDensityGPerL: 8.33 * LB_PER_GAL });
  expectWithin(mix.solventGPerL / LB_PER_GAL, 2.23, 0.005, 'true VOC');
  expectWithin(mix.vocLbPerGal, 4.87, 0.005, 'less water');
});

describe('mixLiquids', () => {
  /** Solids, water and solvent of a litre by volume, each of its own density, so that they have room in it. */
  const contents: fc.Arbitrary<LiquidContents> = fc
    .record({
      volumeMl: numberArb({ min: 1, max: 5000 }),
      solids: numberArb({ min: 0, max: 1 }),
      wet: numberArb({ min: 0, max: 1 }),
      solidsDensity: numberArb({ min: 900, max: 2400 }),
      solventDensity: numberArb({ min: 650, max: 1650 }),
    })
    .map(({ volumeMl, solids, wet, solidsDensity, solventDensity }) => {
      const water = (1 - solids) * wet * 998;
      const densityGPerL = solids * solidsDensity + water + (1 - solids) * (1 - wet) * solventDensity;
      const massSolidsPct = Math.min(100, (100 * solids * solidsDensity) / densityGPerL);
      const massWaterPct = Math.min(100 - massSolidsPct, (100 * water) / densityGPerL);
      return { volumeMl, densityGPerL, massSolidsPct, volumeSolidsPct: 100 * solids, massWaterPct };
    });
  const liquids = fc.array(contents, { minLength: 2, maxLength: 6 });

  test('keeps mass, volume, solids, water and solvent', () => {
    fc.assert(
      fc.property(liquids, (given) => {
        const mix = mixed(...given);
        const total = (of: (one: LiquidContents) => number) => given.reduce((sum, one) => sum + of(one), 0);
        const grams = ({ volumeMl, densityGPerL }: LiquidContents) => (volumeMl * densityGPerL) / 1000;
        close(
          mix.volumeMl,
          total((one) => one.volumeMl),
        );
        close(mix.massG, total(grams));
        close(grams(mix), mix.massG);
        close(
          mix.massG * mix.massSolidsPct,
          total((one) => grams(one) * one.massSolidsPct),
        );
        close(
          mix.volumeMl * mix.volumeSolidsPct,
          total((one) => one.volumeMl * one.volumeSolidsPct),
        );
        close(
          mix.massG * mix.massWaterPct,
          total((one) => grams(one) * one.massWaterPct),
        );
        const solventG = total((one) => (grams(one) * (100 - one.massSolidsPct - one.massWaterPct)) / 100);
        expect(Math.abs((mix.solventGPerL * mix.volumeMl) / 1000 - solventG)).toBeLessThan(1e-9 * mix.massG);
      }),
    );
  });

  test('a mix of mixes is one mix, in whatever order', () => {
    fc.assert(
      fc.property(liquids, fc.nat(), (given, cut) => {
        const at = 1 + (cut % (given.length - 1));
        const once = mixed(...given);
        const twice = mixed(mixed(...given.slice(0, at)), mixed(...given.slice(at)));
        const turned = mixed(...given.toReversed());
        for (const other of [twice, turned]) {
          for (const [name, value] of Object.entries(once)) {
            if (typeof value !== 'number') continue;
            const theirs = other[name as keyof typeof other] as number;
            expect(Math.abs(value - theirs)).toBeLessThanOrEqual(
              1e-9 * Math.max(1, once.densityGPerL, Math.abs(value)),
            );
          }
        }
      }),
      {
        // All solids: their share of the mass came out above 100 % by a rounding, and the mix was refused.
        examples: [
          [
            [
              {
                volumeMl: 4110.393956917338,
                densityGPerL: 994.139701873064,
                massSolidsPct: 100,
                volumeSolidsPct: 0,
                massWaterPct: 0,
              },
              { volumeMl: 1, densityGPerL: 700, massSolidsPct: 0, volumeSolidsPct: 0, massWaterPct: 0 },
            ],
            0,
          ],
        ],
      },
    );
  });

  test('twice as much of everything is the same finish', () => {
    fc.assert(
      fc.property(liquids, numberArb({ min: 0.1, max: 10 }), (given, times) => {
        const once = mixed(...given);
        const more = mixed(...given.map((one) => ({ ...one, volumeMl: one.volumeMl * times })));
        close(more.densityGPerL, once.densityGPerL);
        close(more.massSolidsPct, once.massSolidsPct);
        close(more.volumeMl, once.volumeMl * times);
      }),
    );
  });

  test('its content is that of the rule, with nothing exempt', () => {
    fc.assert(
      fc.property(liquids, (given) => {
        const mix = mixed(...given);
        const waterG = (mix.massG * mix.massWaterPct) / 100;
        fc.pre(waterG / 0.998 < 0.98 * mix.volumeMl);
        // Shares that add up to all of it may miss that by a rounding: no less than the water evaporates.
        const solventPct = Math.max(0, 100 - mix.massSolidsPct - mix.massWaterPct);
        const { vocGPerL, vocLbPerGal } = vocContent({
          volatilesG: waterG + (mix.massG * solventPct) / 100,
          waterG,
          exemptG: 0,
          volumeMl: mix.volumeMl,
          waterDensityGPerL: 998,
          exemptDensityGPerL: 790,
        });
        close(mix.vocGPerL, vocGPerL, 1e-6);
        close(mix.vocLbPerGal, vocLbPerGal, 1e-6);
      }),
    );
  });

  test('thinning by the mix is thinning by the rule, and water is no solvent', () => {
    const varnish = {
      volumeMl: 400,
      densityGPerL: 900,
      massSolidsPct: 55,
      volumeSolidsPct: 50,
      massWaterPct: 0,
    };
    fc.assert(
      fc.property(numberArb({ min: 0, max: 300 }), (thinnerPct) => {
        const spirits = {
          volumeMl: 4 * thinnerPct,
          densityGPerL: 780,
          massSolidsPct: 0,
          volumeSolidsPct: 0,
          massWaterPct: 0,
        };
        const mix = mixed(varnish, spirits);
        close(mix.volumeSolidsPct, thinnedSolids({ volumeSolidsPct: 50, thinnerPct }).thinnedSolidsPct);
        const thinned = mixed(varnish, water(4 * thinnerPct));
        close(thinned.vocGPerL, mixed(varnish).vocGPerL, 1e-6);
      }),
    );
    expect(mixed(water(100))).toMatchObject({ vocGPerL: null, vocLbPerGal: null, solventGPerL: 0 });
  });

  const one = { volumeMl: 400, densityGPerL: 900, massSolidsPct: 55, volumeSolidsPct: 50, massWaterPct: 0 };
  test.each<[object, string]>([
    [{ liquids: [], waterDensityGPerL: 998 }, 'liquids to be a list of 1 to 12, got 0'],
    [{ liquids: [one] }, 'waterDensityGPerL between 950 and 1000, got undefined'],
    [
      { liquids: [{ ...one, massWaterPct: 50 }], waterDensityGPerL: 998 },
      'liquids[0].massSolidsPct and massWaterPct at most 100 together, got 105',
    ],
    // 1400 g of water would fill 1400 mL of a litre.
    [
      {
        liquids: [
          { volumeMl: 100, densityGPerL: 1400, massSolidsPct: 0, volumeSolidsPct: 0, massWaterPct: 100 },
        ],
        waterDensityGPerL: 1000,
      },
      'liquids[0] to have room for its solids, water and solvent, got at least 1400 mL of them in a litre',
    ],
    [{ liquids: [{ ...one, volumeMl: 0 }], waterDensityGPerL: 998 }, 'some volume above 0, got 0'],
    [
      { liquids: [{ ...one, densityGPerL: Number.NaN }], waterDensityGPerL: 998 },
      'liquids[0].densityGPerL between 500 and 2500, got NaN',
    ],
  ])('refuses %o', (input, says) => {
    expect(() => mixLiquids(input as MixLiquidsInput)).toThrow(`mixLiquids requires ${says}`);
  });
});

const dry = {
  volatilesG: 400,
  waterG: 0,
  exemptG: 0,
  volumeMl: 1000,
  waterDensityGPerL: 998,
  exemptDensityGPerL: 790,
};

// Water and exempt compounds have a mass and a density, so no volume can contradict them.
test.each<[object, string]>([
  [{ waterG: 300, waterDensityGPerL: 0 }, 'waterDensityGPerL between 950 and 1000, got 0'],
  [{ waterG: 0, waterDensityGPerL: Number.NaN }, 'waterDensityGPerL between 950 and 1000, got NaN'],
  [
    { waterG: 300, exemptG: 101, exemptDensityGPerL: 1010, waterDensityGPerL: 1000 },
    'volatilesG above waterG and exemptG by at most 2 g/mL, got -1 g in 600 mL',
  ],
  [{ waterG: 399.2, volumeMl: 400 }, 'waterG and exemptG to fill at most 99 % of volumeMl, got 400 mL'],
  [
    { volatilesG: 1e6, volumeMl: 1 },
    'volatilesG above waterG and exemptG by at most 2 g/mL, got 1000000 g in 1 mL',
  ],
])('vocContent refuses %o', (change, says) => {
  expect(() => vocContent({ ...dry, ...change })).toThrow(`vocContent requires ${says}`);
});

// Source: 40 CFR 59.400(c)(5) sets no limit for containers of a litre or less; the content is counted the same.
test('the content is that of any batch, large or small', () => {
  fc.assert(
    fc.property(numberArb({ min: 1, max: 900 }), numberArb({ min: 0.01, max: 1000 }), (grams, times) => {
      const batch = { ...dry, volatilesG: grams };
      const scaled = { ...batch, volatilesG: grams * times, volumeMl: 1000 * times };
      fc.pre(scaled.volumeMl >= 1);
      close(vocContent(scaled).vocGPerL, vocContent(batch).vocGPerL);
    }),
  );
});
