import { defineRule, plusZero, requireChoice, requireInputs } from '@scantling/rules';
import { nds2018, timberConnectionsCourse } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign } from '../cautions.ts';
import { inPsi } from '../inch-pound.ts';

const limits = { tensileMPa: { min: 0, max: 3000 } } as const;

export interface SteelBearingStrengthInput {
  /** Tensile strength of the steel, MPa, 0 to 3000. */
  readonly tensileMPa: number;
  /** How the plate or bracket was made: hot-rolled, from 1/4 in (6.35 mm) up, or formed cold from thinner sheet. */
  readonly made: 'hotRolled' | 'coldFormed';
}

export interface SteelBearingStrength {
  /** Pressure of the shank that the steel is taken to bear, MPa. */
  readonly strengthMPa: number;
}

/**
 * How much pressure a steel plate, bracket or tube is taken to bear under a shank that is pushed sideways, where the other
 * piece is wood: already divided by 1.6, so that it goes with the values for wood.
 *
 * @returns The dowel bearing strength, MPa.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS, appendix I.2, as a university course states it.
 * @example
 * ```ts
 * import { steelBearingStrength } from '@scantling/fastening';
 * // Structural steel of 400 MPa, 8 mm thick: 2.4 × 400 / 1.6
 * steelBearingStrength({ tensileMPa: 400, made: 'hotRolled' }).strengthMPa // => 600
 * steelBearingStrength({ tensileMPa: 400, made: 'cast' }) // throws steelBearingStrength requires made to be one of hotRolled, coldFormed
 * ```
 */
export function steelBearingStrength(input: SteelBearingStrengthInput): SteelBearingStrength {
  requireInputs('steelBearingStrength', input, limits);
  requireChoice('steelBearingStrength', 'made', input.made, ['hotRolled', 'coldFormed']);
  return { strengthMPa: plusZero(input.tensileMPa * (input.made === 'hotRolled' ? 1.5 : 1.375)) };
}

export const steelBearingStrengthRule = /* @__PURE__ */ defineRule<
  SteelBearingStrengthInput,
  SteelBearingStrength
>(() => ({
  id: 'fastening/steel-bearing-strength',
  title: 'Bearing strength of steel under a shank',
  summary:
    'How much pressure a steel plate or tube is taken to bear under the shank of a screw, in joints with wood.',
  basis: 'convention',
  inputs: {
    tensileMPa: { kind: 'number', label: 'Tensile strength', unit: 'MPa', ...limits.tensileMPa },
    made: {
      kind: 'choice',
      label: 'The steel is',
      options: { hotRolled: 'Hot-rolled, 6.35 mm and more', coldFormed: 'Cold-formed, thinner' },
    },
  },
  outputs: { strengthMPa: { label: 'Dowel bearing strength', unit: 'MPa' } },
  compute: steelBearingStrength,
  formula: String.raw`F_e = \frac{k \, F_u}{1.6}`,
  symbols: {
    F_e: 'dowel bearing strength',
    F_u: 'tensile strength',
    k: '2.4 hot-rolled, 2.2 cold-formed',
  },
  inSymbols: (input, output) => ({
    F_e: output.strengthMPa,
    F_u: input.tensileMPa,
    k: input.made === 'hotRolled' ? 2.4 : 2.2,
  }),
  sources: [
    {
      source: timberConnectionsCourse,
      at: 'steel side plates, dowel bearing strength: hot-rolled and cold-formed',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { tensileMPa: 400, made: 'hotRolled' },
      expect: { strengthMPa: '600.0' },
      from: { workedByHand: '2.4 × 400 / 1.6 = 600.0 MPa' },
    },
    {
      given: { tensileMPa: 58_000 * 0.006894757293168361, made: 'hotRolled' },
      expect: { strengthMPa: inPsi('87000') },
      from: {
        source: nds2018,
        at: 'Table 12K, footnote 2: ASTM A36, of 58,000 psi',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { tensileMPa: 45_000 * 0.006894757293168361, made: 'coldFormed' },
      expect: { strengthMPa: inPsi('61850') },
      within: { value: 0.2, because: 'The table rounds 61,875 psi down to 61,850.' },
      from: {
        source: nds2018,
        at: 'Table 12K, footnote 2: ASTM A653 grade 33, of 45,000 psi',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
  ],
  laws: [{ of: 'strengthMPa', by: { tensileMPa: 'proportional' } }],
  cautions: [ndsDecides, notStructuralDesign],
}));
