import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { oilyRags, productSheet, solvents, thinWithin } from '../cautions.ts';
import { batchLimits, solidsLimits } from '../mixing.ts';
import { mixingCard } from '../mixing-card.ts';

const limits = { batchMl: batchLimits, volumeSolidsPct: solidsLimits } as const;

export interface WipingVarnishInput {
  /** Volume of the whole mix, mL, 0 to 1 000 000. */
  readonly batchMl: number;
  /** Solids by volume of the varnish, %, 1 to 100. */
  readonly volumeSolidsPct: number;
}

export interface WipingVarnish {
  /** Varnish, mL. */
  readonly varnishMl: number;
  /** Thinner, mL. */
  readonly thinnerMl: number;
  /** Solids by volume of the mix, %. */
  readonly mixSolidsPct: number;
}

/**
 * Varnish thinned half and half, so that it can be wiped on.
 *
 * @returns Varnish and thinner in mL, and the solids of the mix, %.
 * @throws RangeError where an input is outside its limits.
 * Common practice, no source.
 * @example
 * ```ts
 * import { wipingVarnish } from '@scantling/finishing';
 * wipingVarnish({ batchMl: 500, volumeSolidsPct: 50 }) // => { varnishMl: 250, thinnerMl: 250, mixSolidsPct: 25 }
 * ```
 */
export function wipingVarnish(input: WipingVarnishInput): WipingVarnish {
  requireInputs('wipingVarnish', input, limits);
  const varnishMl = plusZero(input.batchMl / 2);
  return { varnishMl, thinnerMl: varnishMl, mixSolidsPct: input.volumeSolidsPct / 2 };
}

export const wipingVarnishRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/wiping-varnish',
  title: 'Wiping varnish, half and half',
  summary: 'Varnish thinned with as much thinner again, so that it can be wiped on in thin coats.',
  basis: 'convention',
  inputs: {
    batchMl: mixingCard().batchMl,
    volumeSolidsPct: { ...mixingCard().volumeSolidsPct, label: 'Solids by volume of the varnish' },
  },
  outputs: {
    varnishMl: { label: 'Varnish', unit: 'mL' },
    thinnerMl: { label: 'Thinner', unit: 'mL' },
    mixSolidsPct: { label: 'Solids of the mix', unit: '%' },
  },
  compute: wipingVarnish,
  formula: String.raw`V_v = V_t = \frac{V}{2}, \qquad s = \frac{S}{2}`,
  symbols: { V_v: 'varnish', V_t: 'thinner', V: 'batch', s: 'solids of the mix', S: 'solids of the varnish' },
  inSymbols: (input, output) => ({
    V_v: output.varnishMl,
    V_t: output.thinnerMl,
    V: input.batchMl,
    s: output.mixSolidsPct,
    S: input.volumeSolidsPct,
  }),
  sources: [],
  examples: [
    {
      given: { batchMl: 500, volumeSolidsPct: 50 },
      expect: { varnishMl: '250.0', thinnerMl: '250.0', mixSolidsPct: '25.0' },
      from: { workedByHand: '500 / 2 = 250; 50 / 2 = 25' },
    },
  ],
  laws: [
    { of: 'varnishMl', by: { batchMl: 'proportional' } },
    { of: 'mixSolidsPct', by: { volumeSolidsPct: 'proportional' } },
  ],
  cautions: [
    'Some sheets forbid thinning this far: it thins the film as well, and three coats may leave less than one.',
    thinWithin,
    oilyRags,
    solvents,
    productSheet,
  ],
}));
