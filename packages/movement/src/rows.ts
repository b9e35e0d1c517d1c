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

/** Moisture content that wood should have, or has, where it is used. */
export interface RegionalMoistureRow extends TableRow {
  readonly region: string;
  /** On average, % of ovendry mass. */
  readonly averageMoisturePct: number;
  /** From, % of ovendry mass. */
  readonly leastMoisturePct: number;
  /** To, % of ovendry mass. */
  readonly mostMoisturePct: number;
}

/** Recommended moisture content on the day of installation: on average, and the range for single pieces. */
export interface InstallationMoistureRow extends RegionalMoistureRow {
  readonly use: 'interior' | 'exterior';
  readonly examples: string;
}

/** Moisture content found in service: the range, and what to fabricate at. */
export interface ServiceMoistureRow extends RegionalMoistureRow {
  readonly use: string;
}

/** Equilibrium moisture content out of doors at one place, by month, % of ovendry mass. */
export interface OutdoorMoistureRow extends TableRow {
  /** Two letters, as the post writes it. */
  readonly state: string;
  readonly city: string;
  readonly januaryPct: number;
  readonly februaryPct: number;
  readonly marchPct: number;
  readonly aprilPct: number;
  readonly mayPct: number;
  readonly junePct: number;
  readonly julyPct: number;
  readonly augustPct: number;
  readonly septemberPct: number;
  readonly octoberPct: number;
  readonly novemberPct: number;
  readonly decemberPct: number;
}

/** Thermal expansion of a metal, or of wood in one direction; for a single figure low and high are the same. */
export interface ThermalExpansionRow extends TableRow {
  readonly material: string;
  /** `every` for metals; for wood along the grain, across it, or across it radially or tangentially. */
  readonly direction: 'every' | 'along' | 'across' | 'radial' | 'tangential';
  /** Lower end of the range printed, µm per metre and kelvin (10⁻⁶/K). */
  readonly lowUmPerMK: number;
  /** Upper end of the range printed, µm per metre and kelvin (10⁻⁶/K). */
  readonly highUmPerMK: number;
}

/** What a finish keeps out, from the laboratory's test: by how much finished pine took up less water than bare pine. */
export interface MoistureExcludingRow extends TableRow {
  readonly finish: string;
  readonly coats: number;
  /** After 1 day in damp air, %. */
  readonly after1DayPct: number;
  /** After 7 days, %. */
  readonly after7DaysPct: number;
  /** After 14 days, %. */
  readonly after14DaysPct: number;
}
