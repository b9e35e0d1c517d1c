import { defineRule, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { eurocode5, lvlHandbook2025 } from '@scantling/rules/sources';
import { makersDataFirst, notStructuralDesign } from '../cautions.ts';

const limits = {
  threadDiameterMm: { min: 0.5, max: 12 },
  densityKgPerM3: { min: 100, max: 1300 },
  loadToGrainDeg: { min: 0, max: 90 },
} as const;

export interface ScrewSpacingInput {
  /** Outer diameter of the thread, mm, 0.5 to 12. */
  readonly threadDiameterMm: number;
  /** Characteristic density of the wood, kg/m³, 100 to 1300; up to 500 where nothing is drilled. */
  readonly densityKgPerM3: number;
  /** Between the load and the grain, in degrees, 0 to 90. */
  readonly loadToGrainDeg: number;
  /** Whether a hole is drilled first. */
  readonly hole: 'predrilled' | 'none';
}

export interface ScrewSpacing {
  /** From one to the next along the grain, mm. */
  readonly alongMm: number;
  /** From one to the next across the grain, mm. */
  readonly acrossMm: number;
  /** From the end that it is pushed towards, mm. */
  readonly loadedEndMm: number;
  /** From an end that it is not pushed towards, mm. */
  readonly plainEndMm: number;
  /** From the edge that it is pushed towards, mm. */
  readonly loadedEdgeMm: number;
  /** From an edge that it is not pushed towards, mm. */
  readonly plainEdgeMm: number;
}

const drilledWhereDense = ({ hole, densityKgPerM3 }: ScrewSpacingInput) =>
  hole === 'predrilled' || densityKgPerM3 <= 500;

/**
 * How far thin screws stay from each other and from the ends and edges of a board when they are pushed sideways, as
 * the European design code asks for it: like nails, by the density of the wood and by whether a hole is drilled.
 *
 * @returns Least distances to the centre of the screw, mm.
 * @throws RangeError where an input is outside its limits, or wood denser than 500 kg/m³ is not drilled.
 * Source: Eurocode 5 (EN 1995-1-1), Table 8.2, as a handbook carries it.
 * @example
 * ```ts
 * import { screwSpacing } from '@scantling/fastening';
 * // 5 mm screws in predrilled maple, pushed along the grain
 * screwSpacing({ threadDiameterMm: 5, densityKgPerM3: 630, loadToGrainDeg: 0, hole: 'predrilled' }) // => { alongMm: 25, acrossMm: 15, loadedEndMm: 60, plainEndMm: 35, loadedEdgeMm: 15, plainEdgeMm: 15 }
 * screwSpacing({ threadDiameterMm: 5, densityKgPerM3: 630, loadToGrainDeg: 0, hole: 'none' }) // throws screwSpacing requires densityKgPerM3 at most 500 where nothing is drilled, got 630
 * ```
 */
export function screwSpacing(input: ScrewSpacingInput): ScrewSpacing {
  requireInputs('screwSpacing', input, limits);
  const { threadDiameterMm: d, densityKgPerM3, loadToGrainDeg, hole } = input;
  requireChoice('screwSpacing', 'hole', hole, ['predrilled', 'none']);
  requireThat(
    'screwSpacing',
    drilledWhereDense(input),
    `densityKgPerM3 at most 500 where nothing is drilled, got ${densityKgPerM3}`,
  );
  const cos = Math.cos((loadToGrainDeg * Math.PI) / 180);
  const sin = Math.sin((loadToGrainDeg * Math.PI) / 180);
  const drilled = hole === 'predrilled';
  const light = densityKgPerM3 <= 420;
  const edge = drilled ? 3 : light ? 5 : 7;
  const end = drilled ? 7 : light ? 10 : 15;
  const along = drilled ? 4 + cos : light ? 5 + (d < 5 ? 5 : 7) * cos : 7 + 8 * cos;
  return {
    alongMm: along * d,
    acrossMm: (drilled ? 3 + sin : edge) * d,
    loadedEndMm: (end + 5 * cos) * d,
    plainEndMm: end * d,
    loadedEdgeMm: (edge + (d < 5 ? 2 : drilled ? 4 : 5) * sin) * d,
    plainEdgeMm: edge * d,
  };
}

export const screwSpacingRule = /* @__PURE__ */ defineRule<ScrewSpacingInput, ScrewSpacing>(() => ({
  id: 'fastening/screw-spacing',
  title: 'Thin screws from ends, edges and each other',
  summary:
    'Least distances of screws that are pushed sideways from each other and from the ends and edges of a board, as the European design code asks for them of nails and thin screws.',
  basis: 'convention',
  inputs: {
    threadDiameterMm: {
      kind: 'number',
      label: 'Thread diameter',
      unit: 'mm',
      ...limits.threadDiameterMm,
      help: 'Outer diameter of the thread.',
    },
    densityKgPerM3: {
      kind: 'number',
      label: 'Density',
      unit: 'kg/m³',
      ...limits.densityKgPerM3,
      help: 'Characteristic density: what 95 of 100 pieces exceed. Denser than 500 has to be drilled.',
    },
    loadToGrainDeg: {
      kind: 'number',
      label: 'Angle of the force to the grain',
      unit: '°',
      ...limits.loadToGrainDeg,
      help: '0° along the grain, 90° across it.',
    },
    hole: {
      kind: 'choice',
      label: 'Hole',
      options: { predrilled: 'Drilled first', none: 'None' },
    },
  },
  outputs: {
    alongMm: { label: 'Apart along the grain', unit: 'mm' },
    acrossMm: { label: 'Apart across the grain', unit: 'mm' },
    loadedEndMm: { label: 'From a loaded end', unit: 'mm', help: 'That the screw is pushed towards.' },
    plainEndMm: { label: 'From an unloaded end', unit: 'mm' },
    loadedEdgeMm: { label: 'From a loaded edge', unit: 'mm', help: 'That the screw is pushed towards.' },
    plainEdgeMm: { label: 'From an unloaded edge', unit: 'mm' },
  },
  compute: screwSpacing,
  formula: String.raw`\begin{aligned}
a_1 &= (k_1 + m_1 c)\,d, \qquad a_2 = (k_2 + m_2 s)\,d \\
a_{3,t} &= (k_3 + 5c)\,d, \qquad a_{3,c} = k_3 d \\
a_{4,t} &= (k_2 + m_4 s)\,d, \qquad a_{4,c} = k_2 d \\
c &= \cos\alpha, \qquad s = \sin\alpha
\end{aligned}`,
  symbols: {
    'a_1, a_2': 'apart along and across the grain',
    'a_{3,t}, a_{3,c}': 'from a loaded and an unloaded end',
    'a_{4,t}, a_{4,c}': 'from a loaded and an unloaded edge',
    d: 'diameter',
    '\\alpha': 'angle between load and grain',
    'c, s': 'its cosine and sine',
    k_1: '4 drilled first; else 5 up to 420 kg/m³, 7 up to 500',
    m_1: '1 drilled first; else up to 420 kg/m³ 5, or 7 where d is 5 mm and more, and 8 up to 500',
    k_2: '3 drilled first; else 5 up to 420 kg/m³, 7 up to 500',
    m_2: '1 drilled first, else 0',
    k_3: '7 drilled first; else 10 up to 420 kg/m³, 15 up to 500',
    m_4: '2; where d is 5 mm and more 4 drilled first, else 5',
  },
  inSymbols: ({ threadDiameterMm, densityKgPerM3, loadToGrainDeg, hole }, output) => {
    const drilled = hole === 'predrilled';
    const light = densityKgPerM3 <= 420;
    const thin = threadDiameterMm < 5;
    return {
      a_1: output.alongMm,
      a_2: output.acrossMm,
      'a_{3,t}': output.loadedEndMm,
      'a_{3,c}': output.plainEndMm,
      'a_{4,t}': output.loadedEdgeMm,
      'a_{4,c}': output.plainEdgeMm,
      d: threadDiameterMm,
      '\\alpha': loadToGrainDeg,
      c: Math.cos((loadToGrainDeg * Math.PI) / 180),
      s: Math.sin((loadToGrainDeg * Math.PI) / 180),
      k_1: drilled ? 4 : light ? 5 : 7,
      m_1: drilled ? 1 : light ? (thin ? 5 : 7) : 8,
      k_2: drilled ? 3 : light ? 5 : 7,
      m_2: drilled ? 1 : 0,
      k_3: drilled ? 7 : light ? 10 : 15,
      m_4: thin ? 2 : drilled ? 4 : 5,
    };
  },
  valid: { threadDiameterMm: [1.5, 9] },
  requires: [{ says: 'wood denser than 500 kg/m³ is drilled', holds: drilledWhereDense }],
  sources: [
    {
      source: lvlHandbook2025,
      at: 'Table 5.1: the formulas of all three columns, and the code’s limit of 6 mm effective diameter, 9 mm over the thread',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: eurocode5,
      at: 'Table 8.2: that the columns stand for 420 and 500 kg/m³; 8.3.1.4: under a steel plate 0.7 of a₁ and a₂ is enough; 8.7.1: thicker screws are spaced like bolts',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { threadDiameterMm: 5, densityKgPerM3: 630, loadToGrainDeg: 0, hole: 'predrilled' },
      expect: {
        alongMm: '25.00',
        acrossMm: '15.00',
        loadedEndMm: '60.00',
        plainEndMm: '35.00',
        loadedEdgeMm: '15.00',
        plainEdgeMm: '15.00',
      },
      from: {
        workedByHand:
          'cos 0° = 1, sin 0° = 0: (4 + 1) × 5 = 25.00; 3 × 5 = 15.00; (7 + 5) × 5 = 60.00; 7 × 5 = 35.00; 3 × 5 = 15.00 mm',
      },
    },
    {
      given: { threadDiameterMm: 4, densityKgPerM3: 400, loadToGrainDeg: 90, hole: 'none' },
      expect: {
        alongMm: '20.00',
        acrossMm: '20.00',
        loadedEndMm: '40.00',
        plainEndMm: '40.00',
        loadedEdgeMm: '28.00',
        plainEdgeMm: '20.00',
      },
      from: {
        workedByHand: 'cos 90° = 0, sin 90° = 1: 5 × 4 = 20.00; 10 × 4 = 40.00; (5 + 2) × 4 = 28.00 mm',
      },
    },
    {
      given: { threadDiameterMm: 6, densityKgPerM3: 460, loadToGrainDeg: 60, hole: 'none' },
      expect: {
        alongMm: '66.00',
        acrossMm: '42.00',
        loadedEndMm: '105.00',
        plainEndMm: '90.00',
        loadedEdgeMm: '67.98',
        plainEdgeMm: '42.00',
      },
      from: {
        workedByHand:
          'cos 60° = 0.5, sin 60° = 0.86603: (7 + 8 × 0.5) × 6 = 66.00; 7 × 6 = 42.00; (15 + 5 × 0.5) × 6 = 105.00; 15 × 6 = 90.00; (7 + 5 × 0.86603) × 6 = 67.98 mm',
      },
    },
    {
      given: { threadDiameterMm: 6, densityKgPerM3: 350, loadToGrainDeg: 0, hole: 'none' },
      expect: { alongMm: '72.00', loadedEndMm: '90.00' },
      from: { workedByHand: '(5 + 7) × 6 = 72.00; (10 + 5) × 6 = 90.00 mm' },
    },
    {
      given: { threadDiameterMm: 5, densityKgPerM3: 420, loadToGrainDeg: 0, hole: 'none' },
      expect: { alongMm: '60.00', acrossMm: '25.00', plainEndMm: '50.00' },
      from: {
        workedByHand:
          '420 is still light, 5 mm no longer thin: (5 + 7) × 5 = 60.00; 5 × 5 = 25.00; 10 × 5 = 50.00 mm',
      },
    },
    {
      given: { threadDiameterMm: 5, densityKgPerM3: 421, loadToGrainDeg: 90, hole: 'none' },
      expect: { alongMm: '35.00', plainEndMm: '75.00', loadedEdgeMm: '60.00' },
      from: { workedByHand: '421 is dense: 7 × 5 = 35.00; 15 × 5 = 75.00; (7 + 5) × 5 = 60.00 mm' },
    },
    {
      given: { threadDiameterMm: 5, densityKgPerM3: 630, loadToGrainDeg: 90, hole: 'predrilled' },
      expect: { acrossMm: '20.00', loadedEdgeMm: '35.00' },
      from: { workedByHand: '(3 + 1) × 5 = 20.00; (3 + 4) × 5 = 35.00 mm' },
    },
    {
      given: { threadDiameterMm: 4.9, densityKgPerM3: 400, loadToGrainDeg: 0, hole: 'none' },
      expect: { alongMm: '49.00' },
      from: { workedByHand: 'thinner than 5 mm: (5 + 5) × 4.9 = 49.00 mm' },
    },
    {
      given: { threadDiameterMm: 5.2, densityKgPerM3: 400, loadToGrainDeg: 0, hole: 'none' },
      expect: { alongMm: '62.40' },
      from: { workedByHand: '(5 + 7) × 5.2 = 62.40 mm' },
    },
  ],
  laws: [
    {
      of: 'alongMm',
      by: { threadDiameterMm: 'increasing', loadToGrainDeg: 'decreasing', densityKgPerM3: 'increasing' },
    },
    {
      of: 'acrossMm',
      by: { threadDiameterMm: 'proportional', loadToGrainDeg: 'increasing', densityKgPerM3: 'increasing' },
    },
    {
      of: 'loadedEndMm',
      by: { threadDiameterMm: 'proportional', loadToGrainDeg: 'decreasing', densityKgPerM3: 'increasing' },
    },
    { of: 'plainEndMm', by: { threadDiameterMm: 'proportional', densityKgPerM3: 'increasing' } },
    {
      of: 'loadedEdgeMm',
      by: { threadDiameterMm: 'increasing', loadToGrainDeg: 'increasing', densityKgPerM3: 'increasing' },
    },
    { of: 'plainEdgeMm', by: { threadDiameterMm: 'proportional', densityKgPerM3: 'increasing' } },
  ],
  cautions: [makersDataFirst, notStructuralDesign],
}));
