import { defineRule, requireList, requireThat } from '@scantling/rules';
import { euclidElements, pilotHoleArticle } from '@scantling/rules/sources';
import { drillingCare, pointNeedsWood } from '../cautions.ts';

const limits = { min: 0.1, max: 500, minItems: 1, maxItems: 6 } as const;

export interface BitSharesInput {
  /** Diameters of the bits in the order they are used, mm, 1 to 6 of them, 0.1 to 500, each larger than the last. */
  readonly bitDiametersMm: readonly number[];
}

export interface BitShares {
  /** What each bit removes, % of the finished hole, in the order of the bits. */
  readonly sharesPct: readonly number[];
}

const ascends = ({ bitDiametersMm }: BitSharesInput) =>
  bitDiametersMm.every((diameterMm, i) => i === 0 || diameterMm > (bitDiametersMm[i - 1] as number));

/**
 * How much of a hole each bit removes when it is opened in steps: a small first bit on the centre mark, larger ones
 * after it, the finished diameter last. A first bit of three tenths of the diameter takes a mere 9 %.
 *
 * @returns The share of each bit in %, together 100.
 * @throws RangeError where a diameter is outside its limits or not larger than the one before.
 * Source: Euclid, Elements, XII.2; the order of the bits: an encyclopedia's article on pilot holes.
 * @example
 * ```ts
 * import { bitShares } from '@scantling/grids';
 * bitShares({ bitDiametersMm: [6, 20] }).sharesPct // => [9, 91]
 * bitShares({ bitDiametersMm: [20, 6] }) // throws bitShares requires bitDiametersMm from small to large
 * ```
 */
export function bitShares(input: BitSharesInput): BitShares {
  const { bitDiametersMm } = input ?? {};
  requireList('bitShares', 'bitDiametersMm', bitDiametersMm, limits);
  requireThat(
    'bitShares',
    ascends(input),
    `bitDiametersMm from small to large, got ${bitDiametersMm.join(', ')}`,
  );
  const finishedMm = bitDiametersMm.at(-1) as number;
  const sharesPct = bitDiametersMm.map((diameterMm, i) => {
    const beforeMm = bitDiametersMm[i - 1] ?? 0;
    return (100 * (diameterMm - beforeMm) * (diameterMm + beforeMm)) / finishedMm ** 2;
  });
  return { sharesPct };
}

export const bitSharesRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/bit-shares',
  title: 'What each bit removes of a hole',
  summary:
    'How much of a hole each bit removes when it is opened from a small first bit to its finished diameter.',
  basis: 'derived',
  inputs: {
    bitDiametersMm: {
      kind: 'numbers',
      label: 'Bits, from the first to the finished diameter',
      unit: 'mm',
      ...limits,
      help: 'Each larger than the one before: 6, 20.',
    },
  },
  outputs: {
    sharesPct: { label: 'Share of the hole', unit: '%', help: 'In the order of the bits; together 100 %.' },
  },
  compute: bitShares,
  formula: String.raw`s_i = \frac{d_i^2 - d_{i-1}^2}{D^2}, \qquad d_0 = 0`,
  symbols: {
    s_i: 'share of bit i',
    d_i: 'diameter of bit i',
    'd_{i-1}': 'diameter of the bit before it',
    D: 'finished diameter',
  },
  requires: [{ says: 'each bit is larger than the one before', holds: ascends }],
  sources: [
    {
      source: euclidElements,
      at: 'Book XII, Proposition 2: circles are to one another as the squares on their diameters',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: pilotHoleArticle,
      at: 'first part: large holes are stepped by larger and larger pilot holes before the final size',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { bitDiametersMm: [6, 20] },
      expect: { sharesPct: ['9.00', '91.00'] },
      from: { workedByHand: '100 × 6² / 20² = 9.00; 100 × (20² − 6²) / 20² = 91.00 %' },
    },
    {
      given: { bitDiametersMm: [5, 10, 20] },
      expect: { sharesPct: ['6.25', '18.75', '75.00'] },
      from: {
        workedByHand:
          '100 × 5² / 20² = 6.25; 100 × (10² − 5²) / 20² = 18.75; 100 × (20² − 10²) / 20² = 75.00 %',
      },
    },
  ],
  cautions: [drillingCare, pointNeedsWood],
}));
