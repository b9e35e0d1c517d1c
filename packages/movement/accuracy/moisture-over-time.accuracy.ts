import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import { finishResistance, moistureExcludingTable, moistureOverTime } from '../src/index.ts';
import { afterStep, oneTermCoefficients, oneTermLeft, seriesExamples } from '../test/printed-diffusion.ts';

const pine = { thicknessMm: 16, diffusionMm2PerDay: 11 };

/** How much of the way to damp air pine has gone after a week. */
function takenUp(resistanceDaysPerMm: number): number {
  const { daily } = moistureOverTime({
    ...pine,
    topResistanceDaysPerMm: resistanceDaysPerMm,
    undersideResistanceDaysPerMm: resistanceDaysPerMm,
    startMoisturePct: 0,
    equilibriumMoisturePct: [1],
    runDays: 7,
  });
  return daily[7]?.meanPct ?? Number.NaN;
}

/** Near 0 and 100 % the last printed digit no longer tells the resistance. */
const telling = moistureExcludingTable.filter(({ after14DaysPct: pct }) => pct >= 15 && pct <= 95);

const tables: readonly AccuracyTable[] = [
  {
    title: '`moistureOverTime`: worked examples of the series for a step of 1 %',
    unit: '%',
    decimals: 4,
    deviations: seriesExamples.map(({ what, fourier, biot, printed }) => ({
      printed,
      ours: afterStep(fourier, biot)[what],
      known: 0.0012,
      confirmed: 'text',
    })),
  },
  {
    title: '`moistureOverTime`: one-term solution for a step of 1 %, printed coefficients',
    unit: '%',
    decimals: 4,
    deviations: oneTermCoefficients.flatMap((printed) =>
      [0.5, 1, 2].map((fourier) => ({
        printed: oneTermLeft(printed, fourier),
        ours: 1 - afterStep(fourier, printed.biot).corePct,
        known: 0.0012,
        confirmed: 'memory' as const,
      })),
    ),
  },
  {
    title: '`finishResistance`: effectiveness after 7 days from that after 14, Wood Handbook, Table 16-3',
    unit: '%',
    decimals: 1,
    remark:
      'Both figures are measured. One resistance, the same on every day, is a simple picture of a coat of finish.',
    deviations: telling.map(({ after7DaysPct, after14DaysPct, confirmed }) => {
      const { resistanceDaysPerMm } = finishResistance({
        ...pine,
        timeDays: 14,
        effectivenessPct: after14DaysPct,
      });
      return {
        printed: after7DaysPct,
        ours: 100 * (1 - takenUp(resistanceDaysPerMm) / takenUp(0)),
        known: 0.5,
        confirmed,
      };
    }),
  },
];

export default tables;
