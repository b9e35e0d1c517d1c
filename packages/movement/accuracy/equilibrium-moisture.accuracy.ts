import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import {
  equilibriumMoisture,
  equilibriumMoistureRule,
  equilibriumMoistureTable,
  humidityForMoisture,
} from '../src/index.ts';

/** The table is made for round °F; its °C are rounded. */
const cells = equilibriumMoistureTable.map((cell) => ({
  ...cell,
  temperatureC: (cell.temperatureF - 32) / 1.8,
  at: { row: cell.temperatureF, column: cell.relativeHumidityPct },
}));

const [fahrenheit] = equilibriumMoistureRule.peers ?? [];
if (!fahrenheit) throw new Error('The card of equilibriumMoisture has no peer.');

/** How much humidity 1 % of moisture content is, there. */
function humidityPerMoisture({ temperatureC, relativeHumidityPct }: (typeof cells)[number]): number {
  const moistureAt = (humidityPct: number) =>
    equilibriumMoisture({ temperatureC, relativeHumidityPct: humidityPct }).moisturePct;
  return 2 / (moistureAt(relativeHumidityPct + 1) - moistureAt(relativeHumidityPct - 1));
}

const surface = { row: '°F', column: '% relative humidity' };

const tables: readonly AccuracyTable[] = [
  {
    title: '`equilibriumMoisture`: Wood Handbook, Table 4-2',
    unit: '%',
    decimals: 3,
    surface,
    remark:
      'The cells that differ lie a hair beyond half of the last digit: as good as rounded the other way.',
    deviations: cells.map((cell) => ({
      printed: cell.moisturePct,
      ours: equilibriumMoisture(cell).moisturePct,
      known: 0.05,
      confirmed: cell.confirmed,
      at: cell.at,
    })),
  },
  {
    title: '`equilibriumMoisture`: the equation with its constants for °F',
    unit: '%',
    decimals: 3,
    deviations: cells.map((cell) => ({
      printed: Number(fahrenheit.compute(cell)),
      ours: equilibriumMoisture(cell).moisturePct,
      known: 0.02,
      confirmed: fahrenheit.source?.confirmed ?? 'computed',
    })),
  },
  {
    title: '`humidityForMoisture`: Wood Handbook, Table 4-2, read backwards',
    unit: '%',
    decimals: 2,
    remark: 'The same cells differ as when the table is read forwards.',
    deviations: cells.map((cell) => ({
      printed: cell.relativeHumidityPct,
      ours: humidityForMoisture(cell).relativeHumidityPct ?? Number.NaN,
      known: 0.05 * humidityPerMoisture(cell),
      confirmed: cell.confirmed,
    })),
  },
];

export default tables;
