import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import { volumeSolidsAnswer2010 } from '@scantling/rules/sources';

const limits = {
  massSolidsPct: { min: 0, max: 100 },
  densityGPerL: { min: 500, max: 2500 },
  volatileDensityGPerL: { min: 500, max: 2000 },
} as const;

export interface VolumeSolidsInput {
  /** Solids by weight, %, 0 to 100. */
  readonly massSolidsPct: number;
  /** Density of the finish, g/L, 500 to 2500. */
  readonly densityGPerL: number;
  /** Density of what evaporates, g/L, 500 to 2000; its volume must leave at least 1 % for the solids. */
  readonly volatileDensityGPerL: number;
}

export interface VolumeSolids {
  /** Solids by volume, %. */
  readonly volumeSolidsPct: number;
}

/**
 * Solids by volume from solids by weight: what evaporates is weighed, turned into a volume, and taken away.
 *
 * @returns Solids by volume, %.
 * @throws RangeError where an input is outside its limits, or what evaporates would leave less than 1 % by volume.
 * Source: an answer of a resource centre for coatings; volumes are taken to add up.
 * @example
 * ```ts
 * import { volumeSolids } from '@scantling/finishing';
 * // Of 900 g half evaporates: 450 g of a solvent of 750 g/L are 0.6 L
 * volumeSolids({ massSolidsPct: 50, densityGPerL: 900, volatileDensityGPerL: 750 }) // => { volumeSolidsPct: 40 }
 * ```
 */
export function volumeSolids(input: VolumeSolidsInput): VolumeSolids {
  requireInputs('volumeSolids', input, limits);
  const volatilePct = ((100 - input.massSolidsPct) * input.densityGPerL) / input.volatileDensityGPerL;
  requireThat(
    'volumeSolids',
    volatilePct <= 99,
    `volatileDensityGPerL high enough to leave 1 % for solids, got ${input.volatileDensityGPerL}`,
  );
  return { volumeSolidsPct: 100 - volatilePct };
}

export const volumeSolidsRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/volume-solids',
  title: 'Solids by volume from solids by weight',
  summary: 'Data sheets often give solids by weight; film and spreading rate ask for solids by volume.',
  basis: 'derived',
  inputs: {
    massSolidsPct: { kind: 'number', label: 'Solids by weight', unit: '%', ...limits.massSolidsPct },
    densityGPerL: {
      kind: 'number',
      label: 'Density of the finish',
      unit: 'g/L',
      ...limits.densityGPerL,
      help: 'See the product’s data sheet. 1 lb/gal is 119.8 g/L.',
    },
    volatileDensityGPerL: {
      kind: 'number',
      label: 'Density of what evaporates',
      unit: 'g/L',
      ...limits.volatileDensityGPerL,
      help: 'Water 998; mineral spirits about 780, from memory.',
    },
  },
  outputs: { volumeSolidsPct: { label: 'Solids by volume', unit: '%' } },
  compute: volumeSolids,
  formula: String.raw`V_S = 1 - (1 - m_S) \, \frac{\rho}{\rho_v}`,
  symbols: {
    V_S: 'solids by volume, as a fraction',
    m_S: 'solids by weight, as a fraction',
    '\\rho': 'density of the finish',
    '\\rho_v': 'density of what evaporates',
  },
  inSymbols: (input, output) => ({
    V_S: output.volumeSolidsPct / 100,
    m_S: input.massSolidsPct / 100,
    '\\rho': input.densityGPerL,
    '\\rho_v': input.volatileDensityGPerL,
  }),
  requires: [
    {
      says: 'what evaporates to leave at least 1 % by volume',
      holds: ({ massSolidsPct, densityGPerL, volatileDensityGPerL }) =>
        ((100 - massSolidsPct) * densityGPerL) / volatileDensityGPerL <= 99,
    },
  ],
  sources: [
    {
      source: volumeSolidsAnswer2010,
      at: 'volume of a solvent: percent weight × density of coating / density of solvent',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { massSolidsPct: 50, densityGPerL: 900, volatileDensityGPerL: 750 },
      expect: { volumeSolidsPct: '40.0' },
      from: { workedByHand: '50 × 900 / 750 = 60 % evaporates; 100 − 60 = 40' },
    },
  ],
  laws: [
    {
      of: 'volumeSolidsPct',
      by: { massSolidsPct: 'linear', densityGPerL: 'linear', volatileDensityGPerL: 'increasing' },
    },
  ],
}));
