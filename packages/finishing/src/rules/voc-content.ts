import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { cfr4059, organicFinishingGuidebook2013, vocAnswer2004 } from '@scantling/rules/sources';
import { productSheet, solvents, thinWithin } from '../cautions.ts';
import { LB_PER_GAL } from '../lb-per-gal.ts';

const mass = { min: 0, max: 1_000_000 } as const;
const limits = {
  volatilesG: mass,
  waterG: mass,
  exemptG: mass,
  volumeMl: { min: 1, max: 1_000_000 },
  waterDensityGPerL: { min: 950, max: 1000 },
  exemptDensityGPerL: { min: 500, max: 2000 },
} as const;

export interface VocContentInput {
  /** Everything that evaporates, g, 0 to 1 000 000. */
  readonly volatilesG: number;
  /** Water among it, g. */
  readonly waterG: number;
  /** Compounds among it that the rule exempts, g. */
  readonly exemptG: number;
  /** The liquid as applied, thinner included, mL, 1 to 1 000 000. */
  readonly volumeMl: number;
  /** Density of the water, g/L, 950 to 1000: 998 at 20 °C. With the exempt compounds it may fill 99 % of the whole. */
  readonly waterDensityGPerL: number;
  /** Density of the exempt compounds, g/L, 500 to 2000; any of these where there are none. */
  readonly exemptDensityGPerL: number;
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
 * all, they are more than 99 % of the volume, or what else evaporates is heavier than 2000 g/L.
 * Source: 40 CFR 59.104(a)(1).
 * @example
 * ```ts
 * import { vocContent } from '@scantling/finishing';
 * // A litre with 400 g of volatiles, 300 g of them water: 100 g in the 700 mL that are not water
 * vocContent({ volatilesG: 400, waterG: 300, exemptG: 0, volumeMl: 1000, waterDensityGPerL: 1000, exemptDensityGPerL: 790 }).vocGPerL // => 142.857
 * ```
 */
export function vocContent(input: VocContentInput): VocContent {
  requireInputs('vocContent', input, limits);
  const { restG, takenMl, restMl } = divide(input);
  requireThat(
    'vocContent',
    takenMl <= 0.99 * input.volumeMl,
    `waterG and exemptG to fill at most 99 % of volumeMl, got ${takenMl} mL`,
  );
  requireThat(
    'vocContent',
    restG >= 0 && restG <= 2 * restMl,
    `volatilesG above waterG and exemptG by at most 2 g/mL, got ${restG} g in ${restMl} mL`,
  );
  const vocGPerL = plusZero((1000 * restG) / restMl);
  return { vocGPerL, vocLbPerGal: vocGPerL / LB_PER_GAL };
}

/** What evaporates besides water and exempt compounds, what these fill, and the volume without them. */
function divide(input: VocContentInput) {
  const restG = input.volatilesG - input.waterG - input.exemptG;
  const takenMl =
    (1000 * input.waterG) / input.waterDensityGPerL + (1000 * input.exemptG) / input.exemptDensityGPerL;
  return { restG, takenMl, restMl: input.volumeMl - takenMl };
}

export const vocContentRule = /* @__PURE__ */ defineRule(() => {
  const grams = { kind: 'number', unit: 'g', ...mass } as const;
  return {
    id: 'finishing/voc-content',
    title: 'Content of volatile organic compounds',
    summary:
      'Grams of volatile organic compounds in a litre of finish as applied, water and exempt compounds left out.',
    basis: 'convention',
    inputs: {
      volatilesG: { ...grams, label: 'All that evaporates' },
      waterG: { ...grams, label: 'Water among it' },
      exemptG: { ...grams, label: 'Exempt compounds among it' },
      volumeMl: {
        kind: 'number',
        unit: 'mL',
        ...limits.volumeMl,
        label: 'Liquid as applied',
        help: 'With the thinner that was added.',
      },
      waterDensityGPerL: {
        kind: 'number',
        unit: 'g/L',
        ...limits.waterDensityGPerL,
        label: 'Density of the water',
        help: '998 at 20 °C.',
      },
      exemptDensityGPerL: {
        kind: 'number',
        unit: 'g/L',
        ...limits.exemptDensityGPerL,
        label: 'Density of exempt compounds',
        help: 'See their data sheets; acetone about 790, from memory. Where there are none it makes no difference.',
      },
    },
    outputs: {
      vocGPerL: { label: 'Content to the litre', unit: 'g/L' },
      vocLbPerGal: { label: 'Content to the US gallon', unit: 'lb/gal' },
    },
    compute: vocContent,
    formula: String.raw`\begin{aligned}
\mathit{VOC} &= \frac{W_v - W_w - W_{ec}}{V - V_w - V_{ec}} \\
V_w &= \frac{W_w}{\rho_w}, \qquad V_{ec} = \frac{W_{ec}}{\rho_{ec}}
\end{aligned}`,
    symbols: {
      '\\mathit{VOC}': 'content',
      'W_v, W_w, W_{ec}': 'mass of volatiles, water and exempt compounds',
      'V, V_w, V_{ec}': 'volume of the coating, water and exempt compounds, L',
      '\\rho_w, \\rho_{ec}': 'density of water and of the exempt compounds',
    },
    inSymbols: (input, output) => ({
      '\\mathit{VOC}': output.vocGPerL,
      W_v: input.volatilesG,
      W_w: input.waterG,
      'W_{ec}': input.exemptG,
      V: input.volumeMl / 1000,
      V_w: input.waterG / input.waterDensityGPerL,
      'V_{ec}': input.exemptG / input.exemptDensityGPerL,
      '\\rho_w': input.waterDensityGPerL,
      '\\rho_{ec}': input.exemptDensityGPerL,
    }),
    requires: [
      {
        says: 'water and exempt compounds within all that evaporates',
        holds: (input) => divide(input).restG >= 0,
      },
      {
        says: 'water and exempt compounds at most 99 % of the volume',
        holds: (input) => divide(input).takenMl <= 0.99 * input.volumeMl,
      },
      {
        says: 'what else evaporates at most 2 g to the mL that they leave',
        holds: (input) => divide(input).restG <= 2 * divide(input).restMl,
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
        given: {
          volatilesG: 400,
          waterG: 300,
          exemptG: 0,
          volumeMl: 1000,
          waterDensityGPerL: 1000,
          exemptDensityGPerL: 790,
        },
        expect: { vocGPerL: '142.9', vocLbPerGal: '1.192' },
        from: {
          workedByHand:
            '300 g of water are 300 mL; 1000 × (400 − 300) / (1000 − 300) = 142.9; 142.857 / 119.826 = 1.192',
        },
      },
      {
        given: {
          volatilesG: 600,
          waterG: 190,
          exemptG: 158,
          volumeMl: 1000,
          waterDensityGPerL: 950,
          exemptDensityGPerL: 790,
        },
        expect: { vocGPerL: '420.0' },
        from: {
          workedByHand:
            '1000 × 190 / 950 = 200 and 1000 × 158 / 790 = 200 mL; 600 − 190 − 158 = 252 g in 600 mL; 1000 × 252 / 600 = 420',
        },
      },
      {
        // One US gallon at 8.52 lb, 20.8 % solids and 53.0 % water by weight, water at 8.33 lb/gal.
        given: {
          volatilesG: 0.792 * 8.52 * 453.59237,
          waterG: 0.53 * 8.52 * 453.59237,
          exemptG: 0,
          volumeMl: 3785.411784,
          waterDensityGPerL: 8.33 * LB_PER_GAL,
          exemptDensityGPerL: 790,
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
          waterDensityGPerL: 998,
          exemptDensityGPerL: 790,
        },
        expect: {
          vocLbPerGal: '3.36',
          vocGPerL: { printed: '3.36', unit: 'lb/gal', times: LB_PER_GAL },
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
        by: { volatilesG: 'linear', volumeMl: 'decreasing' },
      },
      { of: 'vocLbPerGal', by: { waterDensityGPerL: 'decreasing', exemptDensityGPerL: 'decreasing' } },
    ],
    cautions: [
      'Limits differ by place and product: the federal ones of the United States leave out containers of one litre or less, local ones may not.',
      thinWithin,
      solvents,
      productSheet,
    ],
  };
});
