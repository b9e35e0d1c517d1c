import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  changeBesideMetal,
  coefficientFromShrinkage,
  fitStrip,
  longitudinalShrinkage,
  type StripInWood,
  thermalExpansionTable,
} from '../src/index.ts';
import { figuresIn, isPlain } from './figures.ts';

const coefficient = numberArb({ min: 0, max: 0.01 });
const expansion = numberArb({ min: 0, max: 60 });
const moisture = numberArb({ min: 0, max: 30 });
const temperature = numberArb({ min: -30, max: 60 });
const share = numberArb({ min: 0, max: 1 });
const ordered = (one: fc.Arbitrary<number>) =>
  fc.tuple(one, one).map(([a, b]): [number, number] => (a <= b ? [a, b] : [b, a]));

const stripArb: fc.Arbitrary<StripInWood> = fc
  .record({
    strip: fc.record({
      lengthMm: numberArb({ min: 1, max: 3000 }),
      widthMm: numberArb({ min: 1, max: 100 }),
      expansionUmPerMK: expansion,
    }),
    runs: fc.constantFrom('along the grain' as const, 'across the grain' as const),
    wood: fc.record({
      alongPerPct: coefficient,
      acrossPerPct: coefficient,
      alongUmPerMK: expansion,
      acrossUmPerMK: expansion,
    }),
    buildingDay: fc.record({ moisturePct: moisture, temperatureC: temperature }),
    moistures: ordered(moisture),
    temperatures: ordered(temperature),
    held: share,
    toleranceMm: numberArb({ min: 0, max: 5 }),
  })
  .map(({ moistures, temperatures, held, ...rest }) => ({
    ...rest,
    year: {
      driestMoisturePct: moistures[0],
      wettestMoisturePct: moistures[1],
      coldestTemperatureC: temperatures[0],
      warmestTemperatureC: temperatures[1],
    },
    heldAtMm: Math.min(rest.strip.lengthMm, held * rest.strip.lengthMm),
  }));

function near(ours: number, expected: number): void {
  expect(Math.abs(ours - expected)).toBeLessThan(1e-9);
}

/** By how much the metal outgrows the wood lengthwise on some day of the year, or on building day. */
function differenceOn(given: StripInWood, toMoisturePct: number, toTemperatureC: number): number {
  const grain = given.runs === 'along the grain' ? 'along' : 'across';
  return changeBesideMetal({
    lengthMm: given.strip.lengthMm,
    coefficientPerPct: given.wood[`${grain}PerPct`],
    woodUmPerMK: given.wood[`${grain}UmPerMK`],
    metalUmPerMK: given.strip.expansionUmPerMK,
    fromMoisturePct: given.buildingDay.moisturePct,
    toMoisturePct,
    fromTemperatureC: given.buildingDay.temperatureC,
    toTemperatureC,
  }).differenceMm;
}

test('no day of the year goes beyond what is said, and some day comes to it', () => {
  fc.assert(
    fc.property(stripArb, share, share, (given, a, b) => {
      const { year } = given;
      const { length } = fitStrip(given);
      const { moisturePct: builtPct, temperatureC: builtC } = given.buildingDay;
      const moistures = [builtPct, year.driestMoisturePct, year.wettestMoisturePct];
      const temperatures = [builtC, year.coldestTemperatureC, year.warmestTemperatureC];
      const between = (some: number[], part: number) =>
        Math.min(...some) + part * (Math.max(...some) - Math.min(...some));
      const someDay = differenceOn(given, between(moistures, a), between(temperatures, b));
      expect(someDay).toBeLessThanOrEqual(length.metalOutgrowsMm + 1e-9);
      expect(-someDay).toBeLessThanOrEqual(length.woodOutgrowsMm + 1e-9);
      const met = moistures.flatMap((moisturePct) =>
        temperatures.map((temperatureC) => differenceOn(given, moisturePct, temperatureC)),
      );
      near(length.metalOutgrowsMm, Math.max(...met));
      near(length.woodOutgrowsMm, -Math.min(...met));
    }),
  );
});

test('both ends share what is needed, by their distance from the fastening', () => {
  fc.assert(
    fc.property(stripArb, (given) => {
      const { length, width } = fitStrip(given);
      expect(figuresIn({ length, width }).filter((figure) => !isPlain(figure))).toEqual([]);
      near(length.start.gapMm + length.end.gapMm, length.metalOutgrowsMm);
      near(length.start.travelMm + length.end.travelMm, length.metalOutgrowsMm + length.woodOutgrowsMm);
      near(length.end.gapMm * given.heldAtMm, length.start.gapMm * (given.strip.lengthMm - given.heldAtMm));
      expect(width.start).toEqual(width.end);
      expect(fitStrip({ ...given, heldAtMm: 0 }).length.start).toEqual({ gapMm: 0, travelMm: 0 });
    }),
  );
});

test('fastened at the other end it is the same strip turned about', () => {
  fc.assert(
    fc.property(stripArb, (given) => {
      const { length } = fitStrip(given);
      const turned = fitStrip({ ...given, heldAtMm: given.strip.lengthMm - given.heldAtMm }).length;
      near(turned.start.gapMm, length.end.gapMm);
      near(turned.end.travelMm, length.start.travelMm);
    }),
  );
});

test('a strip laid the other way, its sides exchanged, is the same strip', () => {
  fc.assert(
    fc.property(stripArb, (given) => {
      const { lengthMm, widthMm } = given.strip;
      fc.pre(lengthMm <= 1000);
      const crossed = fitStrip({
        ...given,
        strip: { ...given.strip, lengthMm: widthMm, widthMm: lengthMm },
        runs: given.runs === 'along the grain' ? 'across the grain' : 'along the grain',
        heldAtMm: widthMm / 2,
      });
      expect(crossed.length).toEqual(fitStrip(given).width);
    }),
  );
});

test('the verdict follows the tolerance at the end that moves most', () => {
  fc.assert(
    fc.property(stripArb, (given) => {
      const { length } = fitStrip(given);
      const freerShare =
        Math.max(given.heldAtMm, given.strip.lengthMm - given.heldAtMm) / given.strip.lengthMm;
      const [metal, wood] = [length.metalOutgrowsMm * freerShare, length.woodOutgrowsMm * freerShare];
      fc.pre(Math.abs(metal - given.toleranceMm) > 1e-9 && Math.abs(wood - given.toleranceMm) > 1e-9);
      expect(length.verdict === 'needs a gap').toBe(metal > given.toleranceMm);
      expect(length.verdict === 'moves together').toBe(Math.max(metal, wood) < given.toleranceMm);
      expect(['moves together', 'needs slots', 'needs a gap']).toContain(length.verdict);
    }),
  );
});

test('what expands alike and never changes its moisture moves together', () => {
  fc.assert(
    fc.property(stripArb, (given) => {
      const { expansionUmPerMK } = given.strip;
      const wood = {
        alongPerPct: 0,
        acrossPerPct: 0,
        alongUmPerMK: expansionUmPerMK,
        acrossUmPerMK: expansionUmPerMK,
      };
      const { length, width } = fitStrip({ ...given, wood, toleranceMm: 0 });
      const still = { gapMm: 0, travelMm: 0 };
      expect(length).toEqual({
        verdict: 'moves together',
        metalOutgrowsMm: 0,
        woodOutgrowsMm: 0,
        start: still,
        end: still,
      });
      expect(width).toEqual(length);
    }),
  );
});

const expansionOf = (material: string) =>
  thermalExpansionTable.find((row) => row.material === material)?.highUmPerMK ?? Number.NaN;

/** The brass cutting guide of the bindery bench: 1500 × 20 mm in flatsawn sugar maple, fastened at its left end. */
const guide: StripInWood = {
  strip: { lengthMm: 1500, widthMm: 20, expansionUmPerMK: expansionOf('brass') },
  runs: 'along the grain',
  wood: {
    alongPerPct: coefficientFromShrinkage({
      shrinkagePct: longitudinalShrinkage.highPct,
      fibreSaturationPct: 30,
    }).coefficientPerPct,
    acrossPerPct: 0.00353,
    alongUmPerMK: 3.8,
    acrossUmPerMK: 39.8,
  },
  buildingDay: { moisturePct: 8, temperatureC: 20 },
  year: {
    driestMoisturePct: 6,
    wettestMoisturePct: 11,
    coldestTemperatureC: 14,
    warmestTemperatureC: 28,
  },
  heldAtMm: 0,
  toleranceMm: 0.2,
};

test('the cutting guide, worked by hand', () => {
  const { length, width } = fitStrip(guide);
  // Along the grain 1 / (3000 / 0.2 − 20) = 0.00006676 for each 1 %: 1500 mm × 2 % is 0.2003, 3 % is 0.3004 mm.
  // Brass over maple, 1.5 m × (19 − 3.8) µm: 0.0228 mm for each kelvin, so 8 K are 0.1824 and 6 K 0.1368 mm.
  expectWithin(length.metalOutgrowsMm, 0.2003 + 0.1824, 0.0001, 'by hand: driest and warmest');
  expectWithin(length.woodOutgrowsMm, 0.3004 + 0.1368, 0.0001, 'by hand: wettest and coldest');
  expect(length.verdict).toBe('needs a gap');
  // Across, 20 mm: 2 % are 0.1412, 3 % are 0.2118 mm; 20.8 µm less than the maple, 6 K are 0.0025, 8 K 0.0033 mm.
  expectWithin(width.metalOutgrowsMm, 0.1412 + 0.0025, 0.0001, 'by hand: driest and coldest');
  expectWithin(width.woodOutgrowsMm, 0.2118 + 0.0033, 0.0001, 'by hand: wettest and warmest');
});

test('laid across the top the same strip parts from the wood some thirty times as far', () => {
  const across = fitStrip({ ...guide, runs: 'across the grain' }).length;
  // 1500 mm × 0.00353: 2 % are 10.59, 3 % are 15.885 mm; 0.0312 mm for each kelvin, 6 K 0.1872, 8 K 0.2496 mm.
  expectWithin(across.metalOutgrowsMm, 10.7772, 0.0001, 'by hand');
  expectWithin(across.woodOutgrowsMm, 16.1346, 0.0001, 'by hand');
});

test('steel parts less from the wood than brass does along the grain, as it expands less', () => {
  const steel = { ...guide.strip, expansionUmPerMK: expansionOf('carbon steel') };
  const steelTravel = fitStrip({ ...guide, strip: steel }).length.end.travelMm;
  expect(steelTravel).toBeLessThan(fitStrip(guide).length.end.travelMm);
});

test('a wood that only swells from building day on leaves the strip unpressed', () => {
  const dryBuilt = { ...guide, buildingDay: { moisturePct: 6, temperatureC: 28 } };
  expect(fitStrip({ ...dryBuilt, wood: { ...guide.wood, alongPerPct: 0.0002 } }).length).toMatchObject({
    verdict: 'needs slots',
    metalOutgrowsMm: 0,
    end: { gapMm: 0 },
  });
});

test('wood built wetter than its year may meet the warmest day of it while it is still as wet', () => {
  const { buildingDay, year } = guide;
  const { length } = fitStrip({ ...guide, buildingDay: { ...buildingDay, moisturePct: 13 } });
  // Along the grain as above, 0.10013 mm for each 1 %: driest is now 7 % down, and nothing is wetter.
  expectWithin(length.metalOutgrowsMm, 0.7009 + 0.1824, 0.0001, 'by hand: driest and warmest');
  expectWithin(length.woodOutgrowsMm, 0.1368, 0.0001, 'by hand: as wet as when built, and coldest');
  const widened = { ...year, wettestMoisturePct: 13 };
  const built = { ...guide, buildingDay: { ...buildingDay, moisturePct: 13 } };
  expect(fitStrip({ ...built, year: widened })).toEqual(fitStrip(built));
});

test('a strip held at −0 is held at its start', () => {
  expect(fitStrip({ ...guide, heldAtMm: -0 })).toEqual(fitStrip(guide));
});

describe('refusals name what was given', () => {
  test.each([
    [{ strip: { ...guide.strip, widthMm: 0 } }, 'strip.widthMm between 1 and 1000, got 0'],
    [{ strip: undefined }, 'strip.lengthMm between 1 and 20000, got undefined'],
    [{ runs: 'askew' }, 'runs to be one of along the grain, across the grain, got "askew"'],
    [{ wood: { ...guide.wood, acrossPerPct: 3 } }, 'wood.acrossPerPct between 0 and 0.02, got 3'],
    [
      { buildingDay: { ...guide.buildingDay, temperatureC: 900 } },
      'buildingDay.temperatureC between -60 and 150, got 900',
    ],
    [
      { year: { ...guide.year, driestMoisturePct: 12 } },
      'year.driestMoisturePct at most year.wettestMoisturePct, got 12 and 11',
    ],
    [
      { year: { ...guide.year, coldestTemperatureC: 30 } },
      'year.coldestTemperatureC at most year.warmestTemperatureC, got 30 and 28',
    ],
    [{ heldAtMm: 1501 }, 'heldAtMm between 0 and 1500, got 1501'],
    [{ toleranceMm: Number.NaN }, 'toleranceMm between 0 and 100, got NaN'],
  ])('%o', (change, message) => {
    expect(() => fitStrip({ ...guide, ...change } as StripInWood)).toThrow(
      new RangeError(`fitStrip requires ${message}`),
    );
  });
});
