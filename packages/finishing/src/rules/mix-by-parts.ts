import { defineRule, plusZero, requireInputs, requireList } from '@scantling/rules';
import { alligationAnswer2022, alligationAnswer2023 } from '@scantling/rules/sources';
import { compatible, oilyRags, productSheet, solvents } from '../cautions.ts';
import { batchLimits, partsLimits } from '../mixing.ts';
import { mixingCard } from '../mixing-card.ts';

export interface MixByPartsInput {
  /** Parts by volume, one figure for each of 1 to 12 liquids, 0.01 to 1000. */
  readonly parts: readonly number[];
  /** Volume of the whole mix, mL, 0 to 1 000 000. */
  readonly batchMl: number;
}

export interface MixByParts {
  /** Volume of one part, mL. */
  readonly partMl: number;
  /** Volume of each liquid, mL, in the order of the parts. */
  readonly volumesMl: readonly number[];
}

/**
 * How much of each liquid goes into a batch that is mixed by parts.
 *
 * @returns The volume of one part and of each liquid, in mL, in the order of the parts; together they are the batch.
 * @throws RangeError where an input is outside its limits.
 * Source: sharing a whole in proportion; worked examples from answers to students of pharmacy arithmetic.
 * @example
 * ```ts
 * import { mixByParts } from '@scantling/finishing';
 * // Three parts varnish, two of oil, one of thinner: 600 mL are 6 parts of 100 mL
 * mixByParts({ parts: [3, 2, 1], batchMl: 600 }) // => { partMl: 100, volumesMl: [300, 200, 100] }
 * ```
 */
export function mixByParts(input: MixByPartsInput): MixByParts {
  requireInputs('mixByParts', input, { batchMl: batchLimits });
  requireList('mixByParts', 'parts', input.parts, partsLimits);
  const partMl = plusZero(input.batchMl / input.parts.reduce((sum, part) => sum + part));
  return { partMl, volumesMl: input.parts.map((part) => part * partMl) };
}

export const mixByPartsRule = /* @__PURE__ */ defineRule(() => {
  const { parts, batchMl } = mixingCard();
  return {
    id: 'finishing/mix-by-parts',
    title: 'Mixing by parts',
    summary: 'How much of each liquid goes into a batch of finish that is mixed by parts.',
    basis: 'derived',
    inputs: { parts, batchMl },
    outputs: {
      partMl: { label: 'One part', unit: 'mL' },
      volumesMl: { label: 'Volumes', unit: 'mL', help: 'In the order of the parts.' },
    },
    compute: mixByParts,
    formula: String.raw`v = \frac{V}{p}, \qquad p = \sum_i p_i, \qquad V_i = p_i \, v`,
    symbols: {
      v: 'volume of one part',
      V: 'volume of the batch',
      p: 'all parts together',
      p_i: 'parts of one liquid',
      V_i: 'its volume',
    },
    inSymbols: (input, output) => ({
      v: output.partMl,
      V: input.batchMl,
      p: input.parts.reduce((sum, part) => sum + part),
    }),
    sources: [
      { source: alligationAnswer2022, at: 'from "parts" to "summary"', confirmed: 'text' },
      { source: alligationAnswer2023, at: 'last three lines', confirmed: 'text' },
    ],
    examples: [
      {
        given: { parts: [5, 60], batchMl: 260 },
        expect: { partMl: '4', volumesMl: ['20', '240'] },
        from: {
          source: alligationAnswer2022,
          at: 'summary: 5 parts and 60 parts make 260 mL',
          confirmed: 'text',
        },
      },
      {
        given: { parts: [30, 20], batchMl: 20 },
        expect: { volumesMl: ['12', '8'] },
        from: {
          source: alligationAnswer2023,
          at: 'last two lines: 30 parts and 20 parts',
          confirmed: 'text',
        },
      },
      {
        given: { parts: [3, 2, 1], batchMl: 750 },
        expect: { partMl: '125.00', volumesMl: ['375.00', '250.00', '125.00'] },
        from: { workedByHand: '3 + 2 + 1 = 6; 750 / 6 = 125 mL a part; 3 × 125 = 375, 2 × 125 = 250' },
      },
    ],
    laws: [{ of: 'partMl', by: { batchMl: 'proportional' } }],
    cautions: [compatible, oilyRags, solvents, productSheet],
  };
});
