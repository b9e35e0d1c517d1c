import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import { MM_PER_IN, N_PER_LBF } from '../src/inch-pound.ts';
import {
  commonNailTable,
  lagScrewWithdrawalReference,
  lateralTestValue,
  nailWithdrawalReference,
  screwWithdrawalReference,
} from '../src/index.ts';
import { lagScrewLbf, nailLbf } from '../test/printed-joints.ts';
import {
  groupedWoods,
  isMisprinted,
  lagScrewsThroughSteel,
  lagScrewsThroughWood,
  lagScrewWithdrawals,
  lateralCoefficients,
  metricNails,
  nailsSideways,
} from '../test/printed-resistance.ts';

/** A tenth of an inch thick, ten inches deep. */
const oneSquareInch = { shankDiameterMm: 2.54, diameterMm: 2.54, threadInWoodMm: 254, penetrationMm: 254 };

const tables: readonly AccuracyTable[] = [
  {
    title: '`lagScrewWithdrawalReference`: NDS, Table 12.2A',
    unit: 'lb/in',
    decimals: 2,
    surface: { row: 'specific gravity', column: 'diameter, in' },
    deviations: lagScrewWithdrawals.map(({ ovendrySpecificGravityRatio, diameterIn, referenceLbf }) => ({
      printed: referenceLbf,
      ours:
        lagScrewWithdrawalReference({
          ovendrySpecificGravityRatio,
          shankDiameterMm: diameterIn * MM_PER_IN,
          threadInWoodMm: MM_PER_IN,
          grain: 'side',
        }).referenceN / N_PER_LBF,
      known: 0.5,
      confirmed: 'text',
      at: { row: ovendrySpecificGravityRatio, column: diameterIn },
    })),
  },
  {
    title: '`lateralResistanceReference`: NDS, Table 12K, lag screws through steel',
    unit: 'lb',
    decimals: 1,
    deviations: lagScrewsThroughSteel.map((cell) => ({
      printed: cell.referenceLbf,
      ours: lagScrewLbf(cell),
      known: 5,
      confirmed: 'text',
    })),
  },
  {
    title:
      '`lateralResistanceReference`: formwork handbook, Table 4-26, lag screws through wood, without one misprint',
    unit: 'lb',
    decimals: 1,
    deviations: lagScrewsThroughWood
      .filter((cell) => !isMisprinted(cell))
      .map((cell) => ({
        printed: cell.referenceLbf,
        ours: lagScrewLbf(cell),
        known: 5,
        confirmed: 'text',
      })),
  },
  {
    title: '`lateralResistanceReference`: NDS, Table 12N, common nails',
    unit: 'lb',
    decimals: 2,
    deviations: nailsSideways.map((nail) => ({
      printed: nail.referenceLbf,
      ours: nailLbf(nail),
      known: 0.5,
      confirmed: 'text',
    })),
  },
  {
    title: '`lateralTestValue`: Wood Handbook, Table 8-4, inch-pound',
    unit: 'lb',
    decimals: 1,
    deviations: (['hardwood', 'softwood'] as const).flatMap((wood) =>
      lateralCoefficients[wood].flatMap(([airDrySpecificGravityRatio = 0, ...row]) =>
        (['nail', 'woodScrew', 'lagScrew'] as const).map((fastener, i) => ({
          printed: row[i] ?? Number.NaN,
          ours:
            (lateralTestValue({ wood, fastener, airDrySpecificGravityRatio, shankDiameterMm: MM_PER_IN })
              .proportionalLimitN ?? Number.NaN) / N_PER_LBF,
          known: 5,
          confirmed: 'memory' as const,
        })),
      ),
    ),
  },
  {
    title: '`screwWithdrawalReference`: G² in a table of woods',
    unit: '',
    decimals: 4,
    deviations: groupedWoods.map(([, , ovendrySpecificGravityRatio, square]) => ({
      printed: square,
      ours:
        screwWithdrawalReference({ ...oneSquareInch, ovendrySpecificGravityRatio }).referenceN /
        N_PER_LBF /
        2850,
      known: 0.0005,
      confirmed: 'text',
    })),
  },
  {
    title: '`nailWithdrawalReference`: G^(5/2) in a table of woods',
    unit: '',
    decimals: 4,
    deviations: groupedWoods.map(([, , ovendrySpecificGravityRatio, , power]) => ({
      printed: power,
      ours:
        nailWithdrawalReference({ ...oneSquareInch, ovendrySpecificGravityRatio }).referenceN /
        N_PER_LBF /
        1380,
      known: 0.0005,
      confirmed: 'text',
    })),
  },
  {
    title: '`commonNailTable`, recalled in inches: Wood Handbook, Table 8-1, metric, diameters',
    unit: 'mm',
    decimals: 3,
    deviations: commonNailTable.rows.flatMap(({ size, diameterIn }) => {
      const metric = metricNails[size];
      return metric
        ? [{ printed: metric[1], ours: diameterIn * MM_PER_IN, known: 0.005, confirmed: 'text' as const }]
        : [];
    }),
  },
];

export default tables;
