import { defineRule, requireInputs } from '@scantling/rules';
import { astmD523Page } from '@scantling/rules/sources';

const limits = { at60Gu: { min: 0, max: 200 } } as const;

export interface GlossGeometryInput {
  /** What a gloss meter reads at 60°, gloss units, 0 to 200. */
  readonly at60Gu: number;
}

export interface GlossGeometry {
  /** The angle from upright at which such finishes are told apart best, °: 20, 60 or 85. */
  readonly geometryDeg: number;
}

/**
 * At what angle to read the gloss of a finish, from its reading at 60°.
 *
 * @returns The angle, °.
 * @throws RangeError where the reading is outside its limits.
 * Source: ASTM D523, scope, as a page repeats it.
 * @example
 * ```ts
 * import { glossGeometry } from '@scantling/finishing';
 * glossGeometry({ at60Gu: 30 }) // => { geometryDeg: 60 }
 * ```
 */
export function glossGeometry(input: GlossGeometryInput): GlossGeometry {
  requireInputs('glossGeometry', input, limits);
  return { geometryDeg: input.at60Gu > 70 ? 20 : input.at60Gu < 10 ? 85 : 60 };
}

export const glossGeometryRule = /* @__PURE__ */ defineRule(() => {
  const seen = (at: string) => ({
    source: astmD523Page,
    at,
    confirmed: 'text' as const,
    tier: 'reprint' as const,
  });
  return {
    id: 'finishing/gloss-geometry',
    title: 'At what angle to read gloss',
    summary: 'The angle at which a gloss meter tells finishes apart best, from what it reads at 60°.',
    basis: 'convention',
    inputs: {
      at60Gu: {
        kind: 'number',
        label: 'Gloss at 60°',
        unit: 'GU',
        ...limits.at60Gu,
        help: 'Gloss units; polished black glass of the standard reads 100.',
      },
    },
    outputs: { geometryDeg: { label: 'Read at', unit: '°', help: 'From upright.' } },
    compute: glossGeometry,
    formula: String.raw`\theta = \begin{cases} 20 & G_{60} > 70 \\ 60 & 10 \le G_{60} \le 70 \\ 85 & G_{60} < 10 \end{cases}`,
    symbols: {
      '\\theta': 'angle to read at, in degrees',
      'G_{60}': 'gloss at 60°',
    },
    inSymbols: (input, output) => ({ '\\theta': output.geometryDeg, 'G_{60}': input.at60Gu }),
    sources: [seen('what each geometry is used for')],
    examples: [
      { given: { at60Gu: 80 }, expect: { geometryDeg: '20' }, from: seen('20° geometry: above 70') },
      { given: { at60Gu: 5 }, expect: { geometryDeg: '85' }, from: seen('85° geometry: below 10') },
      { given: { at60Gu: 40 }, expect: { geometryDeg: '60' }, from: seen('60° geometry: most samples') },
    ],
    laws: [{ of: 'geometryDeg', by: { at60Gu: 'decreasing' } }],
  };
});
