import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import { notStructuralDesign } from '../cautions.ts';

const limits = { diameterMm: { min: 1, max: 40 } } as const;

/** Edge, end, apart along the grain, in diameters. */
const diameters = {
  withdrawal: [1.5, 4, 4],
  softwoodEnd: [1.5, 7, 4],
  hardwoodEnd: [1.5, 5, 4],
  plainEnd: [1.5, 4, 4],
  loadedEdge: [4, 4, 3],
  plainEdge: [1.5, 4, 3],
} as const;

export interface LagScrewSpacingInput {
  /** Diameter of the shank, mm, 1 to 40. */
  readonly diameterMm: number;
  /** Which way the screw is loaded; sideways loads for the full value of the code. */
  readonly load: keyof typeof diameters;
}

export interface LagScrewSpacing {
  /** From the edge, mm. */
  readonly edgeMm: number;
  /** From the end, mm. */
  readonly endMm: number;
  /** From one to the next in a row, mm. */
  readonly inRowMm: number;
}

/**
 * How far lag screws stay from the edge and the end of a board and from each other, as the American design code asks
 * for it: by the way they are loaded, and like bolts where they are loaded sideways. Edge distances are for screws no
 * longer in the wood than six diameters, or in a single row.
 *
 * @returns Least distances to the centre of the screw for the full load, mm.
 * @throws RangeError where the diameter is outside its limits or the load is none of the six.
 * Source: NDS, Tables 12.5.1A, B, C and E; from memory.
 * @example
 * ```ts
 * import { lagScrewSpacing } from '@scantling/fastening';
 * lagScrewSpacing({ diameterMm: 8, load: 'withdrawal' }) // => { edgeMm: 12, endMm: 32, inRowMm: 32 }
 * lagScrewSpacing({ diameterMm: 8, load: 'loadedEdge' }) // => { edgeMm: 32, endMm: 32, inRowMm: 24 }
 * ```
 */
export function lagScrewSpacing(input: LagScrewSpacingInput): LagScrewSpacing {
  requireInputs('lagScrewSpacing', input, limits);
  const { diameterMm, load } = input;
  requireChoice('lagScrewSpacing', 'load', load, Object.keys(diameters));
  const [edge, end, inRow] = diameters[load];
  return { edgeMm: edge * diameterMm, endMm: end * diameterMm, inRowMm: inRow * diameterMm };
}

export const lagScrewSpacingRule = /* @__PURE__ */ defineRule<LagScrewSpacingInput, LagScrewSpacing>(() => ({
  id: 'fastening/lag-screw-spacing',
  title: 'Lag screws from ends, edges and each other',
  summary:
    'Least distances of lag screws from the edge, from the end and from each other, by the way they are loaded, as the American design code asks for them.',
  basis: 'convention',
  inputs: {
    diameterMm: {
      kind: 'number',
      label: 'Diameter',
      unit: 'mm',
      ...limits.diameterMm,
      help: 'Of the shank.',
    },
    load: {
      kind: 'choice',
      label: 'Load',
      options: {
        withdrawal: 'Pulled out',
        softwoodEnd: 'Sideways, towards the end, softwood',
        hardwoodEnd: 'Sideways, towards the end, hardwood',
        plainEnd: 'Sideways, away from the end',
        loadedEdge: 'Sideways across the grain, towards the edge',
        plainEdge: 'Sideways across the grain, away from the edge',
      },
    },
  },
  outputs: {
    edgeMm: { label: 'From the edge', unit: 'mm' },
    endMm: { label: 'From the end', unit: 'mm' },
    inRowMm: { label: 'Apart in a row', unit: 'mm' },
  },
  compute: lagScrewSpacing,
  formula: String.raw`\begin{array}{lccc}
 & e = & a = & s = \\
\text{pulled out} & 1.5D & 4D & 4D \\
\text{towards the end, softwood} & 1.5D & 7D & 4D \\
\text{towards the end, hardwood} & 1.5D & 5D & 4D \\
\text{away from the end} & 1.5D & 4D & 4D \\
\text{across, towards the edge} & 4D & 4D & 3D \\
\text{across, away from the edge} & 1.5D & 4D & 3D
\end{array}`,
  symbols: { e: 'from the edge', a: 'from the end', s: 'apart in a row', D: 'shank diameter' },
  valid: { diameterMm: [6.35, 31.75] },
  sources: [
    {
      source: nds2018,
      at: 'Tables 12.5.1A, 12.5.1B, 12.5.1C and 12.5.1E',
      confirmed: 'memory',
      erratum:
        'Where rows stand side by side and the screw is longer in the wood than 6D, the edge distance is half the distance between rows if that is more than 1.5D. Half of an end distance is the least allowed, for half of the load. Across the grain the attached piece sets the distance in a row; 3D is its least.',
    },
  ],
  examples: [
    {
      given: { diameterMm: 8, load: 'withdrawal' },
      expect: { edgeMm: '12.00', endMm: '32.00', inRowMm: '32.00' },
      from: { workedByHand: '1.5 × 8 = 12.00; 4 × 8 = 32.00 mm' },
    },
    {
      given: { diameterMm: 12.7, load: 'softwoodEnd' },
      expect: { edgeMm: '19.05', endMm: '88.90', inRowMm: '50.80' },
      from: { workedByHand: '1.5 × 12.7 = 19.05; 7 × 12.7 = 88.90; 4 × 12.7 = 50.80 mm' },
    },
    {
      given: { diameterMm: 10, load: 'hardwoodEnd' },
      expect: { edgeMm: '15.00', endMm: '50.00', inRowMm: '40.00' },
      from: { workedByHand: '1.5 × 10 = 15.00; 5 × 10 = 50.00; 4 × 10 = 40.00 mm' },
    },
    {
      given: { diameterMm: 10, load: 'plainEnd' },
      expect: { edgeMm: '15.00', endMm: '40.00', inRowMm: '40.00' },
      from: { workedByHand: '1.5 × 10 = 15.00; 4 × 10 = 40.00 mm' },
    },
    {
      given: { diameterMm: 10, load: 'loadedEdge' },
      expect: { edgeMm: '40.00', endMm: '40.00', inRowMm: '30.00' },
      from: { workedByHand: '4 × 10 = 40.00; 3 × 10 = 30.00 mm' },
    },
    {
      given: { diameterMm: 10, load: 'plainEdge' },
      expect: { edgeMm: '15.00', endMm: '40.00', inRowMm: '30.00' },
      from: { workedByHand: '1.5 × 10 = 15.00; 4 × 10 = 40.00; 3 × 10 = 30.00 mm' },
    },
  ],
  laws: [
    { of: 'edgeMm', by: { diameterMm: 'proportional' } },
    { of: 'endMm', by: { diameterMm: 'proportional' } },
    { of: 'inRowMm', by: { diameterMm: 'proportional' } },
  ],
  cautions: [notStructuralDesign],
}));
