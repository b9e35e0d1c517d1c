import { defineRule, requireInputs } from '@scantling/rules';
import { leadHoleTests2021, nds2018, ndsCommentary1999, woodHandbook2010 } from '@scantling/rules/sources';
import { drillingCare, notStructuralDesign, tryOnAnOffcut } from '../cautions.ts';
import { ovendryInput, shankInput } from '../withdrawal-terms.ts';

const limits = {
  shankDiameterMm: { min: 1, max: 40 },
  ovendrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface LagScrewLeadHoleInput {
  /** Diameter of the unthreaded shank, mm, 1 to 40. */
  readonly shankDiameterMm: number;
  /** Specific gravity of the wood, ovendry mass and volume, 0.1 to 1.3. */
  readonly ovendrySpecificGravityRatio: number;
}

export interface LagScrewLeadHole {
  /** Smallest hole for the threads, mm: for thin lag screws. */
  readonly smallestThreadHoleMm: number;
  /** Largest hole for the threads, mm: for thick ones. */
  readonly largestThreadHoleMm: number;
  /** Hole for the shank, mm, as deep as the shank goes. */
  readonly shankHoleMm: number;
}

/**
 * Lead holes for a lag screw by the density of the wood, as the American design code asks for them: a hole of the
 * shank's own diameter as deep as the shank, and beyond it one of a share of it, at least as long as the thread. The
 * larger share goes with the thicker screw.
 *
 * @returns Smallest and largest hole for the threads, and the hole for the shank, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS 2018, § 12.1.4.2.
 * @example
 * ```ts
 * import { lagScrewLeadHole } from '@scantling/fastening';
 * // A lag screw of 10 mm in beech
 * lagScrewLeadHole({ shankDiameterMm: 10, ovendrySpecificGravityRatio: 0.64 }) // => { smallestThreadHoleMm: 6.5, largestThreadHoleMm: 8.5, shankHoleMm: 10 }
 * ```
 */
export function lagScrewLeadHole(input: LagScrewLeadHoleInput): LagScrewLeadHole {
  requireInputs('lagScrewLeadHole', input, limits);
  const { shankDiameterMm, ovendrySpecificGravityRatio } = input;
  const dense = ovendrySpecificGravityRatio > 0.6;
  const light = ovendrySpecificGravityRatio <= 0.5;
  return {
    smallestThreadHoleMm: (dense ? 0.65 : light ? 0.4 : 0.6) * shankDiameterMm,
    largestThreadHoleMm: (dense ? 0.85 : light ? 0.7 : 0.75) * shankDiameterMm,
    shankHoleMm: shankDiameterMm,
  };
}

export const lagScrewLeadHoleRule = /* @__PURE__ */ defineRule<LagScrewLeadHoleInput, LagScrewLeadHole>(
  () => ({
    id: 'fastening/lag-screw-lead-hole',
    title: 'Lead holes for a lag screw, by density',
    summary:
      'What to bore for the threads and for the shank of a lag screw, by the density of the wood: a range for the threads, the larger for the thicker screw.',
    basis: 'convention',
    inputs: {
      shankDiameterMm: shankInput(limits.shankDiameterMm),
      ovendrySpecificGravityRatio: ovendryInput(limits.ovendrySpecificGravityRatio),
    },
    outputs: {
      smallestThreadHoleMm: { label: 'Smallest hole for the threads', unit: 'mm', help: 'For thin screws.' },
      largestThreadHoleMm: { label: 'Largest hole for the threads', unit: 'mm', help: 'For thick screws.' },
      shankHoleMm: { label: 'Hole for the shank', unit: 'mm', help: 'As deep as the shank goes.' },
    },
    compute: lagScrewLeadHole,
    formula: String.raw`\begin{aligned}
d_1 &= \begin{cases} 0.65\,D & G > 0.6 \\ 0.60\,D & 0.5 < G \le 0.6 \\ 0.40\,D & G \le 0.5 \end{cases} \\
d_2 &= \begin{cases} 0.85\,D & G > 0.6 \\ 0.75\,D & 0.5 < G \le 0.6 \\ 0.70\,D & G \le 0.5 \end{cases} \\
d_s &= D
\end{aligned}`,
    symbols: {
      'd_1, d_2': 'hole for the threads, smallest and largest',
      d_s: 'hole for the shank',
      D: 'shank diameter',
      G: 'specific gravity',
    },
    inSymbols: (input, output) => ({
      d_1: output.smallestThreadHoleMm,
      d_2: output.largestThreadHoleMm,
      d_s: output.shankHoleMm,
      D: input.shankDiameterMm,
      G: input.ovendrySpecificGravityRatio,
    }),
    valid: { shankDiameterMm: [6.35, 31.75] },
    sources: [
      {
        source: nds2018,
        at: '§ 12.1.4.2, p. 74: the three classes and their shares',
        confirmed: 'text',
        tier: 'reprint',
      },
      {
        source: woodHandbook2010,
        at: 'ch. 8, lag screws: 65 to 85 % in dense hardwoods, 60 to 75 % in Douglas-fir and southern pine, 40 to 70 % in light softwoods',
        confirmed: 'memory',
      },
      {
        source: ndsCommentary1999,
        at: '9.1.2.1: a clearance hole for the shank and three classes of specific gravity for the lead hole since 1944, from tests of Douglas-fir, southern pine, white oak, redwood and northern white pine',
        confirmed: 'text',
      },
      {
        source: leadHoleTests2021,
        at: 'abstract: holes of 68.7, 70.8 and 74.0 % of the shank in larch gave no significant difference in withdrawal; the largest took the least force to drive',
        confirmed: 'text',
      },
    ],
    examples: [
      {
        given: { shankDiameterMm: 10, ovendrySpecificGravityRatio: 0.64 },
        expect: { smallestThreadHoleMm: '6.500', largestThreadHoleMm: '8.500', shankHoleMm: '10.000' },
        from: { workedByHand: '0.65 × 10 = 6.500 mm; 0.85 × 10 = 8.500 mm; the shank: 1 × 10 = 10.000 mm' },
      },
      {
        given: { shankDiameterMm: 12.7, ovendrySpecificGravityRatio: 0.55 },
        expect: { smallestThreadHoleMm: '7.620', largestThreadHoleMm: '9.525' },
        from: { workedByHand: '0.60 × 12.7 = 7.620 mm; 0.75 × 12.7 = 9.525 mm' },
      },
      {
        given: { shankDiameterMm: 8, ovendrySpecificGravityRatio: 0.42 },
        expect: { smallestThreadHoleMm: '3.200', largestThreadHoleMm: '5.600' },
        from: { workedByHand: '0.40 × 8 = 3.200 mm; 0.70 × 8 = 5.600 mm' },
      },
      {
        given: { shankDiameterMm: 10, ovendrySpecificGravityRatio: 0.5 },
        expect: { smallestThreadHoleMm: '4.000', largestThreadHoleMm: '7.000' },
        from: { workedByHand: '0.5 is still light: 0.40 × 10 = 4.000 mm; 0.70 × 10 = 7.000 mm' },
      },
      {
        given: { shankDiameterMm: 10, ovendrySpecificGravityRatio: 0.6 },
        expect: { smallestThreadHoleMm: '6.000', largestThreadHoleMm: '7.500' },
        from: { workedByHand: '0.6 is not yet dense: 0.60 × 10 = 6.000 mm; 0.75 × 10 = 7.500 mm' },
      },
    ],
    laws: [
      {
        of: 'smallestThreadHoleMm',
        by: { shankDiameterMm: 'proportional', ovendrySpecificGravityRatio: 'increasing' },
      },
      {
        of: 'largestThreadHoleMm',
        by: { shankDiameterMm: 'proportional', ovendrySpecificGravityRatio: 'increasing' },
      },
      { of: 'shankHoleMm', by: { shankDiameterMm: 'proportional' } },
    ],
    cautions: [notStructuralDesign, tryOnAnOffcut, drillingCare],
  }),
);
