import { defineRule, requireInputs } from '@scantling/rules';
import { eurocode5, lvlHandbook2025, timberDesignToEurocode } from '@scantling/rules/sources';
import { makersDataFirst, notStructuralDesign } from '../cautions.ts';

const limits = { threadDiameterMm: { min: 0.5, max: 24 } } as const;

export interface PulledScrewSpacingInput {
  /** Outer diameter of the thread, mm, 0.5 to 24. */
  readonly threadDiameterMm: number;
}

export interface PulledScrewSpacing {
  /** From one to the next along the grain, mm. */
  readonly alongMm: number;
  /** From one to the next across the grain, mm. */
  readonly acrossMm: number;
  /** From the end of the board to the middle of the thread, mm. */
  readonly endMm: number;
  /** From the edge of the board to the middle of the thread, mm. */
  readonly edgeMm: number;
  /** Least thickness of the board, mm. */
  readonly leastThicknessMm: number;
}

/**
 * How far screws that are pulled along their axis stay from each other and from the ends and edges of a board, and how
 * thick the board has to be, as the European design code asks for it.
 *
 * @returns Least distances and thickness, mm.
 * @throws RangeError where the diameter is outside its limits.
 * Source: Eurocode 5 (EN 1995-1-1 with amendment A1), Table 8.6, as a handbook carries it.
 * @example
 * ```ts
 * import { pulledScrewSpacing } from '@scantling/fastening';
 * pulledScrewSpacing({ threadDiameterMm: 5 }) // => { alongMm: 35, acrossMm: 25, endMm: 50, edgeMm: 20, leastThicknessMm: 60 }
 * ```
 */
export function pulledScrewSpacing(input: PulledScrewSpacingInput): PulledScrewSpacing {
  requireInputs('pulledScrewSpacing', input, limits);
  const d = input.threadDiameterMm;
  return { alongMm: 7 * d, acrossMm: 5 * d, endMm: 10 * d, edgeMm: 4 * d, leastThicknessMm: 12 * d };
}

export const pulledScrewSpacingRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/pulled-screw-spacing',
  title: 'Pulled screws from ends, edges and each other',
  summary:
    'Least distances of screws that are pulled along their axis from each other and from the ends and edges of a board, as the European design code asks for them.',
  basis: 'convention',
  inputs: {
    threadDiameterMm: {
      kind: 'number',
      label: 'Thread diameter',
      unit: 'mm',
      ...limits.threadDiameterMm,
      help: 'Outer diameter of the thread.',
    },
  },
  outputs: {
    alongMm: { label: 'Apart along the grain', unit: 'mm' },
    acrossMm: { label: 'Apart across the grain', unit: 'mm' },
    endMm: { label: 'From an end', unit: 'mm', help: 'To the middle of the thread.' },
    edgeMm: { label: 'From an edge', unit: 'mm', help: 'To the middle of the thread.' },
    leastThicknessMm: { label: 'Least thickness of the board', unit: 'mm' },
  },
  compute: pulledScrewSpacing,
  formula: String.raw`\begin{aligned}
a_1 &= 7d, \qquad a_2 = 5d \\
a_{1,CG} &= 10d, \qquad a_{2,CG} = 4d \\
t &= 12d
\end{aligned}`,
  symbols: {
    'a_1, a_2': 'apart along and across the grain',
    'a_{1,CG}, a_{2,CG}': 'from an end and from an edge to the middle of the thread',
    t: 'least thickness of the board',
    d: 'outer diameter of the thread',
  },
  inSymbols: (input, output) => ({
    a_1: output.alongMm,
    a_2: output.acrossMm,
    'a_{1,CG}': output.endMm,
    'a_{2,CG}': output.edgeMm,
    t: output.leastThicknessMm,
    d: input.threadDiameterMm,
  }),
  sources: [
    {
      source: lvlHandbook2025,
      at: 'Table 5.1, axially loaded screws: 7d, 5d, 10d and 4d',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: timberDesignToEurocode,
      at: 'the draft of the amendment: thickness over 12d',
      confirmed: 'text',
      tier: 'reprint',
      erratum:
        'The draft had 5d along the grain and 5d from the end; the amended table, as the handbook carries it, has 7d and 10d. Here the larger.',
    },
    { source: eurocode5, at: 'A1:2008, Table 8.6 and 8.7.2(2)', confirmed: 'memory' },
  ],
  examples: [
    {
      given: { threadDiameterMm: 4.5 },
      expect: {
        alongMm: '31.50',
        acrossMm: '22.50',
        endMm: '45.00',
        edgeMm: '18.00',
        leastThicknessMm: '54.00',
      },
      from: {
        workedByHand:
          '7 × 4.5 = 31.50; 5 × 4.5 = 22.50; 10 × 4.5 = 45.00; 4 × 4.5 = 18.00; 12 × 4.5 = 54.00 mm',
      },
    },
  ],
  laws: [
    { of: 'alongMm', by: { threadDiameterMm: 'proportional' } },
    { of: 'acrossMm', by: { threadDiameterMm: 'proportional' } },
    { of: 'endMm', by: { threadDiameterMm: 'proportional' } },
    { of: 'edgeMm', by: { threadDiameterMm: 'proportional' } },
    { of: 'leastThicknessMm', by: { threadDiameterMm: 'proportional' } },
  ],
  cautions: [makersDataFirst, notStructuralDesign],
}));
