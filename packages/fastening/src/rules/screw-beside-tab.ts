import { defineRule, requireInputs } from '@scantling/rules';
import { firmNotHard, notStructuralDesign, slotsInMetal } from '../cautions.ts';

const diameter = { min: 0.5, max: 200 };
const travel = { min: 0, max: 4000 };
const limits = {
  shankDiameterMm: { min: 0.5, max: 50 },
  washerDiameterMm: diameter,
  towardsTabMm: travel,
  fromTabMm: travel,
  leastBearingMm: { min: 0, max: 50 },
  clearanceMm: { min: 0, max: 50 },
} as const;

export interface ScrewBesideTabInput {
  /** Diameter of the screw beside the tab, mm, 0.5 to 50. */
  readonly shankDiameterMm: number;
  /** Diameter of its washer, or of its head where there is none, mm, 0.5 to 200. */
  readonly washerDiameterMm: number;
  /** How far the season carries the screw towards the edge of the tab, mm from building day, 0 to 4000. */
  readonly towardsTabMm: number;
  /** How far it carries the screw away from it, mm from building day, 0 to 4000. */
  readonly fromTabMm: number;
  /** Least that the washer lies over the tab, mm, 0 to 50. */
  readonly leastBearingMm: number;
  /** Room left between shank and tab at the end of the travel, mm, 0 to 50. */
  readonly clearanceMm: number;
}

export interface ScrewBesideTab {
  /** Least diameter of the washer, mm. */
  readonly neededWasherMm: number;
  /** By how much the rim of the washer around the shank exceeds what is needed, mm; negative: it lacks that much. */
  readonly spareMm: number;
  /** Gap between shank and tab to set on building day, what is to spare shared; `null` where it is not enough. */
  readonly gapMm: number | null;
}

/**
 * A tab of the base held by a screw that stands beside it and not in a hole of it: the washer bears on the tab, the shank
 * stays clear of its edge. The rim of the washer has to make up for the whole travel.
 *
 * @returns The washer needed, what is to spare, and the gap to set on building day, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: common practice, no source; the washer is what has to reach.
 * @example
 * ```ts
 * import { screwBesideTab } from '@scantling/fastening';
 * // A 5 mm screw: 1.5 mm towards the tab, 1 mm away from it, 3 mm of washer always on the tab, 0.5 mm clear
 * const season = { shankDiameterMm: 5, towardsTabMm: 1.5, fromTabMm: 1, leastBearingMm: 3, clearanceMm: 0.5 };
 * screwBesideTab({ ...season, washerDiameterMm: 20 }) // => { neededWasherMm: 17, spareMm: 1.5, gapMm: 2.75 }
 * screwBesideTab({ ...season, washerDiameterMm: 12 }) // => { neededWasherMm: 17, spareMm: -2.5, gapMm: null }
 * ```
 */
export function screwBesideTab(input: ScrewBesideTabInput): ScrewBesideTab {
  requireInputs('screwBesideTab', input, limits);
  const { shankDiameterMm, towardsTabMm, fromTabMm, leastBearingMm, clearanceMm } = input;
  const neededRimMm = leastBearingMm + fromTabMm + towardsTabMm + clearanceMm;
  const spareMm = (input.washerDiameterMm - shankDiameterMm) / 2 - neededRimMm;
  const neededWasherMm = shankDiameterMm + 2 * neededRimMm;
  // A spare of nought may come out a rounding error below it.
  const gapMm = spareMm < -1e-9 ? null : clearanceMm + towardsTabMm + spareMm / 2;
  return { neededWasherMm, spareMm, gapMm };
}

export const screwBesideTabRule = /* @__PURE__ */ defineRule<ScrewBesideTabInput, ScrewBesideTab>(() => ({
  id: 'fastening/screw-beside-tab',
  title: 'A screw beside a tab',
  summary:
    'How large a washer has to be that holds a tab of the base from beside it, so that the season neither drives the shank against the tab nor draws the washer off it.',
  basis: 'convention',
  inputs: {
    shankDiameterMm: {
      kind: 'number',
      label: 'Shank diameter',
      unit: 'mm',
      ...limits.shankDiameterMm,
      help: 'Of the screw, where it passes the tab.',
    },
    washerDiameterMm: {
      kind: 'number',
      label: 'Washer diameter',
      unit: 'mm',
      ...limits.washerDiameterMm,
      help: 'Of the head, where there is no washer.',
    },
    towardsTabMm: {
      kind: 'number',
      label: 'Towards the tab',
      unit: 'mm',
      ...limits.towardsTabMm,
      help: 'How far the season carries the screw, from building day.',
    },
    fromTabMm: {
      kind: 'number',
      label: 'Away from the tab',
      unit: 'mm',
      ...limits.fromTabMm,
      help: 'How far the season carries the screw, from building day.',
    },
    leastBearingMm: {
      kind: 'number',
      label: 'Least bearing',
      unit: 'mm',
      ...limits.leastBearingMm,
      help: 'How far the washer lies over the tab all year.',
    },
    clearanceMm: {
      kind: 'number',
      label: 'Room at the shank',
      unit: 'mm',
      ...limits.clearanceMm,
      help: 'Between shank and tab at the end of the travel.',
    },
  },
  outputs: {
    neededWasherMm: { label: 'Least washer', unit: 'mm' },
    spareMm: { label: 'To spare', unit: 'mm', help: 'Negative: the rim of the washer lacks that much.' },
    gapMm: {
      label: 'Gap on building day',
      unit: 'mm',
      help: 'Between shank and tab, what is to spare shared between both ends.',
    },
  },
  compute: screwBesideTab,
  formula: String.raw`\begin{aligned}
n &= b + f + t + c, \qquad D_n = d + 2n \\
m &= \tfrac{D - d}{2} - n, \qquad g = c + t + \tfrac{m}{2}
\end{aligned}`,
  symbols: {
    n: 'rim needed around the shank, mm',
    D_n: 'least washer',
    'D, d': 'diameter of the washer and of the shank',
    m: 'to spare',
    g: 'gap on building day',
    't, f': 'towards and away from the tab over the season',
    b: 'least bearing',
    c: 'room at the shank',
  },
  inSymbols: (input, output) => ({
    n: (output.neededWasherMm - input.shankDiameterMm) / 2,
    D_n: output.neededWasherMm,
    D: input.washerDiameterMm,
    d: input.shankDiameterMm,
    m: output.spareMm,
    ...(output.gapMm !== null && { g: output.gapMm }),
    t: input.towardsTabMm,
    f: input.fromTabMm,
    b: input.leastBearingMm,
    c: input.clearanceMm,
  }),
  sources: [],
  examples: [
    {
      given: {
        shankDiameterMm: 5,
        washerDiameterMm: 20,
        towardsTabMm: 1.5,
        fromTabMm: 1,
        leastBearingMm: 3,
        clearanceMm: 0.5,
      },
      expect: { neededWasherMm: '17.00', spareMm: '1.50', gapMm: '2.75' },
      from: {
        workedByHand:
          '3 + 1 + 1.5 + 0.5 = 6 mm of rim; 5 + 2 × 6 = 17 mm; (20 − 5) / 2 − 6 = 1.5 mm; 0.5 + 1.5 + 1.5 / 2 = 2.75 mm',
      },
    },
    {
      given: {
        shankDiameterMm: 6,
        washerDiameterMm: 18,
        towardsTabMm: 2,
        fromTabMm: 3,
        leastBearingMm: 2,
        clearanceMm: 1,
      },
      expect: { neededWasherMm: '22.00', spareMm: '-2.00' },
      from: { workedByHand: '2 + 3 + 2 + 1 = 8 mm; 6 + 2 × 8 = 22 mm; (18 − 6) / 2 − 8 = −2 mm' },
    },
  ],
  laws: [
    {
      of: 'spareMm',
      by: {
        shankDiameterMm: 'linear',
        washerDiameterMm: 'linear',
        towardsTabMm: 'linear',
        fromTabMm: 'linear',
        leastBearingMm: 'linear',
        clearanceMm: 'linear',
      },
    },
    {
      of: 'neededWasherMm',
      by: { shankDiameterMm: 'linear', towardsTabMm: 'linear', fromTabMm: 'linear' },
    },
  ],
  cautions: [notStructuralDesign, firmNotHard, slotsInMetal],
}));
