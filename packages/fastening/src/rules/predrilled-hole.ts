import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { eurocode5, timberDesignToEurocode } from '@scantling/rules/sources';
import { drillingCare, makersDataFirst, tryOnAnOffcut } from '../cautions.ts';
import { shankInput } from '../withdrawal-terms.ts';

const limits = { shankDiameterMm: { min: 0.5, max: 30 } } as const;

export interface PredrilledHoleInput {
  /** Diameter of the smooth shank, mm, 0.5 to 30. */
  readonly shankDiameterMm: number;
  /** Kind of the wood that takes the threads. */
  readonly wood: 'softwood' | 'hardwood';
}

export interface PredrilledHole {
  /** Hole for the threads, mm; `null` where the code asks for none. */
  readonly threadHoleMm: number | null;
  /** Hole for the shank, mm, as deep as the shank goes; `null` where the code asks for none. */
  readonly shankHoleMm: number | null;
}

/**
 * The hole that the European design code asks to be drilled for a screw: in hardwood always, in softwood for shanks
 * above 6 mm. For the shank its own diameter, for the threads about 70 % of it: the code's figure for softwoods. Above
 * 500 kg/m³, and so in most hardwoods, it leaves the hole to tests.
 *
 * @returns Both holes, mm, `null` where none is asked for.
 * @throws RangeError where the diameter is outside its limits or the wood is neither of the two.
 * Source: Eurocode 5 (EN 1995-1-1), 10.4.5, as a textbook on it puts it.
 * @example
 * ```ts
 * import { predrilledHole } from '@scantling/fastening';
 * predrilledHole({ shankDiameterMm: 5, wood: 'hardwood' }) // => { threadHoleMm: 3.5, shankHoleMm: 5 }
 * predrilledHole({ shankDiameterMm: 5, wood: 'softwood' }) // => { threadHoleMm: null, shankHoleMm: null }
 * ```
 */
export function predrilledHole(input: PredrilledHoleInput): PredrilledHole {
  requireInputs('predrilledHole', input, limits);
  const { shankDiameterMm, wood } = input;
  requireChoice('predrilledHole', 'wood', wood, ['softwood', 'hardwood']);
  if (wood === 'softwood' && shankDiameterMm <= 6) return { threadHoleMm: null, shankHoleMm: null };
  return { threadHoleMm: 0.7 * shankDiameterMm, shankHoleMm: shankDiameterMm };
}

export const predrilledHoleRule = /* @__PURE__ */ defineRule<PredrilledHoleInput, PredrilledHole>(() => ({
  id: 'fastening/predrilled-hole',
  title: 'Hole drilled for a screw, by the European code',
  summary:
    'Whether the European design code asks for a drilled hole for a screw, and how wide it is for the shank and for the threads.',
  basis: 'convention',
  inputs: {
    shankDiameterMm: shankInput(limits.shankDiameterMm),
    wood: {
      kind: 'choice',
      label: 'Wood',
      options: { softwood: 'Softwood', hardwood: 'Hardwood' },
      help: 'That takes the threads. Above 500 kg/m³, most hardwoods among them, tests are to settle the hole.',
    },
  },
  outputs: {
    threadHoleMm: {
      label: 'Hole for the threads',
      unit: 'mm',
      help: 'The 70 % of softwoods: in hardwood where to begin with tests.',
    },
    shankHoleMm: { label: 'Hole for the shank', unit: 'mm', help: 'As deep as the shank goes.' },
  },
  compute: predrilledHole,
  formula: String.raw`d_t = 0.7\,d, \qquad d_s = d`,
  symbols: {
    d_t: 'hole for the threads, about',
    d_s: 'hole for the shank',
    d: 'shank diameter',
  },
  inSymbols: ({ shankDiameterMm }, { threadHoleMm, shankHoleMm }) => ({
    ...(threadHoleMm !== null && { d_t: threadHoleMm }),
    ...(shankHoleMm !== null && { d_s: shankHoleMm }),
    d: shankDiameterMm,
  }),
  sources: [
    {
      source: timberDesignToEurocode,
      at: 'screws: none in softwood up to 6 mm; otherwise 10.4.5, the shank’s own diameter and depth, about 70 % of it for the threads',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: eurocode5,
      at: '10.4.5: the 70 % are for softwoods; above 500 kg/m³ tests are to settle the hole',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { shankDiameterMm: 6.01, wood: 'softwood' },
      expect: { threadHoleMm: '4.207', shankHoleMm: '6.010' },
      from: { workedByHand: 'more than 6 mm: 0.7 × 6.01 = 4.207 mm; the shank: 1 × 6.01 = 6.010 mm' },
    },
    {
      given: { shankDiameterMm: 5, wood: 'hardwood' },
      expect: { threadHoleMm: '3.500', shankHoleMm: '5.000' },
      from: { workedByHand: '0.7 × 5 = 3.500 mm; the shank: 1 × 5 = 5.000 mm' },
    },
    {
      given: { shankDiameterMm: 8, wood: 'softwood' },
      expect: { threadHoleMm: '5.600', shankHoleMm: '8.000' },
      from: { workedByHand: '0.7 × 8 = 5.600 mm; the shank: 1 × 8 = 8.000 mm' },
    },
  ],
  laws: [
    { of: 'threadHoleMm', by: { shankDiameterMm: 'increasing' } },
    { of: 'shankHoleMm', by: { shankDiameterMm: 'increasing' } },
  ],
  cautions: [
    'In wood of more than 500 kg/m³ the code gives no hole for the threads and leaves it to tests: begin with this one on an offcut, and bore larger where the wood splits or the screw binds.',
    makersDataFirst,
    tryOnAnOffcut,
    drillingCare,
  ],
}));
