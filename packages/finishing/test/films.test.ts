import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  dryFilm,
  type FilmBuildInput,
  filmBuild,
  finishVolume,
  laidFilm,
  spreadingRate,
  thinnedSolids,
  transferEfficiency,
  wetFilm,
} from '../src/index.ts';

const close = (ours: number, theirs: number) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * Math.abs(theirs));

const MIL_UM = 25.4;

describe('a chart of coverage', () => {
  // Source: "Calculation/Conversion Chart", undated data sheet, maker not named, seen as a copy; how to calculate WFT to
  // DFT: 8 mils wet at 35 %.
  test('8 mil wet at 35 % leave 2.8 mil; thinned 10 % the solids are 32 % and it leaves less than the chart says', () => {
    const wet = { wetFilmUm: 8 * MIL_UM, volumeSolidsPct: 35 };
    expectWithin(dryFilm({ ...wet, thinnerPct: 0 }).dryFilmUm / MIL_UM, 2.8, 0.05, 'chart, not thinned');
    const { thinnedSolidsPct } = thinnedSolids({ volumeSolidsPct: 35, thinnerPct: 10 });
    expectWithin(thinnedSolidsPct, 32, 0.5, 'chart, thinned 10 %');
    // The chart prints 2.8 mil here as well, which leaves the thinner out; by its own formula it is 8 × 35 / 110.
    expectWithin(
      dryFilm({ ...wet, thinnerPct: 10 }).dryFilmUm / MIL_UM,
      2.55,
      0.005,
      '8 × 35 / 110, by hand',
    );
  });

  // Source: the same, relationship of WFT to DFT when thinned: WFT = DFT × (1 + thinner) / volume solids.
  test('wet film for a dry one, thinned, is the formula of the chart', () => {
    const cases = fc.tuple(
      numberArb({ min: 1, max: 200 }),
      numberArb({ min: 10, max: 100 }),
      numberArb({ min: 0, max: 300 }),
    );
    fc.assert(
      fc.property(cases, ([dryFilmUm, volumeSolidsPct, thinnerPct]) => {
        const thinned = thinnedSolids({ volumeSolidsPct, thinnerPct }).thinnedSolidsPct;
        fc.pre(thinned >= 1);
        const { wetFilmUm } = wetFilm({ dryFilmUm, volumeSolidsPct: thinned });
        close(wetFilmUm, (dryFilmUm * (1 + thinnerPct / 100)) / (volumeSolidsPct / 100));
        fc.pre(wetFilmUm <= 5000);
        close(dryFilm({ wetFilmUm, volumeSolidsPct, thinnerPct }).dryFilmUm, dryFilmUm);
      }),
    );
  });
});

// Source: `coverage-answer-2003`: a solid gallon covers 1604 ft² at 1.0 mils, so it lies 1604 over the area thick.
test('what a gallon leaves on an area is the film of a worked answer', () => {
  const volumeMl = unit(1, 'gal').toNumber('ml');
  const areaM2 = (ft2: number) => unit(ft2, 'sqft').toNumber('m^2');
  const { wetFilmUm } = laidFilm({ volumeMl, areaM2: areaM2(1604), lossPct: 0 });
  expectWithin(wetFilmUm / MIL_UM, 1.0, 0.05, 'worked answer');
  fc.assert(
    fc.property(numberArb({ min: 0.5, max: 100 }), (mils) => {
      const film = laidFilm({ volumeMl, areaM2: areaM2(1604 / mils), lossPct: 0 }).wetFilmUm / MIL_UM;
      expect(Math.abs(film / mils - 1)).toBeLessThan(0.5 / 1604);
    }),
  );
});

// Source: data sheet of a water-borne spar varnish, maker not named, as text: solids 24.6 to 25.6 % by volume, 4.0 to 6.0 mils wet
// for 1.0 to 1.5 mils dry.
test('a data sheet’s wet and dry films agree with its solids', () => {
  for (const [wetMils, dryMils] of [
    [4, 1],
    [6, 1.5],
  ] as const) {
    for (const volumeSolidsPct of [24.6, 25.6]) {
      const film =
        dryFilm({ wetFilmUm: wetMils * MIL_UM, volumeSolidsPct, thinnerPct: 0 }).dryFilmUm / MIL_UM;
      expectWithin(film, dryMils, 0.05, 'data sheet, dry film');
    }
  }
  // It prints 400 to 600 ft²/gal; its own solids and films allow 273 to 401 and less with losses. Kept on record.
  const ft2PerGal = (dryMils: number, volumeSolidsPct: number) =>
    spreadingRate({ volumeSolidsPct, dryFilmUm: dryMils * MIL_UM }).spreadingRateM2PerL *
    unit(1, 'm^2/L').toNumber('sqft/gal');
  expect(ft2PerGal(1.0, 25)).toBeLessThan(402);
  expect(ft2PerGal(1.5, 25)).toBeLessThan(268);
});

test('finish that is reckoned, laid and lost leaves the film that was planned', () => {
  const job = fc.record({
    areaM2: numberArb({ min: 0.01, max: 50 }),
    volumeSolidsPct: numberArb({ min: 20, max: 100 }),
    thinnerPct: numberArb({ min: 0, max: 300 }),
    dryFilmUm: numberArb({ min: 2, max: 100 }),
    lossPct: numberArb({ min: 0, max: 90 }),
  });
  fc.assert(
    fc.property(job, ({ areaM2, volumeSolidsPct, thinnerPct, dryFilmUm, lossPct }) => {
      const { thinnedSolidsPct } = thinnedSolids({ volumeSolidsPct, thinnerPct });
      const { spreadingRateM2PerL } = spreadingRate({ volumeSolidsPct: thinnedSolidsPct, dryFilmUm });
      const { volumeMl } = finishVolume({ areaM2, coatCount: 1, spreadingRateM2PerL, lossPct });
      const { wetFilmUm } = laidFilm({ volumeMl, areaM2, lossPct });
      close(dryFilm({ wetFilmUm, volumeSolidsPct, thinnerPct }).dryFilmUm, dryFilmUm);
    }),
  );
});

test('what is sprayed past by the rule’s figures is bought on top', () => {
  const job = { areaM2: 4, coatCount: 1, spreadingRateM2PerL: 8 };
  const { lossPct } = transferEfficiency({ method: 'air-spray' });
  // Source: 40 CFR 60.313, Table 1: a quarter of what leaves the gun arrives, so four times as much is needed.
  expectWithin(finishVolume({ ...job, lossPct }).volumeMl, 2000, 1e-9, '500 mL on the wood times four');
});

describe('filmBuild', () => {
  const coat = fc.record({
    wetFilmUm: numberArb({ min: 1, max: 300 }),
    volumeSolidsPct: numberArb({ min: 1, max: 100 }),
    thinnerPct: numberArb({ min: 0, max: 300 }),
    sandedUm: fc.constant(0),
  });
  const coats = fc.array(coat, { minLength: 1, maxLength: 10 });

  test('adds up what each coat leaves', () => {
    fc.assert(
      fc.property(coats, (given) => {
        const { coats: built, filmUm, laidUm } = filmBuild({ coats: given });
        let total = 0;
        for (const [i, one] of given.entries()) {
          total += (one.wetFilmUm * one.volumeSolidsPct) / (100 + one.thinnerPct);
          close(built[i]?.filmUm ?? Number.NaN, total);
        }
        expect(filmUm).toBe(built.at(-1)?.filmUm);
        expect(filmUm).toBeLessThanOrEqual(laidUm * (1 + 1e-12));
        // In whatever order they are laid.
        close(filmBuild({ coats: given.toReversed() }).filmUm, filmUm);
      }),
    );
  });

  test('takes off what is sanded', () => {
    fc.assert(
      fc.property(coats, numberArb({ min: 0, max: 1 }), (given, share) => {
        fc.pre(given.length > 1);
        const plain = filmBuild({ coats: given });
        const sandedUm = share * (plain.coats[0]?.filmUm ?? Number.NaN);
        const sanded = filmBuild({ coats: given.map((one, i) => (i === 1 ? { ...one, sandedUm } : one)) });
        expect(Math.abs(sanded.filmUm + sandedUm - plain.filmUm)).toBeLessThan(1e-9 * (1 + plain.filmUm));
      }),
    );
  });

  const plain = { wetFilmUm: 50, volumeSolidsPct: 50, thinnerPct: 0, sandedUm: 0 };
  test.each<[object, string]>([
    [{ coats: [] }, 'coats to be a list of 1 to 50, got 0'],
    [{ coats: 3 }, 'coats to be a list of 1 to 50, got undefined'],
    [{ coats: [null] }, 'coats[0].wetFilmUm between 1 and 5000, got undefined'],
    [
      { coats: [plain, { ...plain, sandedUm: 26 }] },
      'coats[1].sandedUm at most the film there is, 25, got 26',
    ],
    [{ coats: [{ ...plain, thinnerPct: Number.NaN }] }, 'coats[0].thinnerPct between 0 and 1000, got NaN'],
  ])('refuses %o', (input, says) => {
    expect(() => filmBuild(input as FilmBuildInput)).toThrow(`filmBuild requires ${says}`);
  });
});
