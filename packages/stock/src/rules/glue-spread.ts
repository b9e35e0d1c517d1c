import { defineRule, requireInputs } from '@scantling/rules';
import { glueSpreaderNote1952, nistSp811 } from '@scantling/rules/sources';
import { glueLabel } from '../cautions.ts';

const limits = { spreadLbPer1000Ft2: { min: 0, max: 1000 } } as const;

export interface GlueSpreadInput {
  /** Pounds of glue for a thousand square feet of glue line, 0 to 1000. */
  readonly spreadLbPer1000Ft2: number;
}

export interface GlueSpread {
  /** g/m². */
  readonly spreadGPerM2: number;
}

/**
 * A glue spread in grams for a square metre, from pounds for a thousand square feet of single glue line (MSGL), the
 * unit of American data sheets.
 *
 * @returns The spread, g/m².
 * @throws RangeError where the spread is outside its limits.
 * Source: NIST SP 811, Appendix B.8: the pound and the square foot.
 * @example
 * ```ts
 * import { glueSpread } from '@scantling/stock';
 * glueSpread({ spreadLbPer1000Ft2: 50 }).spreadGPerM2 // => 244.1214
 * ```
 */
export function glueSpread(input: GlueSpreadInput): GlueSpread {
  requireInputs('glueSpread', input, limits);
  // 453.59237 g on 92.90304 m².
  return { spreadGPerM2: (input.spreadLbPer1000Ft2 * 453.59237) / 92.90304 + 0 };
}

export const glueSpreadRule = /* @__PURE__ */ defineRule(() => ({
  id: 'stock/glue-spread',
  title: 'Glue spread in grams',
  summary: 'A glue spread in grams for a square metre, from pounds for a thousand square feet of glue line.',
  basis: 'exact',
  inputs: {
    spreadLbPer1000Ft2: {
      kind: 'number',
      label: 'Spread',
      unit: 'lb/1000 ft²',
      ...limits.spreadLbPer1000Ft2,
      help: 'Of single glue line: written lb/MSGL.',
    },
  },
  outputs: { spreadGPerM2: { label: 'Spread', unit: 'g/m²' } },
  compute: glueSpread,
  formula: String.raw`s = \frac{453.59237}{92.90304} \, m`,
  symbols: { s: 'grams for a square metre', m: 'pounds for a thousand square feet' },
  inSymbols: (input, output) => ({ s: output.spreadGPerM2, m: input.spreadLbPer1000Ft2 }),
  sources: [
    {
      source: nistSp811,
      at: 'Appendix B.8, footnote 22: pound; square foot: 9.290 304 E-02 m²',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: glueSpreaderNote1952,
      at: 'the unit as glue is spread by: 50 pounds of glue per 1,000 square feet',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { spreadLbPer1000Ft2: 40 },
      expect: { spreadGPerM2: '195.297' },
      from: { workedByHand: '40 × 453.59237 = 18143.6948 g; 18143.6948 / 92.90304 = 195.297 g/m²' },
    },
  ],
  laws: [{ of: 'spreadGPerM2', by: { spreadLbPer1000Ft2: 'proportional' } }],
  cautions: [glueLabel],
}));
