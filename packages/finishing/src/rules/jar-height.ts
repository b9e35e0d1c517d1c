import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { compatible, markedJar } from '../cautions.ts';

const limits = {
  volumeMl: { min: 0, max: 1_000_000 },
  innerDiameterMm: { min: 5, max: 2000 },
} as const;

export interface JarHeightInput {
  /** Volume poured in, mL, 0 to 1 000 000. */
  readonly volumeMl: number;
  /** Inner diameter of the jar, mm, 5 to 2000. */
  readonly innerDiameterMm: number;
}

export interface JarHeight {
  /** How high it stands above the flat bottom, mm. */
  readonly heightMm: number;
}

/**
 * How high a volume stands in a round jar with straight sides and a flat bottom.
 *
 * @returns The height, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: the volume of a cylinder. Marking a jar for parts is common practice, no source.
 * @example
 * ```ts
 * import { jarHeight } from '@scantling/finishing';
 * jarHeight({ volumeMl: 250, innerDiameterMm: 80 }).heightMm // => 49.736
 * ```
 */
export function jarHeight(input: JarHeightInput): JarHeight {
  requireInputs('jarHeight', input, limits);
  return { heightMm: plusZero((4000 * input.volumeMl) / (Math.PI * input.innerDiameterMm ** 2)) };
}

export const jarHeightRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/jar-height',
  title: 'Height of a volume in a jar',
  summary: 'How high a volume stands in a straight-sided round jar, so that a mark can be made to pour to.',
  basis: 'convention',
  inputs: {
    volumeMl: { kind: 'number', label: 'Volume', unit: 'mL', ...limits.volumeMl },
    innerDiameterMm: {
      kind: 'number',
      label: 'Inner diameter',
      unit: 'mm',
      ...limits.innerDiameterMm,
      help: 'Measured inside, where the sides are straight.',
    },
  },
  outputs: { heightMm: { label: 'Height', unit: 'mm', help: 'Above the flat bottom.' } },
  compute: jarHeight,
  formula: String.raw`h = \frac{4000 \, V}{\pi d^2}`,
  symbols: {
    h: 'height, mm',
    V: 'volume, mL, of 1000 mm³ each',
    d: 'inner diameter, mm',
  },
  inSymbols: (input, output) => ({ h: output.heightMm, V: input.volumeMl, d: input.innerDiameterMm }),
  sources: [],
  examples: [
    {
      given: { volumeMl: 250, innerDiameterMm: 80 },
      expect: { heightMm: '49.74' },
      from: { workedByHand: '250 mL are 250 000 mm³; 4 × 250000 / (3.14159 × 6400) = 49.74' },
    },
  ],
  laws: [{ of: 'heightMm', by: { volumeMl: 'proportional', innerDiameterMm: 'decreasing' } }],
  cautions: [markedJar, compatible],
}));
