import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { cfr4059, organicFinishingGuidebook2013, vocAnswer2004 } from '@scantling/rules/sources';
import { productSheet, solvents, thinWithin } from '../cautions.ts';

const mass = { min: 0, max: 1_000_000 } as const;
const volume = { min: 0, max: 1_000_000 } as const;
const limits = { volatilesG: mass, waterG: mass, exemptG: mass, waterMl: volume, exemptMl: volume } as const;

export interface VocContentInput {
  /** Everything that evaporates, g, 0 to 1 000 000. */
  readonly volatilesG: number;
  /** Water among it, g. */
  readonly waterG: number;
  /** Compounds among it that the rule exempts, g. */
  readonly exemptG: number;
  /** The liquid as applied, thinner included, mL, 1 to 1 000 000. */
  readonly volumeMl: number;
  /** Volume of the water, mL; with the exempt compounds at most 99 % of the whole. */
  readonly waterMl: number;
  /** Volume of the exempt compounds, mL. */
  readonly exemptMl: number;
}

export interface VocContent {
  /** Volatile organic compounds in a litre, water and exempt compounds left out of it, g/L. */
  readonly vocGPerL: number;
  /** The same in pounds to a US gallon. */
  readonly vocLbPerGal: number;
}

/**
 * Content of volatile organic compounds as United States rules count it: grams to a litre of liquid from which the
 * water and the exempt compounds are taken away.
 *
 * @returns The content in g/L and lb/gal.
 * @throws RangeError where an input is outside its limits, more water and exempt compounds evaporate than evaporates in
 * all, or they are more than 99 % of the volume.
 * Source: 40 CFR 59.104(a)(1).
 * @example
 * ```ts
 * import { vocContent } from '@scantling/finishing';
 * // A litre with 400 g of volatiles, 300 g of them water: 100 g in the 700 mL that are not water
 * vocContent({ volatilesG: 400, waterG: 300, exemptG: 0, volumeMl: 1000, waterMl: 300, exemptMl: 0 }).vocGPerL // => 142.857
 * ```
 */
export function vocContent(input: VocContentInput): VocContent {
  requireInputs('vocContent', input, { ...limits, volumeMl: { min: 1, max: 1_000_000 } });
  const { volatilesG, volumeMl } = input;
  const restG = volatilesG - input.waterG - input.exemptG;
  const takenMl = input.waterMl + input.exemptMl;
  requireThat('vocContent', restG >= 0, `waterG and exemptG within volatilesG, got ${-restG} g too much`);
  requireThat(
    'vocContent',
    takenMl <= 0.99 * volumeMl,
    `waterMl and exemptMl at most 99 % of volumeMl, got ${takenMl}`,
  );
  const vocGPerL = plusZero((1000 * restG) / (volumeMl - takenMl));
  return { vocGPerL, vocLbPerGal: vocGPerL / 119.82642731689663 };
}

const grams = () => ({ kind: 'number', unit: 'g', ...mass }) as const;
const millilitres = () => ({ kind: 'number', unit: 'mL', ...volume }) as const;

export const vocContentRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/voc-content',
  title: 'Content of volatile organic compounds',
  summary:
    'Grams of volatile organic compounds in a litre of finish as applied, water and exempt compounds left out.',
  basis: 'convention',
  inputs: {
    volatilesG: { ...grams(), label: 'All that evaporates' },
    waterG: { ...grams(), label: 'Water among it' },
    exemptG: { ...grams(), label: 'Exempt compounds among it' },
    volumeMl: {
      ...millilitres(),
      min: 1,
      label: 'Liquid as applied',
      help: 'With the thinner that was added.',
    },
    waterMl: { ...millilitres(), label: 'Volume of the water' },
    exemptMl: { ...millilitres(), label: 'Volume of exempt compounds' },
  },
  outputs: {
    vocGPerL: { label: 'Content', unit: 'g/L' },
    vocLbPerGal: { label: 'Content', unit: 'lb/gal' },
  },
  compute: vocContent,
  formula: String.raw`\mathit{VOC} = \frac{W_v - W_w - W_{ec}}{V - V_w - V_{ec}}`,
  symbols: {
    '\\mathit{VOC}': 'content',
    'W_v, W_w, W_{ec}': 'mass of volatiles, water and exempt compounds',
    'V, V_w, V_{ec}': 'volume of the coating, water and exempt compounds',
  },
  requires: [
    {
      says: 'water and exempt compounds within all that evaporates',
      holds: ({ volatilesG, waterG, exemptG }) => volatilesG - waterG - exemptG >= 0,
    },
    {
      says: 'water and exempt compounds at most 99 % of the volume',
      holds: ({ volumeMl, waterMl, exemptMl }) => waterMl + exemptMl <= 0.99 * volumeMl,
    },
  ],
  sources: [
    { source: cfr4059, at: '59.104(a)(1): the list of variables', confirmed: 'text' },
    { source: cfr4059, at: '59.104(a)(1): the equation', confirmed: 'memory' },
    { source: vocAnswer2004, at: 'the equation less water, with a worked answer', confirmed: 'text' },
    {
      source: cfr4059,
      at: '59.400(c)(5): not for coatings sold in containers of one liter or less',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { volatilesG: 400, waterG: 300, exemptG: 0, volumeMl: 1000, waterMl: 300, exemptMl: 0 },
      expect: { vocGPerL: '142.9', vocLbPerGal: '1.192' },
      from: { workedByHand: '1000 × (400 − 300) / (1000 − 300) = 142.9; 142.857 / 119.826 = 1.192' },
    },
    {
      // One US gallon at 8.52 lb, 20.8 % solids and 53.0 % water by weight, water at 8.33 lb/gal.
      given: {
        volatilesG: 0.792 * 8.52 * 453.59237,
        waterG: 0.53 * 8.52 * 453.59237,
        exemptG: 0,
        volumeMl: 3785.411784,
        waterMl: ((0.53 * 8.52) / 8.33) * 3785.411784,
        exemptMl: 0,
      },
      expect: { vocLbPerGal: '4.87' },
      from: { source: vocAnswer2004, at: 'answer: 4.87 lbs/gal less water', confirmed: 'text' },
    },
    {
      // A gallon of enamel at 2.5 lb/gal and a quarter of thinner at 6.8 lb/gal.
      given: {
        volatilesG: (2.5 + 6.8 / 4) * 453.59237,
        waterG: 0,
        exemptG: 0,
        volumeMl: 1.25 * 3785.411784,
        waterMl: 0,
        exemptMl: 0,
      },
      expect: {
        vocLbPerGal: '3.36',
        vocGPerL: { printed: '3.36', unit: 'lb/gal', times: 119.82642731689663 },
      },
      from: {
        source: organicFinishingGuidebook2013,
        at: 'Appendix B, first problem: 4.2 lb in 1.25 gal',
        confirmed: 'text',
      },
    },
  ],
  laws: [
    {
      of: 'vocGPerL',
      by: { volatilesG: 'linear', waterG: 'decreasing', exemptG: 'decreasing', volumeMl: 'decreasing' },
    },
    { of: 'vocLbPerGal', by: { waterMl: 'increasing', exemptMl: 'increasing' } },
  ],
  cautions: [
    'Limits differ by place and product: the federal ones of the United States leave out containers of one litre or less, local ones may not.',
    thinWithin,
    solvents,
    productSheet,
  ],
}));
