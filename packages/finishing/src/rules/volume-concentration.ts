import { defineRule, requireInputs } from '@scantling/rules';
import { exposureLimitConversion, nioshIdlh1994 } from '@scantling/rules/sources';
import { MOLAR_VOLUME_L } from '../vapour-volume.ts';

const limits = {
  concentrationMgPerM3: { min: 0, max: 1e6 },
  molarMassGPerMol: { min: 2, max: 500 },
} as const;

export interface VolumeConcentrationInput {
  /** Mass of vapour to the cubic metre of air, mg/m³, 0 to 1 000 000. */
  readonly concentrationMgPerM3: number;
  /** Molar mass of the vapour, g/mol, 2 to 500. */
  readonly molarMassGPerMol: number;
}

export interface VolumeConcentration {
  /** Parts of vapour to a million parts of air, by volume. */
  readonly concentrationPpm: number;
}

/**
 * What a concentration by mass is by volume, at 25 °C and one atmosphere: `massConcentration` backwards.
 *
 * @returns The concentration in ppm.
 * @throws RangeError where an input is outside its limits.
 * Source: formula of the ACGIH booklet of threshold limit values, as the Canadian Centre for Occupational Health and Safety states it.
 * @example
 * ```ts
 * import { volumeConcentration } from '@scantling/finishing';
 * // 350 mg/m³ of a mineral spirit of 144 g/mol
 * volumeConcentration({ concentrationMgPerM3: 350, molarMassGPerMol: 144 }).concentrationPpm // => 59.43
 * ```
 */
export function volumeConcentration(input: VolumeConcentrationInput): VolumeConcentration {
  requireInputs('volumeConcentration', input, limits);
  return { concentrationPpm: ((input.concentrationMgPerM3 + 0) * MOLAR_VOLUME_L) / input.molarMassGPerMol };
}

export const volumeConcentrationRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/volume-concentration',
  title: 'From mg/m³ to ppm',
  summary:
    'Exposure limits stand in milligrams to the cubic metre or in parts per million: from one to the other.',
  basis: 'derived',
  inputs: {
    concentrationMgPerM3: {
      kind: 'number',
      label: 'Concentration by mass',
      unit: 'mg/m³',
      ...limits.concentrationMgPerM3,
    },
    molarMassGPerMol: {
      kind: 'number',
      label: 'Molar mass',
      unit: 'g/mol',
      ...limits.molarMassGPerMol,
      help: 'Molecular weight of the vapour; see the product’s safety data sheet.',
    },
  },
  outputs: { concentrationPpm: { label: 'Concentration by volume', unit: 'ppm' } },
  compute: volumeConcentration,
  formula: String.raw`C_v = \frac{24.45 \, C_m}{M}`,
  symbols: {
    C_v: 'concentration, ppm',
    C_m: 'concentration, mg/m³',
    M: 'molar mass, g/mol',
  },
  inSymbols: (input, output) => ({
    C_v: output.concentrationPpm,
    C_m: input.concentrationMgPerM3,
    M: input.molarMassGPerMol,
  }),
  sources: [{ source: exposureLimitConversion, at: 'second formula: TLV in ppm', confirmed: 'text' }],
  examples: [
    {
      given: { concentrationMgPerM3: 29_500, molarMassGPerMol: 144 },
      expect: { concentrationPpm: '5000' },
      within: { value: 10, because: 'The page says “about”: it rounds 29 448 mg/m³ to 29 500.' },
      from: { source: nioshIdlh1994, at: 'Stoddard solvent: note on 5,000 ppm', confirmed: 'text' },
    },
    {
      given: { concentrationMgPerM3: 188, molarMassGPerMol: 92.1 },
      expect: { concentrationPpm: '50' },
      from: { source: nioshIdlh1994, at: 'toluene: the ACGIH TLV of 188 mg/m³', confirmed: 'text' },
    },
  ],
  laws: [
    {
      of: 'concentrationPpm',
      by: { concentrationMgPerM3: 'proportional', molarMassGPerMol: 'decreasing' },
    },
  ],
}));
