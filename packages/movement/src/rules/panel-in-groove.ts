import { defineRule, plusZero, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { panelAllowanceThread, woodHandbook2010 } from '@scantling/rules/sources';
import { boardsDiffer } from '../cautions.ts';

const moisture = { min: 0, max: 30 };
const limits = {
  openingMm: { min: 50, max: 10_000 },
  grooveDepthMm: { min: 0, max: 100 },
  coverMm: { min: 0, max: 100 },
  gapMm: { min: 0, max: 20 },
  // From 1/60 on a panel could dry from 30 % to less than half its width: held at an edge, a deeper groove would then
  // leave less to spare. Woods stay far below.
  coefficientPerPct: { min: 0, max: 0.01 },
  buildingMoisturePct: moisture,
  driestMoisturePct: moisture,
  wettestMoisturePct: moisture,
} as const;

/** Where a panel is held: pinned in the middle of its width, or at one edge; a loose one slides to an edge. */
export type HeldPanel = 'middle' | 'edge';

export interface PanelInGrooveInput {
  /** Opening between the mouths of the two grooves or rabbets, across the panel's grain, mm, 50 to 10 000. */
  readonly openingMm: number;
  /** Depth of each groove or rabbet, mm, 0 to 100. */
  readonly grooveDepthMm: number;
  /** Least that an edge of the panel stays in its groove, at the driest, mm, 0 to 100. */
  readonly coverMm: number;
  /** Least room between an edge of the panel and the bottom of its groove, at the wettest, mm, 0 to 20. */
  readonly gapMm: number;
  /** Dimensional change coefficient of the panel across its grain, per 1 % of moisture content, 0 to 0.01. */
  readonly coefficientPerPct: number;
  /** Moisture content of the panel when it is cut, % of ovendry mass, 0 to 30. */
  readonly buildingMoisturePct: number;
  /** Least moisture content of its life, % of ovendry mass, 0 to 30. */
  readonly driestMoisturePct: number;
  /** Greatest moisture content of its life, % of ovendry mass, 0 to 30. */
  readonly wettestMoisturePct: number;
  /** Whether it is pinned in the middle, or held at one edge (or loose). */
  readonly held: HeldPanel;
}

export interface PanelInGroove {
  /** Width to cut, mm: what is to spare goes to cover and gap alike. `null` where no width gives both. */
  readonly cutWidthMm: number | null;
  /** Gap at the bottom of the groove on building day, mm: at each edge, or all of it at the free edge. */
  readonly buildingDayGapMm: number | null;
  /** Least that a moving edge stays in its groove over the year, mm. */
  readonly leastCoverMm: number | null;
  /** Least gap left at a moving edge over the year, mm. */
  readonly leastGapMm: number | null;
  /** To spare beyond the cover and the gap asked for, mm; negative: each groove lacks about twice that in depth. */
  readonly marginMm: number;
}

/**
 * How wide to cut a solid panel for the grooves of a frame, for rabbets, or for a top between fixed cheeks: so that
 * it neither comes out of them when it is driest nor presses on their bottoms when it is wettest. The frame is taken
 * to keep its opening, which its rails span along their grain; building day counts as a part of the year.
 *
 * @returns Width, gaps, cover and what is to spare, mm; all but the last `null` where no width gives both.
 * @throws RangeError where an input is outside its limits, or the driest moisture content is above the wettest.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 13-2, claimed for 6 to 14 % moisture content; the rest is geometry.
 * @example
 * ```ts
 * import { panelInGroove } from '@scantling/movement';
 * // A flatsawn cherry panel for an opening of 300 mm, grooves 10 mm deep, pinned in the middle
 * const panel = { openingMm: 300, coverMm: 4, gapMm: 1, coefficientPerPct: 0.00248, held: 'middle' };
 * const year = { buildingMoisturePct: 8, driestMoisturePct: 6, wettestMoisturePct: 11 };
 * panelInGroove({ ...panel, ...year, grooveDepthMm: 10 }) // => { cutWidthMm: 312.612, buildingDayGapMm: 3.694, leastCoverMm: 5.531, leastGapMm: 2.531, marginMm: 1.531 }
 * panelInGroove({ ...panel, ...year, grooveDepthMm: 6 }).cutWidthMm // => null
 * panelInGroove({ ...panel, ...year, grooveDepthMm: 10, wettestMoisturePct: 5 }) // throws panelInGroove requires driestMoisturePct at most wettestMoisturePct, got 6 and 5
 * ```
 */
export function panelInGroove(input: PanelInGrooveInput): PanelInGroove {
  requireInputs('panelInGroove', input, limits);
  requireChoice('panelInGroove', 'held', input.held, ['middle', 'edge']);
  const { openingMm, grooveDepthMm, coverMm, gapMm, driestMoisturePct, wettestMoisturePct } = input;
  requireThat(
    'panelInGroove',
    driestMoisturePct <= wettestMoisturePct,
    `driestMoisturePct at most wettestMoisturePct, got ${driestMoisturePct} and ${wettestMoisturePct}`,
  );
  const { coefficientPerPct, buildingMoisturePct } = input;
  const leastPct = Math.min(driestMoisturePct, buildingMoisturePct);
  const mostPct = Math.max(wettestMoisturePct, buildingMoisturePct);
  const driest = 1 + coefficientPerPct * (leastPct - buildingMoisturePct);
  const wettest = 1 + coefficientPerPct * (mostPct - buildingMoisturePct);
  const [edges, heldMm] = input.held === 'middle' ? [2, 0] : [1, grooveDepthMm];
  const spareMm =
    (2 * grooveDepthMm - edges * gapMm) * driest -
    (heldMm + edges * coverMm) * wettest -
    openingMm * coefficientPerPct * (mostPct - leastPct);
  const marginMm = plusZero(spareMm / (edges * (driest + wettest)));
  const widthMm = (openingMm + heldMm + edges * (coverMm + marginMm)) / driest;
  // A margin of nought may come out a rounding error below it.
  const orNull = (mm: number) => (marginMm < -1e-9 ? null : plusZero(mm));
  return {
    cutWidthMm: orNull(widthMm),
    buildingDayGapMm: orNull((openingMm + 2 * grooveDepthMm - widthMm) / edges),
    leastCoverMm: orNull(coverMm + marginMm),
    leastGapMm: orNull(gapMm + marginMm),
    marginMm,
  };
}

/** What is to spare, from the widths on building day that would just give the cover, and just the gap. */
function byWidthsThatJustDo(input: PanelInGrooveInput): number {
  const { openingMm, grooveDepthMm, coverMm, gapMm, coefficientPerPct, buildingMoisturePct } = input;
  const dryingPct = Math.max(0, buildingMoisturePct - input.driestMoisturePct);
  const wettingPct = Math.max(0, input.wettestMoisturePct - buildingMoisturePct);
  const [shrunk, swollen] = [1 - coefficientPerPct * dryingPct, 1 + coefficientPerPct * wettingPct];
  const [edges, heldMm] = input.held === 'middle' ? [2, 0] : [1, grooveDepthMm];
  const narrowestMm = (openingMm + heldMm + edges * coverMm) / shrunk;
  const widestMm = (openingMm + 2 * grooveDepthMm - edges * gapMm) / swollen;
  return (widestMm - narrowestMm) / (edges / shrunk + edges / swollen);
}

const door = {
  openingMm: 300,
  grooveDepthMm: 10,
  coverMm: 4,
  gapMm: 1,
  coefficientPerPct: 0.00248,
  buildingMoisturePct: 8,
  driestMoisturePct: 6,
  wettestMoisturePct: 11,
  held: 'middle',
} as const;

export const panelInGrooveRule = /* @__PURE__ */ defineRule<PanelInGrooveInput, PanelInGroove>(() => ({
  id: 'movement/panel-in-groove',
  title: 'A panel in a groove or rabbet',
  summary:
    'How wide to cut a solid panel so that it never presses on the bottoms of its grooves and never comes out of them.',
  basis: 'derived',
  inputs: {
    openingMm: {
      kind: 'number',
      label: 'Opening between the mouths of the grooves',
      unit: 'mm',
      ...limits.openingMm,
    },
    grooveDepthMm: { kind: 'number', label: 'Depth of each groove', unit: 'mm', ...limits.grooveDepthMm },
    coverMm: { kind: 'number', label: 'Least cover, when driest', unit: 'mm', ...limits.coverMm },
    gapMm: { kind: 'number', label: 'Least gap, when wettest', unit: 'mm', ...limits.gapMm },
    coefficientPerPct: {
      kind: 'number',
      label: 'Dimensional change coefficient',
      unit: '1/%',
      ...limits.coefficientPerPct,
      help: 'Tangential for flatsawn panels, radial for quartersawn ones.',
    },
    buildingMoisturePct: { kind: 'number', unit: '%', ...moisture, label: 'Moisture content when cut' },
    driestMoisturePct: { kind: 'number', unit: '%', ...moisture, label: 'Driest moisture content' },
    wettestMoisturePct: { kind: 'number', unit: '%', ...moisture, label: 'Wettest moisture content' },
    held: {
      kind: 'choice',
      label: 'Held',
      options: { middle: 'in the middle of its width', edge: 'at one edge, or loose' },
      help: 'A loose panel may slide until one edge touches the bottom of its groove.',
    },
  },
  outputs: {
    cutWidthMm: { label: 'Width to cut', unit: 'mm', help: 'On building day.' },
    buildingDayGapMm: {
      label: 'Gap on building day',
      unit: 'mm',
      help: 'At the bottom of each groove, or all of it at the free edge.',
    },
    leastCoverMm: { label: 'Least cover of the year', unit: 'mm' },
    leastGapMm: { label: 'Least gap of the year', unit: 'mm' },
    marginMm: {
      label: 'To spare',
      unit: 'mm',
      help: 'Beyond the cover and the gap asked for. Negative where no width gives both: deepen each groove by about twice as much.',
    },
  },
  compute: panelInGroove,
  formula: String.raw`\begin{aligned}
W &= \frac{(O + 2g) + O_c + n\,(c - e)}{d + w} \\
m &= \frac{W d - O_c}{n} - c = \frac{(O + 2g) - W w}{n} - e \\
d &= 1 + C (M_d - M_b), \quad w = 1 + C (M_w - M_b)
\end{aligned}`,
  symbols: {
    W: 'width to cut',
    m: 'to spare',
    'O, g': 'opening and depth of each groove',
    O_c: 'opening that the panel has to cover: O where it is held in the middle, O + g at an edge',
    n: 'edges that move: 2, or 1',
    'c, e': 'cover and gap asked for',
    'd, w': 'size when driest and wettest, building day included, as a share of that on building day',
    C: 'dimensional change coefficient',
    'M_b, M_d, M_w': 'moisture content when cut, driest and wettest',
  },
  valid: { buildingMoisturePct: [6, 14], driestMoisturePct: [6, 14], wettestMoisturePct: [6, 14] },
  requires: [
    {
      says: 'the driest moisture content is at most the wettest',
      holds: ({ driestMoisturePct, wettestMoisturePct }) => driestMoisturePct <= wettestMoisturePct,
    },
  ],
  sources: [
    {
      source: woodHandbook2010,
      at: 'ch. 13, the equation that goes with Table 13-5, for 6 to 14 %, as an extension service reprints it',
      confirmed: 'text',
      tier: 'reprint',
    },
    {
      source: panelAllowanceThread,
      at: 'its answer: the allowance for a panel from that equation, and none along the grain',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: door,
      expect: {
        cutWidthMm: '312.6124',
        buildingDayGapMm: '3.6938',
        leastCoverMm: '5.5309',
        leastGapMm: '2.5309',
        marginMm: '1.5309',
      },
      from: {
        workedByHand:
          'd: 1 + 0.00248 × (6 − 8) = 0.99504; w: 1 + 0.00248 × (11 − 8) = 1.00744; 0.99504 + 1.00744 = 2.00248; width to cut: (320 + 300 + 2 × (4 − 1)) / 2.00248 = 312.6124 mm; gap on building day: (320 − 312.6124) / 2 = 3.6938 mm; cover when driest: (312.6124 × 0.99504 − 300) / 2 = 5.5309 mm; gap when wettest: (320 − 312.6124 × 1.00744) / 2 = 2.5309 mm; to spare: 5.5309 − 4 = 1.5309 mm',
      },
    },
    {
      given: {
        ...door,
        openingMm: 600,
        grooveDepthMm: 20,
        coverMm: 3,
        coefficientPerPct: 0.00353,
        buildingMoisturePct: 12,
        held: 'edge',
      },
      expect: {
        cutWidthMm: '637.7538',
        buildingDayGapMm: '2.2462',
        leastCoverMm: '4.2462',
        leastGapMm: '2.2462',
        marginMm: '1.2462',
      },
      from: {
        workedByHand:
          'Cut at 12 %, it is never wetter again: w is 1; d: 1 + 0.00353 × (6 − 12) = 0.97882; width to cut: (640 + 620 + 3 − 1) / (0.97882 + 1) = 637.7538 mm; gap on building day and when wettest: 640 − 637.7538 = 2.2462 mm; cover when driest: 637.7538 × 0.97882 − 620 = 4.2462 mm; to spare: 4.2462 − 3 = 1.2462 mm',
      },
    },
    {
      given: {
        ...door,
        openingMm: 600,
        grooveDepthMm: 6,
        coefficientPerPct: 0.00353,
        wettestMoisturePct: 12,
      },
      expect: { marginMm: '-2.7133' },
      from: {
        workedByHand:
          'The grooves are too shallow; the best width is (612 + 600 + 2 × (4 − 1)) / (0.99294 + 1.01412) = 606.8578 mm; its cover when driest is (606.8578 × 0.99294 − 600) / 2 = 1.2867 mm; 1.2867 − 4 = −2.7133 mm',
      },
    },
  ],
  laws: [
    {
      of: 'marginMm',
      by: { openingMm: 'linear', grooveDepthMm: 'linear', coverMm: 'linear', gapMm: 'linear' },
    },
    {
      of: 'marginMm',
      by: {
        openingMm: 'decreasing',
        grooveDepthMm: 'increasing',
        coverMm: 'decreasing',
        gapMm: 'decreasing',
        coefficientPerPct: 'decreasing',
        driestMoisturePct: 'increasing',
        wettestMoisturePct: 'decreasing',
      },
    },
    { of: 'cutWidthMm', by: { openingMm: 'increasing', coverMm: 'increasing', gapMm: 'decreasing' } },
  ],
  peers: [
    {
      name: 'the spare room between the widths that would just give the cover, and just the gap',
      of: 'marginMm',
      compute: byWidthsThatJustDo,
      relative: 1e-6,
      absolute: 1e-9,
    },
  ],
  cautions: [
    boardsDiffer,
    'Never glue a solid panel into its grooves: it cracks, or breaks the frame. Glass, mirrors and panels overhead need the cover that local codes ask for.',
  ],
}));
