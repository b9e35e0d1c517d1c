import type { TableRow } from '@scantling/rules';

/** One cell of the table of equilibrium moisture content. */
export interface EquilibriumMoistureRow extends TableRow {
  /** Temperature of the air, °C, rounded as printed. */
  readonly temperatureC: number;
  /** The same, °F: the round figure that the table is made for. */
  readonly temperatureF: number;
  /** Relative humidity of the air, %. */
  readonly relativeHumidityPct: number;
  /** Moisture content of the wood, % of ovendry mass. */
  readonly moisturePct: number;
}
