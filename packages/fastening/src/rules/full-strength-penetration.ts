import { defineRule, requireInputs } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import { notStructuralDesign } from '../cautions.ts';
import { airDryInput, shankInput } from '../withdrawal-terms.ts';

const limits = {
  shankDiameterMm: { min: 1, max: 40 },
  airDrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface FullStrengthPenetrationInput {
  /** Diameter of the unthreaded shank, mm, 1 to 40. */
  readonly shankDiameterMm: number;
  /** Specific gravity of the wood, ovendry mass and volume at 12 % moisture content, 0.1 to 1.3. */
  readonly airDrySpecificGravityRatio: number;
}

export interface FullStrengthPenetration {
  /** Least penetration of the thread, mm. */
  readonly fromMm: number;
  /** The same with the larger figure that the source has for light wood, mm. */
  readonly toMm: number;
}

/**
 * How deep the thread of a lag screw has to go so that the screw breaks before the wood lets go of it: 7 diameters in
 * dense wood, 10 to 12 in light wood, and on a straight line between. Deeper than that gains nothing.
 *
 * @returns Least penetration of the thread, from and to, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), ch. 8, lag screws.
 * @example
 * ```ts
 * import { fullStrengthPenetration } from '@scantling/fastening';
 * fullStrengthPenetration({ shankDiameterMm: 8, airDrySpecificGravityRatio: 0.66 }) // => { fromMm: 56, toMm: 56 }
 * fullStrengthPenetration({ shankDiameterMm: 8, airDrySpecificGravityRatio: 0.4 }) // => { fromMm: 80, toMm: 96 }
 * ```
 */
export function fullStrengthPenetration(input: FullStrengthPenetrationInput): FullStrengthPenetration {
  requireInputs('fullStrengthPenetration', input, limits);
  const { shankDiameterMm, airDrySpecificGravityRatio } = input;
  // 0 from 0.61 on, 1 up to 0.42, and a straight line between the two.
  const lightness = Math.min(1, Math.max(0, (0.61 - airDrySpecificGravityRatio) / 0.19));
  return {
    fromMm: (7 + 3 * lightness) * shankDiameterMm,
    toMm: (7 + 5 * lightness) * shankDiameterMm,
  };
}

export const fullStrengthPenetrationRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/full-strength-penetration',
  title: 'Penetration for a lag screw’s full strength',
  summary:
    'How deep the thread of a lag screw has to go so that the screw breaks before the wood lets go of it.',
  basis: 'measured',
  inputs: {
    shankDiameterMm: shankInput(limits.shankDiameterMm),
    airDrySpecificGravityRatio: airDryInput(limits.airDrySpecificGravityRatio),
  },
  outputs: {
    fromMm: { label: 'Penetration of the thread, from', unit: 'mm' },
    toMm: { label: 'Penetration of the thread, to', unit: 'mm' },
  },
  compute: fullStrengthPenetration,
  formula: String.raw`\begin{aligned}
\ell_1 &= (7 + 3u)\,D, \qquad \ell_2 = (7 + 5u)\,D \\
u &= \max\left(0, \min\left(1, \frac{0.61 - G}{0.61 - 0.42}\right)\right)
\end{aligned}`,
  symbols: {
    '\\ell_1, \\ell_2': 'penetration of the thread, from and to',
    D: 'shank diameter',
    G: 'specific gravity',
    u: 'how light the wood is: 0 from 0.61 on, 1 up to 0.42',
  },
  inSymbols: ({ shankDiameterMm, airDrySpecificGravityRatio }, output) => ({
    '\\ell_1': output.fromMm,
    '\\ell_2': output.toMm,
    D: shankDiameterMm,
    G: airDrySpecificGravityRatio,
    u: Math.max(0, Math.min(1, (0.61 - airDrySpecificGravityRatio) / 0.19)),
  }),
  sources: [
    {
      source: woodHandbook2010,
      at: 'ch. 8, p. 8-13: 10 to 12 diameters below 0.42, straight-line interpolation, the limit 0.61 for dense wood',
      confirmed: 'text',
      tier: 'reprint',
    },
    { source: woodHandbook2010, at: 'ch. 8, p. 8-12: 7 diameters in dense wood', confirmed: 'memory' },
  ],
  examples: [
    {
      given: { shankDiameterMm: 8, airDrySpecificGravityRatio: 0.66 },
      expect: { fromMm: '56.00', toMm: '56.00' },
      from: { workedByHand: 'denser than 0.61: 7 × 8 = 56.00 mm' },
    },
    {
      given: { shankDiameterMm: 8, airDrySpecificGravityRatio: 0.515 },
      expect: { fromMm: '68.00', toMm: '76.00' },
      from: {
        workedByHand:
          'halfway: (0.61 − 0.515) / 0.19 = 0.5; (7 + 3 × 0.5) × 8 = 68.00 mm; (7 + 5 × 0.5) × 8 = 76.00 mm',
      },
    },
    {
      given: { shankDiameterMm: 10, airDrySpecificGravityRatio: 0.38 },
      expect: { fromMm: '100.00', toMm: '120.00' },
      from: { workedByHand: 'lighter than 0.42: 10 × 10 = 100.00 mm; 12 × 10 = 120.00 mm' },
    },
  ],
  laws: [
    { of: 'fromMm', by: { shankDiameterMm: 'proportional', airDrySpecificGravityRatio: 'decreasing' } },
    { of: 'toMm', by: { shankDiameterMm: 'proportional', airDrySpecificGravityRatio: 'decreasing' } },
  ],
  cautions: [notStructuralDesign],
}));
