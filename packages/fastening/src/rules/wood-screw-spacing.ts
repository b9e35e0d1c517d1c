import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { buildingDesignHandbook, nds2018 } from '@scantling/rules/sources';
import { notStructuralDesign, tryOnAnOffcut } from '../cautions.ts';
import { shankInput } from '../withdrawal-terms.ts';

const limits = { shankDiameterMm: { min: 0.5, max: 12 } } as const;

/** Pulled end, pushed end, along, across, between rows, in diameters. */
const diameters = {
  wood: { predrilled: [10, 5, 10, 5, 3], none: [15, 10, 15, 10, 5] },
  steel: { predrilled: [5, 3, 5, 2.5, 2.5], none: [10, 5, 10, 5, 3] },
} as const;

export interface WoodScrewSpacingInput {
  /** Diameter of the shank, mm, 0.5 to 12. */
  readonly shankDiameterMm: number;
  /** What lies under the heads. */
  readonly side: 'wood' | 'steel';
  /** Whether lead holes are bored. */
  readonly hole: 'predrilled' | 'none';
}

export interface WoodScrewSpacing {
  /** From an edge, mm. */
  readonly edgeMm: number;
  /** From an end that the screw is pulled towards along the grain, mm. */
  readonly pulledEndMm: number;
  /** From an end that the screw is pushed away from along the grain, mm. */
  readonly pushedEndMm: number;
  /** From one to the next in a row along the grain, mm. */
  readonly alongMm: number;
  /** From one to the next in a row across the grain, mm. */
  readonly acrossMm: number;
  /** From one row to the next, screws side by side, mm; staggered rows may stand 2.5 diameters apart. */
  readonly rowsMm: number;
}

/**
 * How far wood screws stay from edges, from ends and from each other so that the wood does not split, as the
 * commentary to the American design code recommends it. The code itself says only that the wood must not split.
 *
 * @returns Recommended least distances, mm.
 * @throws RangeError where the diameter is outside its limits, or side or hole are none of theirs.
 * Source: NDS commentary, Table C12.1.5.7; from memory.
 * @example
 * ```ts
 * import { woodScrewSpacing } from '@scantling/fastening';
 * // 5 mm screws through a steel bracket into bored wood
 * woodScrewSpacing({ shankDiameterMm: 5, side: 'steel', hole: 'predrilled' }) // => { edgeMm: 12.5, pulledEndMm: 25, pushedEndMm: 15, alongMm: 25, acrossMm: 12.5, rowsMm: 12.5 }
 * ```
 */
export function woodScrewSpacing(input: WoodScrewSpacingInput): WoodScrewSpacing {
  requireInputs('woodScrewSpacing', input, limits);
  const { shankDiameterMm, side, hole } = input;
  requireChoice('woodScrewSpacing', 'side', side, ['wood', 'steel']);
  requireChoice('woodScrewSpacing', 'hole', hole, ['predrilled', 'none']);
  const [pulledEnd, pushedEnd, along, across, rows] = diameters[side][hole];
  return {
    edgeMm: 2.5 * shankDiameterMm,
    pulledEndMm: pulledEnd * shankDiameterMm,
    pushedEndMm: pushedEnd * shankDiameterMm,
    alongMm: along * shankDiameterMm,
    acrossMm: across * shankDiameterMm,
    rowsMm: rows * shankDiameterMm,
  };
}

export const woodScrewSpacingRule = /* @__PURE__ */ defineRule<WoodScrewSpacingInput, WoodScrewSpacing>(
  () => ({
    id: 'fastening/wood-screw-spacing',
    title: 'Wood screws from ends, edges and each other',
    summary:
      'Recommended distances of wood screws from edges, from ends and from each other so that the wood does not split, under wood or under steel, with lead holes or without.',
    basis: 'convention',
    inputs: {
      shankDiameterMm: shankInput(limits.shankDiameterMm),
      side: {
        kind: 'choice',
        label: 'Under the heads',
        options: { wood: 'Wood', steel: 'Steel: a bracket or a strip' },
      },
      hole: { kind: 'choice', label: 'Hole', options: { predrilled: 'Drilled first', none: 'None' } },
    },
    outputs: {
      edgeMm: { label: 'From an edge', unit: 'mm' },
      pulledEndMm: { label: 'From an end it is pulled towards', unit: 'mm', help: 'Along the grain.' },
      pushedEndMm: { label: 'From an end it is pushed from', unit: 'mm', help: 'Along the grain.' },
      alongMm: { label: 'Apart in a row along the grain', unit: 'mm' },
      acrossMm: { label: 'Apart in a row across the grain', unit: 'mm' },
      rowsMm: { label: 'Between rows', unit: 'mm', help: 'Screws side by side; 2.5 diameters if staggered.' },
    },
    compute: woodScrewSpacing,
    formula: String.raw`\begin{aligned}
e &= 2.5D, \qquad r = k_4 D \\
a_t &= k_1 D, \qquad a_c = k_2 D \\
s_1 &= k_1 D, \qquad s_2 = k_3 D
\end{aligned}`,
    symbols: {
      e: 'from an edge',
      'a_t, a_c': 'from an end it is pulled towards, and pushed from',
      's_1, s_2': 'apart in a row along and across the grain',
      r: 'between rows',
      D: 'shank diameter',
      k_1: 'under wood 15, drilled first 10; under steel 10, drilled first 5',
      k_2: 'under wood 10, drilled first 5; under steel 5, drilled first 3',
      k_3: 'under wood 10, drilled first 5; under steel 5, drilled first 2.5',
      k_4: 'under wood 5, drilled first 3; under steel 3, drilled first 2.5',
    },
    inSymbols: ({ shankDiameterMm, side, hole }, output) => {
      const [pulledEnd, pushedEnd, , across, rows] = diameters[side][hole];
      return {
        e: output.edgeMm,
        a_t: output.pulledEndMm,
        a_c: output.pushedEndMm,
        s_1: output.alongMm,
        s_2: output.acrossMm,
        r: output.rowsMm,
        D: shankDiameterMm,
        k_1: pulledEnd,
        k_2: pushedEnd,
        k_3: across,
        k_4: rows,
      };
    },
    sources: [
      {
        source: nds2018,
        at: 'commentary, Table C12.1.5.7, which is the nails’ Table C12.1.6.6 as well',
        confirmed: 'memory',
      },
      {
        source: buildingDesignHandbook,
        at: 'wood screws: distances are to prevent splitting; its Table 10.38 recommends some where the code has none',
        confirmed: 'text',
        tier: 'reprint',
      },
    ],
    examples: [
      {
        given: { shankDiameterMm: 5, side: 'steel', hole: 'predrilled' },
        expect: {
          edgeMm: '12.50',
          pulledEndMm: '25.00',
          pushedEndMm: '15.00',
          alongMm: '25.00',
          acrossMm: '12.50',
          rowsMm: '12.50',
        },
        from: { workedByHand: '2.5 × 5 = 12.50; 5 × 5 = 25.00; 3 × 5 = 15.00 mm' },
      },
      {
        given: { shankDiameterMm: 4, side: 'steel', hole: 'none' },
        expect: {
          edgeMm: '10.00',
          pulledEndMm: '40.00',
          pushedEndMm: '20.00',
          alongMm: '40.00',
          acrossMm: '20.00',
          rowsMm: '12.00',
        },
        from: { workedByHand: '2.5 × 4 = 10.00; 10 × 4 = 40.00; 5 × 4 = 20.00; 3 × 4 = 12.00 mm' },
      },
      {
        given: { shankDiameterMm: 4, side: 'wood', hole: 'predrilled' },
        expect: {
          edgeMm: '10.00',
          pulledEndMm: '40.00',
          pushedEndMm: '20.00',
          alongMm: '40.00',
          acrossMm: '20.00',
          rowsMm: '12.00',
        },
        from: { workedByHand: '2.5 × 4 = 10.00; 10 × 4 = 40.00; 5 × 4 = 20.00; 3 × 4 = 12.00 mm' },
      },
      {
        given: { shankDiameterMm: 4, side: 'wood', hole: 'none' },
        expect: {
          edgeMm: '10.00',
          pulledEndMm: '60.00',
          pushedEndMm: '40.00',
          alongMm: '60.00',
          acrossMm: '40.00',
          rowsMm: '20.00',
        },
        from: { workedByHand: '2.5 × 4 = 10.00; 15 × 4 = 60.00; 10 × 4 = 40.00; 5 × 4 = 20.00 mm' },
      },
    ],
    laws: [
      { of: 'edgeMm', by: { shankDiameterMm: 'proportional' } },
      { of: 'pulledEndMm', by: { shankDiameterMm: 'proportional' } },
      { of: 'pushedEndMm', by: { shankDiameterMm: 'proportional' } },
      { of: 'alongMm', by: { shankDiameterMm: 'proportional' } },
      { of: 'acrossMm', by: { shankDiameterMm: 'proportional' } },
      { of: 'rowsMm', by: { shankDiameterMm: 'proportional' } },
    ],
    cautions: [tryOnAnOffcut, notStructuralDesign],
  }),
);
