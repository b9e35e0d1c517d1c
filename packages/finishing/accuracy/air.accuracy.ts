import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import { dewPoint, exposureLimitTables, findSolvent, massConcentration, purgeTime } from '../src/index.ts';
import { printedDewPointsC, printedDewPointsF } from '../test/printed-dew-points.ts';
import { printedPurgeTimes } from '../test/printed-purge-times.ts';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

/** Limits of pure substances that are printed both ways; mixtures have no molar mass of their own. */
const printedBothWays = exposureLimitTables.flatMap(({ rows }) =>
  rows.flatMap(({ substance, limitPpm, limitMgPerM3, confirmed }) => {
    const solvent = findSolvent(substance);
    if (!solvent || !limitPpm || !limitMgPerM3 || substance === 'Stoddard solvent') return [];
    const molarMassGPerMol = solvent.lowMolarMassGPerMol;
    if (molarMassGPerMol !== solvent.highMolarMassGPerMol) return [];
    const seen = solvent.confirmed === 'text' ? confirmed : solvent.confirmed;
    return [{ molarMassGPerMol, limitPpm, limitMgPerM3, confirmed: seen }];
  }),
);

const tables: readonly AccuracyTable[] = [
  {
    title: '`dewPoint`: a table in tenths of a degree, from 0 °C on',
    unit: '°C',
    decimals: 2,
    surface: { row: '°C', column: '% relative humidity' },
    remark:
      'The table says of itself that its values are rounded. One cell, at 30 °C and 65 %, is out of line with its neighbours by a whole degree.',
    deviations: printedDewPointsC
      .filter(({ printed }) => printed >= 0)
      .map(({ air, humidityPct, printed }) => ({
        printed,
        ours: dewPoint({ temperatureC: air, relativeHumidityPct: humidityPct }).dewPointC,
        known: 0.05,
        confirmed: 'text' as const,
        at: { row: air, column: humidityPct },
      })),
  },
  {
    title: '`dewPoint`: a rough chart in whole °F, from 32 °F on',
    unit: '°F',
    decimals: 1,
    remark: 'A rough chart for painters: it is kept to show how far such a chart goes astray.',
    deviations: printedDewPointsF
      .filter(({ printed }) => printed >= 32)
      .map(({ air, humidityPct, printed }) => ({
        printed,
        ours: dewPoint({ temperatureC: celsius(air), relativeHumidityPct: humidityPct }).dewPointC * 1.8 + 32,
        known: 0.5,
        confirmed: 'text' as const,
      })),
  },
  {
    title: '`massConcentration`: exposure limits printed in ppm and mg/m³, which agencies round',
    unit: 'mg/m³',
    decimals: 1,
    remark: 'The agencies set limits in round figures, mostly fives and tens; few follow to the last digit.',
    deviations: printedBothWays.map(({ molarMassGPerMol, limitPpm, limitMgPerM3, confirmed }) => ({
      printed: limitMgPerM3,
      ours: massConcentration({ concentrationPpm: limitPpm, molarMassGPerMol }).concentrationMgPerM3,
      known: 0.5,
      confirmed,
    })),
  },
  {
    title: '`purgeTime`: guidelines of 1994, Table S3-1',
    unit: 'min',
    decimals: 2,
    deviations: printedPurgeTimes.map(({ printed, ...room }) => ({
      printed,
      ours: 60 * purgeTime({ ...room, mixingFactor: 1 }).purgeHours,
      known: 0.5,
      confirmed: 'text' as const,
    })),
  },
];

export default tables;
