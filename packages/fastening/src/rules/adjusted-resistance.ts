import { defineRule, plusZero, requireChoice, requireInputs } from '@scantling/rules';
import { civilFormulasHandbook, nds2018 } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign } from '../cautions.ts';

const limits = { referenceN: { min: 0, max: 1_000_000 } } as const;

const byDuration = {
  permanent: 0.9,
  tenYears: 1,
  twoMonths: 1.15,
  sevenDays: 1.25,
  tenMinutes: 1.6,
} as const;

export interface AdjustedResistanceInput {
  /** Reference design value of a screw, pulled or pushed sideways, N, 0 to 1 000 000. */
  readonly referenceN: number;
  /** How long the load acts in all its life. */
  readonly duration: keyof typeof byDuration;
  /** Whether the wood stays at or below 19 % moisture content in use. */
  readonly service: 'dry' | 'wet';
}

export interface AdjustedResistance {
  /** What the reference value is multiplied by. */
  readonly factorRatio: number;
  /** What the screw may be given, N. */
  readonly allowedN: number;
}

/**
 * What a wood screw or lag screw may be given, from its reference design value, by how long the load acts and whether the
 * wood stays dry: wood bears more for a short time. For rooms up to 38 °C, and wood that was dry when it was screwed.
 *
 * @returns The factor, and the adjusted design value, N.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS 2018, Tables 2.3.2 and 11.3.3; no joint is given more than 1.6.
 * @example
 * ```ts
 * import { adjustedResistance } from '@scantling/fastening';
 * adjustedResistance({ referenceN: 600, duration: 'permanent', service: 'dry' }) // => { factorRatio: 0.9, allowedN: 540 }
 * adjustedResistance({ referenceN: 600, duration: 'always', service: 'dry' }) // throws adjustedResistance requires duration to be one of permanent, tenYears
 * ```
 */
export function adjustedResistance(input: AdjustedResistanceInput): AdjustedResistance {
  requireInputs('adjustedResistance', input, limits);
  const { referenceN, duration, service } = input;
  requireChoice('adjustedResistance', 'duration', duration, Object.keys(byDuration));
  requireChoice('adjustedResistance', 'service', service, ['dry', 'wet']);
  const factorRatio = byDuration[duration] * (service === 'wet' ? 0.7 : 1);
  return { factorRatio, allowedN: plusZero(factorRatio * referenceN) };
}

export const adjustedResistanceRule = /* @__PURE__ */ defineRule<AdjustedResistanceInput, AdjustedResistance>(
  () => ({
    id: 'fastening/adjusted-resistance',
    title: 'Design value of a screw, adjusted',
    summary:
      'What a wood screw may be given, from its reference design value, by how long the load acts and whether the wood stays dry.',
    basis: 'convention',
    inputs: {
      referenceN: { kind: 'number', label: 'Reference design value', unit: 'N', ...limits.referenceN },
      duration: {
        kind: 'choice',
        label: 'The load acts',
        options: {
          permanent: 'Always',
          tenYears: 'Ten years in all',
          twoMonths: 'Two months in all',
          sevenDays: 'Seven days in all',
          tenMinutes: 'Ten minutes in all',
        },
        help: 'Of all the time that it acts, together.',
      },
      service: {
        kind: 'choice',
        label: 'In use the wood is',
        options: { dry: 'Dry, up to 19 %', wet: 'Wetter' },
      },
    },
    outputs: {
      factorRatio: { label: 'Factor', unit: '1' },
      allowedN: { label: 'Adjusted design value', unit: 'N' },
    },
    compute: adjustedResistance,
    formula: String.raw`W' = W \, C_D \, C_M`,
    symbols: {
      "W'": 'adjusted design value',
      W: 'reference design value',
      C_D: 'load duration factor: 0.9, 1, 1.15, 1.25, 1.6',
      C_M: 'wet service factor: 1 dry, 0.7 wet',
    },
    inSymbols: (input, output) => ({
      "W'": output.allowedN,
      W: input.referenceN,
      C_D: byDuration[input.duration],
      C_M: input.service === 'wet' ? 0.7 : 1,
    }),
    sources: [
      {
        source: nds2018,
        at: 'Tables 2.3.2, 11.3.1 and 11.3.3',
        confirmed: 'text',
        tier: 'reprint',
      },
      {
        source: civilFormulasHandbook,
        at: 'Eq. 6.39 to 6.43, p. 171: the duration factor not above 1.6',
        confirmed: 'text',
      },
    ],
    examples: [
      {
        given: { referenceN: 600, duration: 'permanent', service: 'dry' },
        expect: { factorRatio: '0.90', allowedN: '540.0' },
        from: { workedByHand: '0.90 × 1 = 0.90; 0.90 × 600 = 540.0 N' },
      },
      {
        given: { referenceN: 600, duration: 'tenMinutes', service: 'wet' },
        expect: { factorRatio: '1.12', allowedN: '672.0' },
        from: { workedByHand: '1.6 × 0.7 = 1.12; 1.12 × 600 = 672.0 N' },
      },
      {
        given: { referenceN: 1000, duration: 'twoMonths', service: 'dry' },
        expect: { factorRatio: '1.15', allowedN: '1150.0' },
        from: { workedByHand: '1.15 × 1 = 1.15; 1.15 × 1000 = 1150.0 N' },
      },
      {
        given: { referenceN: 1000, duration: 'sevenDays', service: 'dry' },
        expect: { factorRatio: '1.25', allowedN: '1250.0' },
        from: { workedByHand: '1.25 × 1 = 1.25; 1.25 × 1000 = 1250.0 N' },
      },
      {
        given: { referenceN: 1000, duration: 'tenYears', service: 'wet' },
        expect: { factorRatio: '0.70', allowedN: '700.0' },
        from: { workedByHand: '1.00 × 0.7 = 0.70; 0.70 × 1000 = 700.0 N' },
      },
    ],
    laws: [{ of: 'allowedN', by: { referenceN: 'proportional' } }],
    cautions: [ndsDecides, notStructuralDesign],
  }),
);
