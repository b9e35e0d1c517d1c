import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import { shellacThinning, spreadingRate } from '../src/index.ts';
import { printedShellacThinning } from '../test/printed-shellac-thinning.ts';
import { printedSpreadingRates } from '../test/printed-spreading-rates.ts';

/** ft²/gal in one m²/L: a US gallon is 231 in³ of 25.4 mm, a square foot 304.8 mm squared. */
const FT2_PER_GAL = (231 * 25.4 ** 3) / 1e6 / 0.3048 ** 2;

const tables: readonly AccuracyTable[] = [
  {
    title: '`spreadingRate`: a printed chart, maker not named, with one misprint',
    unit: 'ft²/gal',
    decimals: 2,
    remark: 'One cell is a misprint; the others that differ are cut off after the last digit, not rounded.',
    deviations: printedSpreadingRates.map(([mils, volumeSolidsPct, printed]) => ({
      printed,
      ours: spreadingRate({ volumeSolidsPct, dryFilmUm: mils * 25.4 }).spreadingRateM2PerL * FT2_PER_GAL,
      known: 0.5,
      confirmed: 'text' as const,
    })),
  },
  {
    title: '`shellacThinning`: a magazine’s table in quarter parts, five cells out of line',
    unit: 'parts',
    decimals: 2,
    remark:
      'Five cells are out of line with the rest of the table; the others that differ are rounded to another quarter.',
    deviations: printedShellacThinning.map(([fromCutLbPerGal, toCutLbPerGal, printed]) => ({
      printed,
      ours: shellacThinning({
        solutionMl: 1,
        fromCutLbPerGal,
        toCutLbPerGal,
        // A pound of flakes takes up a tenth of a gallon, as the note to the table has it.
        flakeDensityGPerL: 1198.264273168966,
        cutPer: 'alcohol',
      }).alcoholMl,
      known: 0.125,
      confirmed: 'text' as const,
    })),
  },
];

export default tables;
