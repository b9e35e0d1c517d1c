import { defineRule, requireInputs } from '@scantling/rules';
import { designingForWoodMovement, fasteningTabletops1987 } from '@scantling/rules/sources';
import { firmNotHard, notStructuralDesign } from '../cautions.ts';

const depth = { min: 0.5, max: 500 };
const travel = { min: 0, max: 4000 };
const limits = {
  grooveDepthMm: depth,
  tongueLengthMm: depth,
  deeperMm: travel,
  outMm: travel,
  leastEngagedMm: { min: 0, max: 100 },
  clearanceMm: { min: 0, max: 50 },
} as const;

export interface TongueInGrooveInput {
  /** Depth of the groove, saw kerf or mortise in the rail, mm, 0.5 to 500. */
  readonly grooveDepthMm: number;
  /** Length of the tongue, from its tip to the shoulder of the button or to the bend of the bracket, mm, 0.5 to 500. */
  readonly tongueLengthMm: number;
  /** How much deeper the season drives the tongue, mm from building day, 0 to 4000. */
  readonly deeperMm: number;
  /** How far the season draws it out, mm from building day, 0 to 4000. */
  readonly outMm: number;
  /** Least length of tongue that stays in the groove, mm, 0 to 100. */
  readonly leastEngagedMm: number;
  /** Room left before the tip meets the bottom, and the shoulder the rail, mm, 0 to 50. */
  readonly clearanceMm: number;
}

export interface TongueInGroove {
  /** Least depth of the groove, and least length of the tongue, mm. */
  readonly neededDepthMm: number;
  /** By how much the lesser of the two exceeds what is needed, mm; negative: it lacks that much. */
  readonly spareMm: number;
  /** Length of tongue in the groove to set on building day, what is to spare shared; `null` where it is not enough. */
  readonly engagedMm: number | null;
  /** Gap to leave between shoulder and rail on building day, mm; `null` where there is not enough. */
  readonly shoulderGapMm: number | null;
}

/**
 * A wooden button or a bracket with a tab, screwed to a solid top, whose tongue lies in a groove or saw kerf of a rail
 * that runs along the grain: it has to stay engaged when the season draws it out, and must not bottom when the season
 * drives it in. A tongue that points away from the fixed line goes deeper when the top swells; one that points towards it,
 * when the top shrinks.
 *
 * @returns What is needed, what is to spare, and how to set the button on building day, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: buttons in grooves are published practice; the depth is what has to fit in.
 * @example
 * ```ts
 * import { tongueInGroove } from '@scantling/fastening';
 * // 3 mm deeper in summer, 2 mm out in winter, 4 mm always engaged, 1 mm short of the bottom
 * const season = { deeperMm: 3, outMm: 2, leastEngagedMm: 4, clearanceMm: 1 };
 * tongueInGroove({ ...season, grooveDepthMm: 12, tongueLengthMm: 12 }) // => { neededDepthMm: 10, spareMm: 2, engagedMm: 7, shoulderGapMm: 5 }
 * tongueInGroove({ ...season, grooveDepthMm: 6, tongueLengthMm: 12 }) // => { neededDepthMm: 10, spareMm: -4, engagedMm: null, shoulderGapMm: null }
 * ```
 */
export function tongueInGroove(input: TongueInGrooveInput): TongueInGroove {
  requireInputs('tongueInGroove', input, limits);
  const { tongueLengthMm, deeperMm, outMm, leastEngagedMm, clearanceMm } = input;
  const neededDepthMm = leastEngagedMm + outMm + deeperMm + clearanceMm + 0;
  const spareMm = Math.min(input.grooveDepthMm, tongueLengthMm) - neededDepthMm;
  // A spare of nought may come out a rounding error below it.
  const engagedMm = spareMm < -1e-9 ? null : leastEngagedMm + outMm + spareMm / 2;
  const shoulderGapMm = engagedMm === null ? null : tongueLengthMm - engagedMm;
  return { neededDepthMm, spareMm, engagedMm, shoulderGapMm };
}

export const tongueInGrooveRule = /* @__PURE__ */ defineRule<TongueInGrooveInput, TongueInGroove>(() => ({
  id: 'fastening/tongue-in-groove',
  title: 'A button or tab in a groove',
  summary:
    'How deep the groove and how long the tongue of a button or of a bracket has to be, so that it neither slips out nor bottoms, and how to set it on building day.',
  basis: 'derived',
  inputs: {
    grooveDepthMm: {
      kind: 'number',
      label: 'Depth of the groove',
      unit: 'mm',
      ...limits.grooveDepthMm,
      help: 'Of the groove, saw kerf or mortise in the rail.',
    },
    tongueLengthMm: {
      kind: 'number',
      label: 'Length of the tongue',
      unit: 'mm',
      ...limits.tongueLengthMm,
      help: 'From its tip to the shoulder of the button, or to the bend of the bracket.',
    },
    deeperMm: {
      kind: 'number',
      label: 'Deeper over the season',
      unit: 'mm',
      ...limits.deeperMm,
      help: 'The swelling, where the tongue points away from the fixed line; the shrinking, where it points towards it.',
    },
    outMm: {
      kind: 'number',
      label: 'Drawn out over the season',
      unit: 'mm',
      ...limits.outMm,
      help: 'The shrinking, where the tongue points away from the fixed line; the swelling, where it points towards it.',
    },
    leastEngagedMm: {
      kind: 'number',
      label: 'Least engaged',
      unit: 'mm',
      ...limits.leastEngagedMm,
      help: 'Length of tongue that stays in the groove all year.',
    },
    clearanceMm: {
      kind: 'number',
      label: 'Room at the end',
      unit: 'mm',
      ...limits.clearanceMm,
      help: 'Between tip and bottom, and between shoulder and rail, when the tongue is deepest.',
    },
  },
  outputs: {
    neededDepthMm: { label: 'Needed', unit: 'mm', help: 'Depth of the groove, and length of the tongue.' },
    spareMm: { label: 'To spare', unit: 'mm', help: 'Negative: the lesser of the two lacks that much.' },
    engagedMm: {
      label: 'Engaged on building day',
      unit: 'mm',
      help: 'Length of tongue in the groove, what is to spare shared between both ends.',
    },
    shoulderGapMm: {
      label: 'Gap at the shoulder on building day',
      unit: 'mm',
      help: 'Between the button and the face of the rail.',
    },
  },
  compute: tongueInGroove,
  formula: String.raw`\begin{aligned}
n &= a + o + i + c, \qquad m = \min(g, t) - n \\
x &= a + o + \tfrac{m}{2}, \qquad h = t - x
\end{aligned}`,
  symbols: {
    n: 'needed',
    m: 'to spare',
    x: 'engaged on building day',
    h: 'gap at the shoulder',
    'g, t': 'depth of the groove, length of the tongue',
    'i, o': 'deeper, and drawn out, over the season',
    a: 'least engaged',
    c: 'room at the end',
  },
  inSymbols: (input, output) => ({
    n: output.neededDepthMm,
    m: output.spareMm,
    ...(output.engagedMm !== null && { x: output.engagedMm }),
    ...(output.shoulderGapMm !== null && { h: output.shoulderGapMm }),
    g: input.grooveDepthMm,
    t: input.tongueLengthMm,
    i: input.deeperMm,
    o: input.outMm,
    a: input.leastEngagedMm,
    c: input.clearanceMm,
  }),
  sources: [
    {
      source: designingForWoodMovement,
      at: 'on the long edges: room to travel deeper when the top expands, and to withdraw without popping out when it shrinks',
      confirmed: 'text',
    },
    { source: fasteningTabletops1987, at: 'summary: grooves and fingers, or buttons', confirmed: 'text' },
  ],
  examples: [
    {
      given: {
        grooveDepthMm: 12,
        tongueLengthMm: 14,
        deeperMm: 3,
        outMm: 2,
        leastEngagedMm: 4,
        clearanceMm: 1,
      },
      expect: {
        neededDepthMm: '10.00',
        spareMm: '2.00',
        engagedMm: '7.00',
        shoulderGapMm: '7.00',
      },
      from: {
        workedByHand:
          '4 + 2 + 3 + 1 = 10 mm; the groove is the lesser: 12 − 10 = 2 mm; 4 + 2 + 2 / 2 = 7 mm; at the shoulder 14 − 7 = 7 mm; in winter 7 − 2 = 5 mm stay engaged; in summer 12 − 7 − 3 = 2 mm are left to the bottom',
      },
    },
    {
      given: {
        grooveDepthMm: 12.5,
        tongueLengthMm: 9.5,
        deeperMm: 1.5,
        outMm: 2.5,
        leastEngagedMm: 6,
        clearanceMm: 0.5,
      },
      expect: { neededDepthMm: '10.50', spareMm: '-1.00' },
      from: { workedByHand: '6 + 2.5 + 1.5 + 0.5 = 10.5 mm; the tongue is too short: 9.5 − 10.5 = −1 mm' },
    },
  ],
  laws: [
    {
      of: 'neededDepthMm',
      by: { deeperMm: 'linear', outMm: 'linear', leastEngagedMm: 'linear', clearanceMm: 'linear' },
    },
    {
      of: 'spareMm',
      by: {
        grooveDepthMm: 'increasing',
        tongueLengthMm: 'increasing',
        deeperMm: 'linear',
        outMm: 'linear',
        leastEngagedMm: 'linear',
        clearanceMm: 'linear',
      },
    },
  ],
  cautions: [notStructuralDesign, firmNotHard],
}));
