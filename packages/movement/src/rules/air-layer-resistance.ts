import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import {
  linseedPaintPermeability,
  saturatedVapourPage,
  vapourResistanceTables,
} from '@scantling/rules/sources';
import { moistureEquationSources } from '../moisture-equation.ts';
import { equilibriumMoisture } from './equilibrium-moisture.ts';

const humidity = { min: 0, max: 99 };
const limits = {
  airLayerM: { min: 0, max: 1000 },
  dryDensityKgPerM3: { min: 50, max: 1400 },
  temperatureC: { min: 0, max: 40 },
  driestHumidityPct: humidity,
  wettestHumidityPct: humidity,
} as const;

/** Resistance of one metre of still air to water vapour, Pa·s·m²/kg. */
const AIR_PER_METRE = 5.5e9;
/** One day to the millimetre, s/m. */
const DAY_PER_MM = 86.4e6;

export interface AirLayerResistanceInput {
  /** Thickness of still air that lets as little vapour pass as the finish, m, 0 to 1000: its s_d value. */
  readonly airLayerM: number;
  /** Ovendry mass of the wood to its volume, kg/m³, 50 to 1400. */
  readonly dryDensityKgPerM3: number;
  /** Temperature of the room, °C, 0 to 40. */
  readonly temperatureC: number;
  /** Relative humidity of the room in its driest season, %, 0 to 99. */
  readonly driestHumidityPct: number;
  /** Relative humidity in its dampest season, %, 0 to 99; at least 1 more. */
  readonly wettestHumidityPct: number;
}

export interface AirLayerResistance {
  /** What the finish holds back, days to the millimetre: for `moistureOverTime`. */
  readonly resistanceDaysPerMm: number;
}

/**
 * The resistance of a finish to moisture on its way into wood, from the equivalent air layer thickness (s_d) that data
 * sheets give. The finish feels the pressure of vapour, the wood its moisture content: between them stands how much
 * more water wood holds for more vapour, here from the driest to the wettest season. The film of air that clings to
 * bare wood in a quiet room is about 0.01 m.
 *
 * @returns The resistance, days to the millimetre.
 * @throws RangeError where an input is outside its limits, or the wettest season is not damper than the driest.
 * Source: SBi Guideline 224, Annex A, for still air; the equations of this package for the wood and the vapour.
 * @example
 * ```ts
 * import { airLayerResistance } from '@scantling/movement';
 * const room = { temperatureC: 20, driestHumidityPct: 35, wettestHumidityPct: 65 };
 * airLayerResistance({ airLayerM: 1, dryDensityKgPerM3: 600, ...room }).resistanceDaysPerMm // => 2.75
 * airLayerResistance({ airLayerM: -1, dryDensityKgPerM3: 600, ...room }) // throws airLayerResistance requires airLayerM between 0 and 1000, got -1
 * ```
 */
export function airLayerResistance(input: AirLayerResistanceInput): AirLayerResistance {
  requireInputs('airLayerResistance', input, limits);
  const { airLayerM, dryDensityKgPerM3, temperatureC, driestHumidityPct, wettestHumidityPct } = input;
  requireThat(
    'airLayerResistance',
    wettestHumidityPct >= driestHumidityPct + 1,
    `wettestHumidityPct at least 1 above driestHumidityPct, got ${wettestHumidityPct} and ${driestHumidityPct}`,
  );
  const moisture = (relativeHumidityPct: number) =>
    equilibriumMoisture({ temperatureC, relativeHumidityPct }).moisturePct;
  const saturationPa = 611.2 * Math.exp((17.62 * temperatureC) / (243.12 + temperatureC));
  const heldPerPa =
    (moisture(wettestHumidityPct) - moisture(driestHumidityPct)) /
    ((wettestHumidityPct - driestHumidityPct) * saturationPa);
  const secondsPerMetre = (airLayerM + 0) * AIR_PER_METRE * dryDensityKgPerM3 * heldPerPa;
  return { resistanceDaysPerMm: secondsPerMetre / DAY_PER_MM };
}

/** The same by mass of vapour in the air: a metre of it is 41 000 s/m, and vapour an ideal gas. */
function byVapourContent(input: AirLayerResistanceInput): number {
  const { airLayerM, dryDensityKgPerM3, temperatureC } = input;
  const at = (relativeHumidityPct: number) => ({
    moisture: equilibriumMoisture({ temperatureC, relativeHumidityPct }).moisturePct / 100,
    kgPerM3:
      ((relativeHumidityPct / 100) *
        611.6441 *
        10 ** ((7.591386 * temperatureC) / (temperatureC + 240.7263))) /
      (461.5 * (temperatureC + 273.15)),
  });
  const [dry, wet] = [at(input.driestHumidityPct), at(input.wettestHumidityPct)];
  const secondsPerMetre =
    (41_000 * airLayerM * dryDensityKgPerM3 * (wet.moisture - dry.moisture)) / (wet.kgPerM3 - dry.kgPerM3);
  return secondsPerMetre / 86_400 / 1000;
}

export const airLayerResistanceRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/air-layer-resistance',
  title: 'Resistance of a finish, from its equivalent air layer',
  summary:
    'How much a finish slows moisture on its way into and out of wood, from the figure on its data sheet.',
  basis: 'derived',
  inputs: {
    airLayerM: {
      kind: 'number',
      label: 'Equivalent air layer thickness',
      unit: 'm',
      ...limits.airLayerM,
      help: 'The s_d value of the whole finish, all coats together.',
    },
    dryDensityKgPerM3: {
      kind: 'number',
      label: 'Ovendry density of the wood',
      unit: 'kg/m³',
      ...limits.dryDensityKgPerM3,
    },
    temperatureC: { kind: 'number', label: 'Temperature of the room', unit: '°C', ...limits.temperatureC },
    driestHumidityPct: {
      kind: 'number',
      label: 'Relative humidity in the driest season',
      unit: '%',
      ...limits.driestHumidityPct,
    },
    wettestHumidityPct: {
      kind: 'number',
      label: 'Relative humidity in the dampest season',
      unit: '%',
      ...limits.wettestHumidityPct,
    },
  },
  outputs: {
    resistanceDaysPerMm: { label: 'Resistance of the finished face', unit: 'd/mm' },
  },
  compute: airLayerResistance,
  formula: String.raw`R = \frac{s_d}{\delta_0} \cdot \rho_0 \, \frac{M_2 - M_1}{(h_2 - h_1)\,p_s}, \quad p_s = 611.2\,\mathrm{Pa}\,\exp\left(\frac{17.62\,t}{243.12 + t}\right)`,
  symbols: {
    R: 'resistance of the finished face',
    s_d: 'equivalent air layer thickness',
    '\\delta_0': 'vapour permeability of still air, of which one metre resists with 5.5 × 10⁹ Pa·s·m²/kg',
    '\\rho_0': 'ovendry density',
    'M_1, M_2': 'equilibrium moisture content in the driest and in the dampest season',
    'h_1, h_2': 'relative humidity in both',
    p_s: 'saturation vapour pressure at t °C',
  },
  requires: [
    {
      says: 'wettestHumidityPct at least 1 above driestHumidityPct',
      holds: ({ driestHumidityPct, wettestHumidityPct }) => wettestHumidityPct >= driestHumidityPct + 1,
    },
  ],
  sources: [
    {
      source: vapourResistanceTables,
      at: 'first table: 1 m equivalent air layer thickness',
      confirmed: 'text',
      erratum: 'It prints 5.5 · 10⁻⁹; its other factors (0.18 m to the GPa·s·m²/kg) give 5.5 · 10⁹.',
    },
    {
      source: saturatedVapourPage,
      at: 'Eq. (1): saturation vapour pressure over water, after WMO-No. 8',
      confirmed: 'text',
      tier: 'reprint',
    },
    ...moistureEquationSources,
    {
      source: linseedPaintPermeability,
      at: 'abstract: 0.4 to 0.9 m for two layers of linseed oil paint',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: {
        airLayerM: 1,
        dryDensityKgPerM3: 600,
        temperatureC: 20,
        driestHumidityPct: 50,
        wettestHumidityPct: 60,
      },
      expect: { resistanceDaysPerMm: '2.83' },
      from: {
        workedByHand:
          'M is 9.271 % at 50 % (worked for the equilibrium moisture content); at 60 %: ' +
          '0.818628 × 0.6 = 0.491177; 5.9612 × 0.491177 = 2.928004; 2.928004 × 2.6068 × 0.491177 = 3.74902; ' +
          '0.491177 / (1 − 0.491177) = 0.96532; (2.928004 + 2 × 3.74902) / (1 + 2.928004 + 3.74902) = 1.35808; ' +
          '1800 / 380.2 × (0.96532 + 1.35808) = 11.000 %; ' +
          '611.2 × exp(17.62 × 20 / (243.12 + 20)) = 2332.6 Pa; ' +
          '5.5e9 × 600 × (0.11000 − 0.09271) / (0.1 × 2332.6) = 2.446e8 s/m; 2.446e8 / 86 400 / 1000 = 2.831 d/mm',
      },
    },
  ],
  laws: [
    {
      of: 'resistanceDaysPerMm',
      by: { airLayerM: 'proportional', dryDensityKgPerM3: 'proportional', temperatureC: 'decreasing' },
    },
  ],
  peers: [
    {
      name: 'the same by mass of vapour in the air, with another formula of its saturation',
      of: 'resistanceDaysPerMm',
      compute: byVapourContent,
      // The resistance of air to a difference in mass of vapour and to one in pressure are each taken as constant.
      relative: 0.05,
      over: { temperatureC: [10, 30] },
      source: {
        source: vapourResistanceTables,
        at: 'first table: 41 000 s/m to 1 m equivalent air layer thickness',
        confirmed: 'text',
      },
    },
  ],
  cautions: [
    'Data sheets measure one film at one humidity. Coats differ in thickness and films let more through in damp air: reckon with half and with twice the figure.',
  ],
}));
