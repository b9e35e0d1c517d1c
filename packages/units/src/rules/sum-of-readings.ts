import { defineRule, requireList } from '@scantling/rules';
import { nistSp811 } from '@scantling/rules/sources';
import { sumMm } from '../length/ticks.ts';

const limits = { min: -1e6, max: 1e6, minItems: 1, maxItems: 1000 } as const;

export interface SumOfReadingsInput {
  /** Readings in mm, 1 to 1000 of them, each −1e6 to 1e6; one that is taken away is negative. */
  readonly readingsMm: readonly number[];
}

export interface SumOfReadings {
  /** The sum, mm. */
  readonly sumMm: number;
}

/**
 * Adds readings from tapes and rules of any kind, in any order, without drift: each reading is taken to the whole
 * nanometre, which holds every 64th of an inch, every 0.00001 in and every micrometre exactly, and whole numbers are
 * added.
 *
 * @returns The sum, mm.
 * @throws RangeError where there are not 1 to 1000 readings, or one is outside −1e6 to 1e6 mm.
 * Source: 1 in = 25.4 mm exactly, NIST SP 811, Appendix B.8; the rest is addition.
 * @example
 * ```ts
 * import { formatLength, parseLength, sumOfReadings } from '@scantling/units';
 * const { sumMm } = sumOfReadings({ readingsMm: [parseLength('31 7/16 in'), parseLength('0.41 in')] });
 * formatLength(sumMm, { unit: 'in', decimals: 4 }) // => '31.8475 in'
 * ```
 */
export function sumOfReadings(input: SumOfReadingsInput): SumOfReadings {
  requireList('sumOfReadings', 'readingsMm', input?.readingsMm, limits);
  return { sumMm: sumMm(input.readingsMm) };
}

export const sumOfReadingsRule = /* @__PURE__ */ defineRule(() => ({
  id: 'units/sum-of-readings',
  title: 'Sum of readings',
  summary:
    'Adds readings from inch tapes, metric tapes and rules in decimal inches without losing any of them.',
  basis: 'derived',
  inputs: {
    readingsMm: {
      kind: 'numbers',
      label: 'Readings',
      unit: 'mm',
      ...limits,
      help: 'A reading that is taken away is negative.',
    },
  },
  outputs: { sumMm: { label: 'Sum', unit: 'mm' } },
  compute: sumOfReadings,
  formula: String.raw`s = \sum_i \ell_i, \qquad 1\,\mathrm{in} = 25.4\,\mathrm{mm}`,
  symbols: { s: 'sum', '\\ell_i': 'reading' },
  sources: [
    {
      source: nistSp811,
      at: 'Appendix B.8, inch to centimeter: 2.54, in boldface',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { readingsMm: [798.5125, 10.414] },
      expect: { sumMm: { printed: '31.8475', unit: 'in', times: 25.4 } },
      from: {
        workedByHand:
          '31 7/16 in is 798.5125 mm and 0.41 in is 10.414 mm; 31.4375 in + 0.41 in = 31.8475 in, 808.9265 mm',
      },
    },
    {
      given: { readingsMm: [1220, -479.425, 0.5] },
      expect: { sumMm: '741.075' },
      from: { workedByHand: '18 7/8 in is 479.425 mm; 1220 − 479.425 + 0.5 = 741.075 mm' },
    },
  ],
}));
