import fc from 'fast-check';
import { unit } from 'mathjs';
import { expect, test } from 'vitest';
import {
  alligation,
  blendLiquids,
  buyFinish,
  coatCalendar,
  dilution,
  dryFilm,
  filmBuild,
  finishAreas,
  finishVolume,
  jarHeight,
  jarMarks,
  laidFilm,
  largestBatch,
  mixByParts,
  mixLiquids,
  planBatches,
  planCoats,
  sheenOfCoats,
  shellacCut,
  shellacFlakes,
  shellacThinning,
  spreadingRate,
  thinnedSolids,
  vocContent,
  vocOfSolids,
  volumeSolids,
  wetFilm,
  wholeParts,
  wipingVarnish,
} from '../src/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const solids = between(5, 100);
const film = between(1, 1000);
const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b));

test('a mix uses up its batch, whatever the parts', () => {
  const parts = fc.array(between(0.1, 1000), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(parts, between(1, 100_000), between(0.5, 1), (parts, batchMl, times) => {
      const { partMl, volumesMl } = mixByParts({ parts, batchMl });
      close(
        volumesMl.reduce((sum, volume) => sum + volume, 0),
        batchMl,
      );
      volumesMl.forEach((volume, i) => {
        close(volume / partMl, parts[i] ?? Number.NaN);
      });
      // Three parts to one are six parts to two.
      const halved = mixByParts({ parts: parts.map((part) => part * times), batchMl }).volumesMl;
      halved.forEach((volume, i) => {
        close(volume, volumesMl[i] ?? Number.NaN);
      });
      // The order of pouring does not matter.
      const turned = mixByParts({ parts: parts.toReversed(), batchMl }).volumesMl.toReversed();
      turned.forEach((volume, i) => {
        close(volume, volumesMl[i] ?? Number.NaN);
      });
    }),
  );
});

test('the solids of a litre are on the wood, by volume', () => {
  fc.assert(
    fc.property(solids, film, (volumeSolidsPct, dryFilmUm) => {
      const { spreadingRateM2PerL } = spreadingRate({ volumeSolidsPct, dryFilmUm });
      const onTheWood = unit(spreadingRateM2PerL, 'm^2').toNumber('mm^2') * (dryFilmUm / 1000);
      close(onTheWood, unit(volumeSolidsPct / 100, 'L').toNumber('mm^3'));
    }),
  );
});

test('a wet film that is laid covers what the spreading rate says', () => {
  fc.assert(
    fc.property(solids, film, (volumeSolidsPct, dryFilmUm) => {
      const { wetFilmUm } = wetFilm({ dryFilmUm, volumeSolidsPct });
      const { spreadingRateM2PerL } = spreadingRate({ volumeSolidsPct, dryFilmUm });
      close(unit(spreadingRateM2PerL * wetFilmUm, 'm^2 um').toNumber('L'), 1);
      expect(wetFilmUm).toBeGreaterThanOrEqual(dryFilmUm);
    }),
    // Times 100 by 100 is less than it was, by a rounding.
    { examples: [[100, 109.30877728468954]] },
  );
});

test('thinning twice is thinning once by both, and takes no solids away', () => {
  fc.assert(
    fc.property(solids, between(0, 100), between(0, 100), (volumeSolidsPct, first, second) => {
      const thinned = (from: number, thinnerPct: number) =>
        thinnedSolids({ volumeSolidsPct: from, thinnerPct }).thinnedSolidsPct;
      const once = thinned(volumeSolidsPct, first);
      close(once * (1 + first / 100), volumeSolidsPct);
      const both = first + second + (first * second) / 100;
      close(thinned(once, second), thinned(volumeSolidsPct, both));
    }),
  );
});

test('what is not lost is on the wood, coat by coat', () => {
  fc.assert(
    fc.property(
      between(0.01, 1000),
      fc.integer({ min: 1, max: 20 }),
      between(1, 50),
      between(0, 90),
      (areaM2, coatCount, spreadingRateM2PerL, lossPct) => {
        const { volumeMl } = finishVolume({ areaM2, coatCount, spreadingRateM2PerL, lossPct });
        const coveredM2 = ((volumeMl / 1000) * (100 - lossPct) * spreadingRateM2PerL) / 100;
        close(coveredM2, areaM2 * coatCount);
        const oneCoat = finishVolume({ areaM2, coatCount: 1, spreadingRateM2PerL, lossPct }).volumeMl;
        close(volumeMl, coatCount * oneCoat);
      },
    ),
  );
});

test('what is given nothing says so by its own name', () => {
  const all = [
    alligation,
    blendLiquids,
    buyFinish,
    coatCalendar,
    dilution,
    dryFilm,
    filmBuild,
    finishAreas,
    finishVolume,
    jarHeight,
    jarMarks,
    laidFilm,
    largestBatch,
    mixByParts,
    mixLiquids,
    planBatches,
    planCoats,
    sheenOfCoats,
    shellacCut,
    shellacFlakes,
    shellacThinning,
    spreadingRate,
    thinnedSolids,
    vocContent,
    vocOfSolids,
    volumeSolids,
    wetFilm,
    wholeParts,
    wipingVarnish,
  ] as readonly ((input: never) => unknown)[];
  for (const ours of all) {
    for (const nothing of [undefined, null, {}]) {
      expect(() => ours(nothing as never)).toThrow(RangeError);
      expect(() => ours(nothing as never)).toThrow(`${ours.name} requires `);
    }
  }
});
