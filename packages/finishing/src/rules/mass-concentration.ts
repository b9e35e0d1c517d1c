import { defineRule, requireInputs } from '@scantling/rules';
import { exposureLimitConversion, nioshIdlh1994, nioshPocketGuide } from '@scantling/rules/sources';
import { MOLAR_VOLUME_L } from '../vapour-volume.ts';

const limits = {
  concentrationPpm: { min: 0, max: 1e6 },
  molarMassGPerMol: { min: 2, max: 500 },
} as const;

export interface MassConcentrationInput {
  /** Parts of vapour to a million parts of air, by volume, 0 to 1 000 000. */
  readonly concentrationPpm: number;
  /** Molar mass of the vapour, g/mol, 2 to 500. */
  readonly molarMassGPerMol: number;
}

export interface MassConcentration {
  /** Mass of vapour to the cubic metre of air, mg/m³. */
  readonly concentrationMgPerM3: number;
}

/**
 * What a concentration by volume is by mass, at 25 °C and one atmosphere, where a mole of gas takes 24.45 litres.
 * For vapours only: dust and mist have no ppm.
 *
 * @returns The concentration in mg/m³.
 * @throws RangeError where an input is outside its limits.
 * Source: formula of the ACGIH booklet of threshold limit values, as the Canadian Centre for Occupational Health and Safety states it.
 * @example
 * ```ts
 * import { massConcentration } from '@scantling/finishing';
 * // 100 ppm of turpentine
 * massConcentration({ concentrationPpm: 100, molarMassGPerMol: 136 }).concentrationMgPerM3 // => 556.2
 * ```
 */
export function massConcentration(input: MassConcentrationInput): MassConcentration {
  requireInputs('massConcentration', input, limits);
  return { concentrationMgPerM3: ((input.concentrationPpm + 0) * input.molarMassGPerMol) / MOLAR_VOLUME_L };
}

export const massConcentrationRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/mass-concentration',
  title: 'From ppm to mg/m³',
  summary:
    'Exposure limits stand in parts per million or in milligrams to the cubic metre: from one to the other.',
  basis: 'derived',
  inputs: {
    concentrationPpm: {
      kind: 'number',
      label: 'Concentration by volume',
      unit: 'ppm',
      ...limits.concentrationPpm,
    },
    molarMassGPerMol: {
      kind: 'number',
      label: 'Molar mass',
      unit: 'g/mol',
      ...limits.molarMassGPerMol,
      help: 'Molecular weight of the vapour; see the product’s safety data sheet.',
    },
  },
  outputs: { concentrationMgPerM3: { label: 'Concentration by mass', unit: 'mg/m³' } },
  compute: massConcentration,
  formula: String.raw`C_m = \frac{C_v \, M}{24.45}`,
  symbols: {
    C_m: 'concentration, mg/m³',
    C_v: 'concentration, ppm',
    M: 'molar mass, g/mol',
  },
  inSymbols: (input, output) => ({
    C_m: output.concentrationMgPerM3,
    C_v: input.concentrationPpm,
    M: input.molarMassGPerMol,
  }),
  sources: [
    {
      source: exposureLimitConversion,
      at: 'first formula: TLV in mg/m³',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { concentrationPpm: 1, molarMassGPerMol: 60.1 },
      expect: { concentrationMgPerM3: '2.46' },
      from: {
        source: nioshPocketGuide,
        at: 'isopropyl alcohol: conversion',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { concentrationPpm: 100, molarMassGPerMol: 136 },
      expect: { concentrationMgPerM3: '556' },
      from: { source: nioshIdlh1994, at: 'turpentine: the ACGIH TLV of 100 ppm', confirmed: 'text' },
    },
    {
      given: { concentrationPpm: 500, molarMassGPerMol: 146.7 },
      expect: { concentrationMgPerM3: '3000' },
      from: { workedByHand: '500 × 146.7 = 73350; 73350 / 24.45 = 3000 mg/m³' },
    },
  ],
  laws: [
    {
      of: 'concentrationMgPerM3',
      by: { concentrationPpm: 'proportional', molarMassGPerMol: 'proportional' },
    },
  ],
}));
