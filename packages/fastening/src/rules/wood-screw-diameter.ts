import { defineRule, requireInputs } from '@scantling/rules';
import { asmeB1861, gnuUnits, woodScrewsChapter } from '@scantling/rules/sources';
import { mmFromGauge } from '../screw.ts';

const limits = { gauge: { min: 0, max: 30, integer: true } } as const;

export interface WoodScrewDiameterInput {
  /** Number of the screw gauge, whole, 0 to 30. */
  readonly gauge: number;
}

export interface WoodScrewDiameter {
  /** Basic diameter of the body, mm. */
  readonly diameterMm: number;
}

/**
 * Diameter of a wood screw by its gauge. Machine screws below 1/4 in have the same.
 *
 * @returns The basic diameter in mm; a body may be 0.1 mm thicker.
 * @throws RangeError where the gauge is not a whole number within its limits.
 * Source: ASME B18.6.1, for gauges 0 to 24.
 * @example
 * ```ts
 * import { woodScrewDiameter } from '@scantling/fastening';
 * woodScrewDiameter({ gauge: 8 }).diameterMm // => 4.1656
 * ```
 */
export function woodScrewDiameter(input: WoodScrewDiameterInput): WoodScrewDiameter {
  requireInputs('woodScrewDiameter', input, limits);
  return { diameterMm: mmFromGauge(input.gauge) };
}

/** A row of the table of the standard. */
const row = (gauge: number, printed: string) => ({
  given: { gauge },
  expect: { diameterMm: { printed, unit: 'in', times: 25.4 } },
  from: {
    source: asmeB1861,
    at: `basic diameter of gauge ${gauge}`,
    confirmed: 'text' as const,
    tier: 'reprint' as const,
  },
});

export const woodScrewDiameterRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/wood-screw-diameter',
  title: 'Diameter of a wood screw by its gauge',
  summary:
    'How thick a wood screw is that is sold by a number: each number is 13 thousandths of an inch more.',
  basis: 'exact',
  inputs: {
    gauge: { kind: 'number', label: 'Gauge', unit: '1', ...limits.gauge, help: 'The 8 of a No. 8 screw.' },
  },
  outputs: { diameterMm: { label: 'Diameter', unit: 'mm', help: 'Basic; a body may be 0.1 mm thicker.' } },
  compute: woodScrewDiameter,
  formula: String.raw`D = 0.060 + 0.013\,N`,
  symbols: {
    D: 'basic diameter, in',
    N: 'gauge',
  },
  inSymbols: (input, output) => ({ D: output.diameterMm / 25.4, N: input.gauge }),
  valid: { gauge: [0, 24] },
  sources: [
    { source: asmeB1861, at: 'basic diameters of gauges 0 to 24', confirmed: 'text', tier: 'reprint' },
    { source: gnuUnits, at: 'screw gauge: D = 0.06 in + 0.013 in × N', confirmed: 'text' },
    {
      source: woodScrewsChapter,
      at: 'the British gauge: 0.066 in for No. 1 and 0.014 in for each more',
      confirmed: 'text',
      erratum:
        'The British gauge is another series: the same at No. 8, 0.004 in thinner at No. 4 and 0.006 in thicker at No. 14.',
    },
  ],
  examples: [
    row(0, '0.060'),
    row(4, '0.112'),
    row(8, '0.164'),
    row(14, '0.242'),
    row(24, '0.372'),
    {
      given: { gauge: 8 },
      expect: { diameterMm: { printed: '0.164', unit: 'in', times: 25.4 } },
      from: { source: woodScrewsChapter, at: 'a No. 8 screw', confirmed: 'text' },
    },
  ],
  laws: [
    { of: 'diameterMm', by: { gauge: 'linear' } },
    { of: 'diameterMm', by: { gauge: 'increasing' } },
  ],
  peers: [
    {
      name: 'the British screw gauge',
      of: 'diameterMm',
      compute: ({ gauge }) => (0.066 + 0.014 * (gauge - 1)) * 25.4,
      relative: 0.04,
      over: { gauge: [4, 14] },
      source: { source: woodScrewsChapter, at: 'calculation of the shank', confirmed: 'text' },
    },
  ],
}));
