import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { materialsTextbook, woodHandbook2010 } from '@scantling/rules/sources';
import { boardsDiffer } from '../cautions.ts';
import { thermalChange } from './thermal-change.ts';
import { widthChange } from './width-change.ts';

const moisture = { min: 0, max: 30 };
const temperature = { min: -60, max: 150 };
const expansion = { min: 0, max: 200 };
const limits = {
  lengthMm: { min: 0, max: 20_000 },
  coefficientPerPct: { min: 0, max: 0.02 },
  woodUmPerMK: expansion,
  metalUmPerMK: expansion,
  fromMoisturePct: moisture,
  toMoisturePct: moisture,
  fromTemperatureC: temperature,
  toTemperatureC: temperature,
} as const;

export interface ChangeBesideMetalInput {
  /** Length over which metal and wood lie side by side now, mm, 0 to 20 000. */
  readonly lengthMm: number;
  /** Dimensional change coefficient of the wood in that direction, per 1 % of moisture content, 0 to 0.02. */
  readonly coefficientPerPct: number;
  /** Thermal expansion of the wood in that direction, µm per metre and kelvin, 0 to 200. */
  readonly woodUmPerMK: number;
  /** Thermal expansion of the metal, µm per metre and kelvin, 0 to 200. */
  readonly metalUmPerMK: number;
  /** Moisture content of the wood now, % of ovendry mass, 0 to 30. */
  readonly fromMoisturePct: number;
  /** Moisture content of the wood then, % of ovendry mass, 0 to 30. */
  readonly toMoisturePct: number;
  /** Temperature of both now, °C, −60 to 150. */
  readonly fromTemperatureC: number;
  /** Temperature of both then, °C, −60 to 150. */
  readonly toTemperatureC: number;
}

export interface ChangeBesideMetal {
  /** Change of the wood, mm: positive where it swells. */
  readonly woodChangeMm: number;
  /** Change of the metal, mm: positive where it gets longer. */
  readonly metalChangeMm: number;
  /** By how much the metal has outgrown the wood, mm: negative where the wood has outgrown the metal. */
  readonly differenceMm: number;
}

/**
 * By how much a metal strip and the wood beside it part when both moisture and temperature change, along the grain
 * or across it: the coefficients say which. Along the grain take the moisture coefficient from
 * `longitudinalShrinkage`.
 *
 * @returns The change of the wood, that of the metal, and the difference, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 13-2, claimed for 6 to 14 % moisture content, and thermal expansion.
 * @example
 * ```ts
 * import { changeBesideMetal } from '@scantling/movement';
 * // Brass of 600 mm across a flatsawn sugar maple top, from a damp summer to a dry winter
 * const across = { lengthMm: 600, coefficientPerPct: 0.00353, woodUmPerMK: 39.8, metalUmPerMK: 19 };
 * changeBesideMetal({ ...across, fromMoisturePct: 10, toMoisturePct: 7, fromTemperatureC: 24, toTemperatureC: 19 }) // => { woodChangeMm: -6.4734, metalChangeMm: -0.057, differenceMm: 6.4164 }
 * changeBesideMetal({ ...across, fromMoisturePct: 10, toMoisturePct: 70, fromTemperatureC: 24, toTemperatureC: 19 }) // throws changeBesideMetal requires toMoisturePct between 0 and 30, got 70
 * ```
 */
export function changeBesideMetal(input: ChangeBesideMetalInput): ChangeBesideMetal {
  requireInputs('changeBesideMetal', input, limits);
  const { lengthMm, coefficientPerPct, woodUmPerMK, metalUmPerMK } = input;
  const risePct = input.toMoisturePct - input.fromMoisturePct;
  const warming = 1e-6 * (input.toTemperatureC - input.fromTemperatureC);
  return {
    woodChangeMm: plusZero(lengthMm * (coefficientPerPct * risePct + woodUmPerMK * warming)),
    metalChangeMm: plusZero(lengthMm * metalUmPerMK * warming),
    differenceMm: plusZero(lengthMm * ((metalUmPerMK - woodUmPerMK) * warming - coefficientPerPct * risePct)),
  };
}

/** What the rules for the width of wood and for the length of a warmed body say, one after the other. */
function byEachRule(input: ChangeBesideMetalInput): number {
  const swollen = widthChange({ ...input, widthMm: input.lengthMm }).changeMm;
  const warmed = (expansionUmPerMK: number) => thermalChange({ ...input, expansionUmPerMK }).changeMm;
  return warmed(input.metalUmPerMK) - (swollen + warmed(input.woodUmPerMK));
}

export const changeBesideMetalRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/change-beside-metal',
  title: 'Wood beside metal',
  summary:
    'By how much a metal strip and the wood it is let into part company when the seasons change moisture and temperature.',
  basis: 'derived',
  inputs: {
    lengthMm: { kind: 'number', label: 'Length side by side', unit: 'mm', ...limits.lengthMm },
    coefficientPerPct: {
      kind: 'number',
      label: 'Dimensional change coefficient of the wood',
      unit: '1/%',
      ...limits.coefficientPerPct,
      help: 'In the direction of the strip: radial or tangential across the grain, about 0.00007 at most along it.',
    },
    woodUmPerMK: {
      kind: 'number',
      label: 'Thermal expansion of the wood',
      unit: 'µm/(m·K)',
      ...limits.woodUmPerMK,
      help: 'About 4 along the grain, 25 to 45 across it.',
    },
    metalUmPerMK: {
      kind: 'number',
      label: 'Thermal expansion of the metal',
      unit: 'µm/(m·K)',
      ...limits.metalUmPerMK,
      help: 'About 19 for brass, 12 for steel.',
    },
    fromMoisturePct: { kind: 'number', label: 'Moisture content now', unit: '%', ...limits.fromMoisturePct },
    toMoisturePct: { kind: 'number', label: 'Moisture content then', unit: '%', ...limits.toMoisturePct },
    fromTemperatureC: { kind: 'number', label: 'Temperature now', unit: '°C', ...limits.fromTemperatureC },
    toTemperatureC: { kind: 'number', label: 'Temperature then', unit: '°C', ...limits.toTemperatureC },
  },
  outputs: {
    woodChangeMm: { label: 'Change of the wood', unit: 'mm', help: 'Positive where it swells.' },
    metalChangeMm: { label: 'Change of the metal', unit: 'mm', help: 'Positive where it gets longer.' },
    differenceMm: {
      label: 'Metal over wood',
      unit: 'mm',
      help: 'Positive where the metal has become too long for the wood, negative where the wood has outgrown it.',
    },
  },
  compute: changeBesideMetal,
  formula: String.raw`\begin{aligned}
\Delta L_w &= L \, C \, (M_F - M_I) + \alpha_w L \, (T_F - T_I) \\
\Delta L_m &= \alpha_m L \, (T_F - T_I)
\end{aligned}`,
  symbols: {
    '\\Delta L_w, \\Delta L_m': 'change of the wood, and of the metal',
    L: 'length side by side',
    C: 'dimensional change coefficient of the wood',
    '\\alpha_w, \\alpha_m': 'thermal expansion of the wood, and of the metal',
    'M_I, M_F': 'moisture content now and then',
    'T_I, T_F': 'temperature now and then',
  },
  valid: { fromMoisturePct: [6, 14], toMoisturePct: [6, 14] },
  sources: [
    {
      source: woodHandbook2010,
      at: 'ch. 13, the equation that goes with Table 13-5, for 6 to 14 %, as an extension service reprints it',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: materialsTextbook,
      at: 'Eq. 19.3b, as a page that works out its problem 19.8 uses it',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: {
        lengthMm: 600,
        coefficientPerPct: 0.00353,
        woodUmPerMK: 39.8,
        metalUmPerMK: 19,
        fromMoisturePct: 10,
        toMoisturePct: 7,
        fromTemperatureC: 24,
        toTemperatureC: 19,
      },
      expect: { woodChangeMm: '-6.4734', metalChangeMm: '-0.0570', differenceMm: '6.4164' },
      from: {
        workedByHand:
          'Moisture: 600 × 0.00353 × (7 − 10) = −6.3540 mm; warmth on the wood: 0.0006 × 39.8 × (19 − 24) = −0.1194 mm; together −6.3540 − 0.1194 = −6.4734 mm; the brass: 0.0006 × 19 × (19 − 24) = −0.0570 mm; the brass over the wood: −0.0570 + 6.4734 = 6.4164 mm',
      },
    },
    {
      given: {
        lengthMm: 1500,
        coefficientPerPct: 0.0000668,
        woodUmPerMK: 3.8,
        metalUmPerMK: 19,
        fromMoisturePct: 8,
        toMoisturePct: 11,
        fromTemperatureC: 20,
        toTemperatureC: 26,
      },
      expect: { woodChangeMm: '0.3348', metalChangeMm: '0.1710', differenceMm: '-0.1638' },
      from: {
        workedByHand:
          'Along the grain, moisture: 1500 × 0.0000668 × 3 = 0.3006 mm; warmth on the wood: 0.0015 × 3.8 × 6 = 0.0342 mm; together 0.3006 + 0.0342 = 0.3348 mm; the brass: 0.0015 × 19 × 6 = 0.1710 mm; the brass over the wood: 0.1710 − 0.3348 = −0.1638 mm',
      },
    },
  ],
  laws: [
    {
      of: 'differenceMm',
      by: {
        lengthMm: 'proportional',
        coefficientPerPct: 'linear',
        woodUmPerMK: 'linear',
        metalUmPerMK: 'linear',
        fromMoisturePct: 'increasing',
        toMoisturePct: 'decreasing',
        fromTemperatureC: 'linear',
        toTemperatureC: 'linear',
      },
    },
    { of: 'woodChangeMm', by: { toMoisturePct: 'increasing', toTemperatureC: 'increasing' } },
    { of: 'metalChangeMm', by: { lengthMm: 'proportional', toTemperatureC: 'increasing' } },
  ],
  peers: [
    {
      name: 'the change in width by coefficient and both changes in length with temperature',
      of: 'differenceMm',
      compute: byEachRule,
      relative: 1e-6,
      absolute: 1e-9,
      over: { lengthMm: [0, 10_000] },
    },
  ],
  cautions: [
    boardsDiffer,
    'A metal edge that ends up proud or loose cuts and catches: break its corners, and check it after the first dry season.',
  ],
}));
