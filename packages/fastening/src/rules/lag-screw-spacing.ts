import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import { notStructuralDesign } from '../cautions.ts';
import { shankInput } from '../withdrawal-terms.ts';

const limits = { shankDiameterMm: { min: 1, max: 40 } } as const;

/** Edge, end, apart in a row, between rows, in diameters. */
const diameters = {
  withdrawal: [1.5, 4, 4, 4],
  softwoodEnd: [1.5, 7, 4, 1.5],
  hardwoodEnd: [1.5, 5, 4, 1.5],
  plainEnd: [1.5, 4, 4, 1.5],
  loadedEdge: [4, 4, 3, 5],
  plainEdge: [1.5, 4, 3, 5],
} as const;

export interface LagScrewSpacingInput {
  /** Diameter of the shank, mm, 1 to 40. */
  readonly shankDiameterMm: number;
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
  /** From one row to the next, mm; across the grain for screws of any length, shorter ones may stand closer. */
  readonly rowsMm: number;
}

/**
 * How far lag screws stay from the edge and the end of a board and from each other, as the American design code asks
 * for it: by the way they are loaded, and like bolts where they are loaded sideways. Edge distances are for screws no
 * longer in the wood than six diameters, or in a single row.
 *
 * @returns Least distances to the centre of the screw for the full load, mm.
 * @throws RangeError where the diameter is outside its limits or the load is none of the six.
 * Source: NDS 2018, Tables 12.5.1A to 12.5.1E.
 * @example
 * ```ts
 * import { lagScrewSpacing } from '@scantling/fastening';
 * lagScrewSpacing({ shankDiameterMm: 8, load: 'withdrawal' }) // => { edgeMm: 12, endMm: 32, inRowMm: 32, rowsMm: 32 }
 * lagScrewSpacing({ shankDiameterMm: 8, load: 'loadedEdge' }) // => { edgeMm: 32, endMm: 32, inRowMm: 24, rowsMm: 40 }
 * ```
 */
export function lagScrewSpacing(input: LagScrewSpacingInput): LagScrewSpacing {
  requireInputs('lagScrewSpacing', input, limits);
  const { shankDiameterMm, load } = input;
  requireChoice('lagScrewSpacing', 'load', load, Object.keys(diameters));
  const [edge, end, inRow, rows] = diameters[load];
  return {
    edgeMm: edge * shankDiameterMm,
    endMm: end * shankDiameterMm,
    inRowMm: inRow * shankDiameterMm,
    rowsMm: rows * shankDiameterMm,
  };
}

export const lagScrewSpacingRule = /* @__PURE__ */ defineRule<LagScrewSpacingInput, LagScrewSpacing>(() => ({
  id: 'fastening/lag-screw-spacing',
  title: 'Lag screws from ends, edges and each other',
  summary:
    'Least distances of lag screws from the edge, from the end and from each other, by the way they are loaded, as the American design code asks for them.',
  basis: 'convention',
  inputs: {
    shankDiameterMm: shankInput(limits.shankDiameterMm),
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
    rowsMm: {
      label: 'Between rows',
      unit: 'mm',
      help: 'Across the grain 2.5 diameters are enough for screws of up to two diameters in the wood.',
    },
  },
  compute: lagScrewSpacing,
  formula: String.raw`e = k_e D, \qquad a = k_a D, \qquad s = k_s D, \qquad r = k_r D`,
  symbols: {
    e: 'from the edge',
    a: 'from the end',
    s: 'apart in a row',
    r: 'between rows',
    D: 'shank diameter',
    k_e: '4 across the grain towards the edge, else 1.5',
    k_a: 'towards the end 7 in softwood and 5 in hardwood, else 4',
    k_s: '3 across the grain, else 4',
    k_r: '4 pulled out, 1.5 along the grain, 5 across it',
  },
  inSymbols: ({ shankDiameterMm, load }, output) => {
    const [edge, end, inRow, rows] = diameters[load];
    return {
      e: output.edgeMm,
      a: output.endMm,
      s: output.inRowMm,
      r: output.rowsMm,
      D: shankDiameterMm,
      k_e: edge,
      k_a: end,
      k_s: inRow,
      k_r: rows,
    };
  },
  valid: { shankDiameterMm: [6.35, 31.75] },
  sources: [
    {
      source: nds2018,
      at: 'Tables 12.5.1A to 12.5.1E, p. 90 and 91',
      confirmed: 'text',
      tier: 'reprint',
      erratum:
        'Where rows stand side by side and the screw is longer in the wood than 6D, the edge distance is half the distance between rows if that is more than 1.5D. Half of an end distance is the least allowed, for half of the load. Across the grain the attached piece sets the distance in a row; 3D is its least. Between rows across the grain it has 2.5D up to 2D in the wood, (5ℓ + 10D)/8 up to 6D, and 5D beyond: here 5D.',
    },
  ],
  examples: [
    {
      given: { shankDiameterMm: 8, load: 'withdrawal' },
      expect: { edgeMm: '12.00', endMm: '32.00', inRowMm: '32.00', rowsMm: '32.00' },
      from: { workedByHand: '1.5 × 8 = 12.00; 4 × 8 = 32.00 mm' },
    },
    {
      given: { shankDiameterMm: 12.7, load: 'softwoodEnd' },
      expect: { edgeMm: '19.05', endMm: '88.90', inRowMm: '50.80', rowsMm: '19.05' },
      from: { workedByHand: '1.5 × 12.7 = 19.05; 7 × 12.7 = 88.90; 4 × 12.7 = 50.80 mm' },
    },
    {
      given: { shankDiameterMm: 10, load: 'hardwoodEnd' },
      expect: { edgeMm: '15.00', endMm: '50.00', inRowMm: '40.00', rowsMm: '15.00' },
      from: { workedByHand: '1.5 × 10 = 15.00; 5 × 10 = 50.00; 4 × 10 = 40.00 mm' },
    },
    {
      given: { shankDiameterMm: 10, load: 'plainEnd' },
      expect: { edgeMm: '15.00', endMm: '40.00', inRowMm: '40.00', rowsMm: '15.00' },
      from: { workedByHand: '1.5 × 10 = 15.00; 4 × 10 = 40.00 mm' },
    },
    {
      given: { shankDiameterMm: 10, load: 'loadedEdge' },
      expect: { edgeMm: '40.00', endMm: '40.00', inRowMm: '30.00', rowsMm: '50.00' },
      from: { workedByHand: '4 × 10 = 40.00; 3 × 10 = 30.00; 5 × 10 = 50.00 mm' },
    },
    {
      given: { shankDiameterMm: 10, load: 'plainEdge' },
      expect: { edgeMm: '15.00', endMm: '40.00', inRowMm: '30.00', rowsMm: '50.00' },
      from: { workedByHand: '1.5 × 10 = 15.00; 4 × 10 = 40.00; 3 × 10 = 30.00; 5 × 10 = 50.00 mm' },
    },
  ],
  laws: [
    { of: 'edgeMm', by: { shankDiameterMm: 'proportional' } },
    { of: 'endMm', by: { shankDiameterMm: 'proportional' } },
    { of: 'inRowMm', by: { shankDiameterMm: 'proportional' } },
    { of: 'rowsMm', by: { shankDiameterMm: 'proportional' } },
  ],
  cautions: [notStructuralDesign],
}));
