import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { eurocode5 } from '@scantling/rules/sources';
import { eurocodeDecides, notStructuralDesign } from '../cautions.ts';

const density = { min: 100, max: 1300 };
const limits = {
  headDiameterMm: { min: 1, max: 100 },
  headStrengthMPa: { min: 0, max: 200 },
  testedDensityKgPerM3: density,
  densityKgPerM3: density,
} as const;

export interface HeadPullThroughCharacteristicInput {
  /** Diameter of the head or of the washer under it, mm, 1 to 100. */
  readonly headDiameterMm: number;
  /** Pull-through parameter that the screw's maker declares, MPa, 0 to 200. */
  readonly headStrengthMPa: number;
  /** Density that the parameter is declared for, kg/m³, 100 to 1300. */
  readonly testedDensityKgPerM3: number;
  /** Characteristic density of the wood: 5 % of it is lighter, kg/m³ at 12 % moisture content, 100 to 1300. */
  readonly densityKgPerM3: number;
}

export interface HeadPullThroughCharacteristic {
  /** Pull that 95 of 100 heads bear, N, before the factors of the code. */
  readonly characteristicN: number;
}

/**
 * The characteristic pull that the European design code for timber gives the head of one screw, from the parameter that
 * its maker declares, before the factors for load, moisture and material.
 *
 * @returns The characteristic pull-through capacity, N.
 * @throws RangeError where an input is outside its limits.
 * Source: Eurocode 5 (EN 1995-1-1), Eq. 8.40b.
 * @example
 * ```ts
 * import { headPullThroughCharacteristic } from '@scantling/fastening';
 * // A head of 14 mm declared with 12 MPa at 350 kg/m³, in wood of 350 kg/m³: 12 × 14²
 * const head = { headDiameterMm: 14, headStrengthMPa: 12, testedDensityKgPerM3: 350 };
 * headPullThroughCharacteristic({ ...head, densityKgPerM3: 350 }).characteristicN // => 2352
 * ```
 */
export function headPullThroughCharacteristic(
  input: HeadPullThroughCharacteristicInput,
): HeadPullThroughCharacteristic {
  requireInputs('headPullThroughCharacteristic', input, limits);
  const { headDiameterMm, headStrengthMPa, testedDensityKgPerM3, densityKgPerM3 } = input;
  const forDensity = (densityKgPerM3 / testedDensityKgPerM3) ** 0.8;
  return { characteristicN: plusZero(headStrengthMPa * headDiameterMm ** 2 * forDensity) };
}

export const headPullThroughCharacteristicRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/head-pull-through-characteristic',
  title: 'Screw head pulled through: characteristic value',
  summary:
    'The pull that the European design code for timber expects 95 of 100 heads of a screw to bear, from what its maker declares.',
  basis: 'measured',
  inputs: {
    headDiameterMm: {
      kind: 'number',
      label: 'Diameter of head or washer',
      unit: 'mm',
      ...limits.headDiameterMm,
    },
    headStrengthMPa: {
      kind: 'number',
      label: 'Declared pull-through parameter',
      unit: 'MPa',
      ...limits.headStrengthMPa,
      help: 'From the declaration of the screw.',
    },
    testedDensityKgPerM3: {
      kind: 'number',
      label: 'Density it is declared for',
      unit: 'kg/m³',
      ...limits.testedDensityKgPerM3,
    },
    densityKgPerM3: {
      kind: 'number',
      label: 'Characteristic density',
      unit: 'kg/m³',
      ...limits.densityKgPerM3,
      help: 'What only 5 % of the wood stays below, at 12 % moisture content.',
    },
  },
  outputs: { characteristicN: { label: 'Characteristic pull-through capacity', unit: 'N' } },
  compute: headPullThroughCharacteristic,
  formula: String.raw`F = f_{head} \, d_h^2 \left(\frac{\rho_k}{\rho_a}\right)^{0.8}`,
  symbols: {
    F: 'characteristic pull-through capacity, N',
    'f_{head}': 'declared parameter, MPa',
    d_h: 'diameter of head or washer, mm',
    '\\rho_k': 'characteristic density of the wood, kg/m³',
    '\\rho_a': 'density that the parameter is declared for, kg/m³',
  },
  inSymbols: (input, output) => ({
    F: output.characteristicN,
    'f_{head}': input.headStrengthMPa,
    d_h: input.headDiameterMm,
    '\\rho_k': input.densityKgPerM3,
    '\\rho_a': input.testedDensityKgPerM3,
  }),
  sources: [
    {
      source: eurocode5,
      at: 'Eq. 8.40b',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { headDiameterMm: 14, headStrengthMPa: 12, testedDensityKgPerM3: 350, densityKgPerM3: 420 },
      expect: { characteristicN: '2721.3' },
      from: {
        workedByHand: '420 / 350 = 1.2; 1.2^0.8 = 1.157031; 12 × 14² = 2352; 2352 × 1.157031 = 2721.3 N',
      },
    },
  ],
  laws: [
    {
      of: 'characteristicN',
      by: {
        headDiameterMm: 'increasing',
        headStrengthMPa: 'proportional',
        testedDensityKgPerM3: 'decreasing',
        densityKgPerM3: 'increasing',
      },
    },
  ],
  cautions: [eurocodeDecides, notStructuralDesign],
}));
