import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { coverageAnswer2003 } from '@scantling/rules/sources';

const limits = {
  volumeMl: { min: 0, max: 1_000_000 },
  areaM2: { min: 0.001, max: 10_000 },
  lossPct: { min: 0, max: 95 },
} as const;

export interface LaidFilmInput {
  /** Liquid used, mL, 0 to 1 000 000. */
  readonly volumeMl: number;
  /** Area it went on in one coat, m², 0.001 to 10 000. */
  readonly areaM2: number;
  /** Share of the liquid that never reached the face, %, 0 to 95. */
  readonly lossPct: number;
}

export interface LaidFilm {
  /** Film laid, µm. */
  readonly wetFilmUm: number;
}

/**
 * How thick a coat went on, from what was used and the area: a millilitre on a square metre is a micrometre.
 *
 * @returns The wet film, µm.
 * @throws RangeError where an input is outside its limits.
 * Source: volume is area times thickness; stated so in a worked answer on coverage.
 * @example
 * ```ts
 * import { laidFilm } from '@scantling/finishing';
 * // 150 mL on 1.2 m², a fifth stays in the pad: 150 × 0.8 / 1.2
 * laidFilm({ volumeMl: 150, areaM2: 1.2, lossPct: 20 }) // => { wetFilmUm: 100 }
 * ```
 */
export function laidFilm(input: LaidFilmInput): LaidFilm {
  requireInputs('laidFilm', input, limits);
  return { wetFilmUm: plusZero((input.volumeMl * (100 - input.lossPct)) / 100 / input.areaM2) };
}

export const laidFilmRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/laid-film',
  title: 'Film from what was used',
  summary: 'How thick a coat went on wet, from the volume used, the area and what was lost on the way.',
  basis: 'derived',
  inputs: {
    volumeMl: { kind: 'number', label: 'Liquid used', unit: 'mL', ...limits.volumeMl },
    areaM2: { kind: 'number', label: 'Area', unit: 'm²', ...limits.areaM2 },
    lossPct: {
      kind: 'number',
      label: 'Lost',
      unit: '%',
      ...limits.lossPct,
      help: 'Share that stays in rags, pads and jars, is sprayed past or wiped off.',
    },
  },
  outputs: { wetFilmUm: { label: 'Wet film', unit: 'µm' } },
  compute: laidFilm,
  formula: String.raw`\mathit{WFT} = \frac{V (1 - \ell)}{A}`,
  symbols: {
    '\\mathit{WFT}': 'wet film thickness, µm',
    V: 'liquid used, mL',
    '\\ell': 'lost, as a fraction',
    A: 'area, m²',
  },
  inSymbols: (input, output) => ({
    '\\mathit{WFT}': output.wetFilmUm,
    V: input.volumeMl,
    '\\ell': input.lossPct / 100,
    A: input.areaM2,
  }),
  sources: [
    { source: coverageAnswer2003, at: 'a solid gallon covers 1604 ft² at 1.0 mil', confirmed: 'text' },
  ],
  examples: [
    {
      given: { volumeMl: 150, areaM2: 1.2, lossPct: 20 },
      expect: { wetFilmUm: '100.0' },
      from: { workedByHand: '150 × 0.8 / 1.2 = 100 µm' },
    },
    {
      given: { volumeMl: 3785.411784, areaM2: 1604 * 0.09290304, lossPct: 0 },
      expect: { wetFilmUm: { printed: '1.0', unit: 'mil', times: 25.4 } },
      from: { source: coverageAnswer2003, at: '1,604 ft² at a thickness of 1.0 mils', confirmed: 'text' },
    },
  ],
  laws: [{ of: 'wetFilmUm', by: { volumeMl: 'proportional', areaM2: 'decreasing', lossPct: 'linear' } }],
  cautions: ['A coat laid thicker than the product’s sheet allows runs, wrinkles or stays soft.'],
}));
