import { defineRule, plusZero, type RuleExample, requireInputs } from '@scantling/rules';
import { eurocode5, lvlHandbook2025, nds2018 } from '@scantling/rules/sources';
import { forLastingLoads, notStructuralDesign } from '../cautions.ts';

const limits = { diameterMm: { min: 0, max: 100 } } as const;

export interface HoleMarginsInput {
  /** Diameter of the bolt or peg, mm, 0 to 100. */
  readonly diameterMm: number;
}

export interface HoleMargins {
  /** From the end that it is pushed towards, along the grain, mm. */
  readonly loadedEndMm: number;
  /** From an end that it is not pushed towards, along the grain, mm. */
  readonly plainEndMm: number;
  /** From the edge that it is pushed towards, across the grain, mm. */
  readonly loadedEdgeMm: number;
  /** From an edge that it is not pushed towards, across the grain, mm. */
  readonly plainEdgeMm: number;
  /** From one to the next along the grain, mm. */
  readonly alongMm: number;
  /** From one to the next across the grain, mm. */
  readonly acrossMm: number;
}

/**
 * How far holes stay from the ends and edges of a board and from each other, as a design code for timber asks it of
 * bolts. Guidance for a peg that is pushed hard: the wood shears out or splits where the end or edge is too near.
 *
 * @returns Least distances, mm, all to the centre of the hole.
 * @throws RangeError where the diameter is outside its limits.
 * Source: Eurocode 5 (EN 1995-1-1), Table 8.4, at the angle that asks for the most.
 * @example
 * ```ts
 * import { holeMargins } from '@scantling/grids';
 * const { loadedEndMm, loadedEdgeMm, plainEdgeMm } = holeMargins({ diameterMm: 20 });
 * [loadedEndMm, loadedEdgeMm, plainEdgeMm] // => [140, 80, 60]
 * ```
 */
export function holeMargins(input: HoleMarginsInput): HoleMargins {
  requireInputs('holeMargins', input, limits);
  const diameterMm = plusZero(input.diameterMm);
  return {
    loadedEndMm: Math.max(7 * diameterMm, 80),
    plainEndMm: 4 * diameterMm,
    loadedEdgeMm: 4 * diameterMm,
    plainEdgeMm: 3 * diameterMm,
    alongMm: 5 * diameterMm,
    acrossMm: 4 * diameterMm,
  };
}

type Figures = readonly [string, string, string, string, string, string];

/** The table worked out for a bolt: end, end, edge, edge, along, across. */
function row(diameterMm: number, figures: Figures): RuleExample<HoleMarginsInput, HoleMargins> {
  const [loadedEndMm, plainEndMm, loadedEdgeMm, plainEdgeMm, alongMm, acrossMm] = figures;
  return {
    given: { diameterMm },
    expect: { loadedEndMm, plainEndMm, loadedEdgeMm, plainEdgeMm, alongMm, acrossMm },
    from: {
      source: eurocode5,
      at: `Table 8.4, for a bolt of ${diameterMm} mm`,
      confirmed: 'memory',
    },
  };
}

export const holeMarginsRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/hole-margins',
  title: 'Holes from ends, edges and each other, as for bolts',
  summary:
    'Least distances of a hole from the ends and edges of a board and from the next hole, as a design code for timber asks it of bolts.',
  basis: 'convention',
  inputs: {
    diameterMm: { kind: 'number', label: 'Diameter of bolt or peg', unit: 'mm', ...limits.diameterMm },
  },
  outputs: {
    loadedEndMm: { label: 'From a loaded end', unit: 'mm', help: 'That the bolt or peg is pushed towards.' },
    plainEndMm: { label: 'From an unloaded end', unit: 'mm' },
    loadedEdgeMm: {
      label: 'From a loaded edge',
      unit: 'mm',
      help: 'That the bolt or peg is pushed towards.',
    },
    plainEdgeMm: { label: 'From an unloaded edge', unit: 'mm' },
    alongMm: { label: 'Apart along the grain', unit: 'mm' },
    acrossMm: { label: 'Apart across the grain', unit: 'mm' },
  },
  compute: holeMargins,
  formula: String.raw`\begin{aligned}
a_{3,t} &= \max(7d,\ 80\ \mathrm{mm}), & a_{3,c} &= 4d, & a_1 &= 5d \\
a_{4,t} &= 4d, & a_{4,c} &= 3d, & a_2 &= 4d
\end{aligned}`,
  symbols: {
    d: 'diameter of bolt or peg',
    'a_{3,t}, a_{3,c}': 'from a loaded and an unloaded end',
    'a_{4,t}, a_{4,c}': 'from a loaded and an unloaded edge',
    'a_1, a_2': 'apart along and across the grain',
  },
  valid: { diameterMm: [8, 24] },
  sources: [
    {
      source: eurocode5,
      at: 'Table 8.4 for bolts',
      confirmed: 'memory',
      erratum:
        'Table 8.4 asks for 4d to 5d along the grain and 2d to 4d from a loaded edge, by the angle of the load (memory); here the larger. ' +
        'The American NDS asks for less at hardwood ends, 5D, and at unloaded edges, 1.5D (memory).',
    },
    {
      source: lvlHandbook2025,
      at: 'Table 5.3 (p. 150 of the file), bolts in laminated veneer lumber: 4d from an unloaded end, 3d from an unloaded edge, up to 4d from a loaded edge, 4d apart across the grain; at loaded ends it asks for more, 105 mm',
      confirmed: 'text',
    },
  ],
  examples: [
    row(20, ['140', '80', '80', '60', '100', '80']),
    row(8, ['80', '32', '32', '24', '40', '32']),
    row(12, ['84', '48', '48', '36', '60', '48']),
    row(16, ['112', '64', '64', '48', '80', '64']),
    row(24, ['168', '96', '96', '72', '120', '96']),
  ],
  laws: [
    { of: 'loadedEndMm', by: { diameterMm: 'increasing' } },
    { of: 'plainEndMm', by: { diameterMm: 'proportional' } },
    { of: 'loadedEdgeMm', by: { diameterMm: 'proportional' } },
    { of: 'plainEdgeMm', by: { diameterMm: 'proportional' } },
    { of: 'alongMm', by: { diameterMm: 'proportional' } },
    { of: 'acrossMm', by: { diameterMm: 'proportional' } },
  ],
  peers: [
    {
      name: 'the end distance of the NDS for bolts pulled towards a softwood end, 7D',
      of: 'loadedEndMm',
      compute: ({ diameterMm }) => 7 * diameterMm,
      relative: 1e-12,
      over: { diameterMm: [80 / 7, 25.4] },
      source: { source: nds2018, at: 'Table 12.5.1A, full design value', confirmed: 'memory' },
    },
  ],
  cautions: [notStructuralDesign, forLastingLoads],
}));
