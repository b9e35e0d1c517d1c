import { defineRule, plusZero, requireList, requireThat } from '@scantling/rules';
import { alligationAnswer2022 } from '@scantling/rules/sources';
import { compatible, oilyRags, productSheet, solvents } from '../cautions.ts';
import { partsLimits } from '../mixing.ts';
import { mixingCard } from '../mixing-card.ts';

const onHandLimits = { min: 0, max: 1_000_000, minItems: 1, maxItems: 12 } as const;

export interface LargestBatchInput {
  /** By volume, one figure for each liquid, 0.01 to 1000. */
  readonly parts: readonly number[];
  /** What there is of each liquid, mL, 0 to 1 000 000, in the order of the parts. */
  readonly onHandMl: readonly number[];
}

export interface LargestBatch {
  /** The whole mix, mL. */
  readonly batchMl: number;
  /** What goes in of each liquid, mL. */
  readonly volumesMl: readonly number[];
  /** What is left over of each liquid, mL; 0 for the one that runs out. */
  readonly leftMl: readonly number[];
}

/**
 * The largest batch that can be mixed by parts from what there is: one of the liquids runs out.
 *
 * @returns The batch, what goes in and what is left, mL, in the order of the parts.
 * @throws RangeError where an input is outside its limits or the two lists differ in length.
 * Source: the same proportion as in mixing by parts.
 * @example
 * ```ts
 * import { largestBatch } from '@scantling/finishing';
 * // Three to one from 600 and 250 mL: 600 / 3 = 200 mL a part
 * largestBatch({ parts: [3, 1], onHandMl: [600, 250] }) // => { batchMl: 800, volumesMl: [600, 200], leftMl: [0, 50] }
 * ```
 */
export function largestBatch(input: LargestBatchInput): LargestBatch {
  requireList('largestBatch', 'parts', input?.parts, partsLimits);
  requireList('largestBatch', 'onHandMl', input.onHandMl, onHandLimits);
  const { parts, onHandMl } = input;
  requireThat(
    'largestBatch',
    parts.length === onHandMl.length,
    `as many onHandMl as parts, got ${onHandMl.length} and ${parts.length}`,
  );
  const inParts = parts.map((part, i) => (onHandMl[i] as number) / part);
  const first = inParts.indexOf(Math.min(...inParts));
  // Counted from the can that runs out, so that it is emptied to the last drop.
  const volumesMl = parts.map((part, i) =>
    plusZero(
      Math.min((onHandMl[first] as number) * (part / (parts[first] as number)), onHandMl[i] as number),
    ),
  );
  return {
    batchMl: volumesMl.reduce((sum, volume) => sum + volume),
    volumesMl,
    leftMl: onHandMl.map((volume, i) => plusZero(volume - (volumesMl[i] as number))),
  };
}

export const largestBatchRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/largest-batch',
  title: 'Largest batch from what there is',
  summary: 'How much finish can be mixed by parts from what is in the cans, and what is left over of each.',
  basis: 'derived',
  inputs: {
    parts: mixingCard().parts,
    onHandMl: {
      kind: 'numbers',
      label: 'In the cans',
      unit: 'mL',
      ...onHandLimits,
      help: 'What there is of each, in the order of the parts.',
    },
  },
  outputs: {
    batchMl: { label: 'Largest batch', unit: 'mL' },
    volumesMl: { label: 'Volumes', unit: 'mL', help: 'In the order of the parts.' },
    leftMl: { label: 'Left over', unit: 'mL', help: 'In the order of the parts.' },
  },
  compute: largestBatch,
  formula: String.raw`v = \min_i \frac{H_i}{p_i}, \qquad V_i = p_i \, v, \qquad V = p \, v`,
  symbols: {
    v: 'volume of one part, mL',
    H_i: 'what there is of a liquid',
    p_i: 'its parts',
    V_i: 'what goes in',
    V: 'the batch',
    p: 'all parts together',
  },
  inSymbols: ({ parts, onHandMl }, output) => ({
    v: Math.min(...parts.map((part, i) => (onHandMl[i] as number) / part)),
    V: output.batchMl,
    p: parts.reduce((sum, part) => sum + part),
  }),
  requires: [
    {
      says: 'as many volumes as parts',
      holds: ({ parts, onHandMl }) => parts.length === onHandMl.length,
    },
  ],
  sources: [{ source: alligationAnswer2022, at: 'from "parts" to "summary"', confirmed: 'text' }],
  examples: [
    {
      given: { parts: [5, 60], onHandMl: [25, 240] },
      expect: { batchMl: '260', volumesMl: ['20', '240'] },
      from: {
        source: alligationAnswer2022,
        at: 'summary: 240 mL of the one take 20 mL of the other',
        confirmed: 'text',
      },
    },
    {
      given: { parts: [3, 1], onHandMl: [600, 250] },
      expect: { batchMl: '800.0', volumesMl: ['600.0', '200.0'], leftMl: ['0', '50.0'] },
      from: {
        workedByHand:
          '600 / 3 = 200 and 250 / 1 = 250, so 200 mL a part; 3 × 200 = 600, 1 × 200 = 200; 600 + 200 = 800; left 600 − 600 = 0 and 250 − 200 = 50',
      },
    },
  ],
  cautions: [compatible, oilyRags, solvents, productSheet],
}));
