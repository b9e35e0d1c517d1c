import type { Confirmation } from '@scantling/rules';
import type { Tier } from '@scantling/species';

export type { TableProvenance } from '@scantling/species';

/** One cell of the table of equilibrium moisture content. */
export interface EquilibriumMoistureRow {
  /** Temperature of the air, °C, rounded as printed. */
  readonly temperatureC: number;
  /** The same, °F: the round figure that the table is made for. */
  readonly temperatureF: number;
  /** Relative humidity of the air, %. */
  readonly relativeHumidityPct: number;
  /** Moisture content of the wood, % of ovendry mass. */
  readonly moisturePct: number;
  readonly confirmed: Confirmation;
  readonly tier: Tier;
}
