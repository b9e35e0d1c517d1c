import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { clonalShrinkage2009, clonalTeak2023, jcgm100, woodHandbook2010 } from '@scantling/rules/sources';

const limits = {
  changeMm: { min: 0, max: 10_000 },
  variationPct: { min: 0, max: 50 },
  boardCount: { min: 1, max: 100, integer: true },
  deviationFactor: { min: 0, max: 5 },
} as const;

export interface ChangeBandInput {
  /** Change in width for average wood of the species, shrinking or swelling, mm, 0 to 10 000. */
  readonly changeMm: number;
  /** Coefficient of variation of shrinkage among boards of the species: standard deviation, % of the mean, 0 to 50. */
  readonly variationPct: number;
  /** Number of boards of like width that share the width, 1 to 100. */
  readonly boardCount: number;
  /** Standard deviations to cover on each side, 0 to 5. */
  readonly deviationFactor: number;
}

export interface ChangeBand {
  /** Low end of the band, mm. */
  readonly lowMm: number;
  /** High end of the band, mm. */
  readonly highMm: number;
}

const shareOf = ({ variationPct, boardCount, deviationFactor }: ChangeBandInput) =>
  (deviationFactor * variationPct) / 100 / Math.sqrt(boardCount);

/**
 * The band in which the change in width of a real panel lies, because boards of one species do not all move alike.
 * Boards from different trees average out: the band narrows with the square root of their number. If the shrinkage
 * of boards is normally distributed, 1.645 standard deviations leave 5 % of panels beyond the high end, 2.326 leave
 * 1 %, and 1.960 keep 95 % inside both ends.
 *
 * @returns Low and high end in mm.
 * @throws RangeError where an input is outside its limits, or the band would reach below no change at all.
 * Source: JCGM 100, 5.1.2, Eq. (10), on the sum of boards that vary by themselves.
 * @example
 * ```ts
 * import { changeBand } from '@scantling/movement';
 * // A top of nine boards that on average moves 6 mm; 15 % of variation, 5 % of tops beyond the high end
 * changeBand({ changeMm: 6, variationPct: 15, boardCount: 9, deviationFactor: 1.645 }) // => { lowMm: 5.5065, highMm: 6.4935 }
 * changeBand({ changeMm: 6, variationPct: 15, boardCount: 1, deviationFactor: 1.645 }).highMm // => 7.4805
 * changeBand({ changeMm: 6, variationPct: 15, boardCount: 0, deviationFactor: 1 }) // throws changeBand requires boardCount a whole number between 1 and 100, got 0
 * ```
 */
export function changeBand(input: ChangeBandInput): ChangeBand {
  requireInputs('changeBand', input, limits);
  const share = shareOf(input);
  requireThat('changeBand', share <= 1, `a band of at most 100 % of the change, got ${100 * share} %`);
  return {
    lowMm: plusZero(input.changeMm * (1 - share)),
    highMm: plusZero(input.changeMm * (1 + share)),
  };
}

/** Board by board: the variances of the boards' own changes, added. */
function byBoards({ changeMm, variationPct, boardCount, deviationFactor }: ChangeBandInput): number {
  const deviationMm = (changeMm / boardCount) * (variationPct / 100);
  let variance = 0;
  for (let board = 0; board < boardCount; board++) variance += deviationMm ** 2;
  return changeMm + deviationFactor * Math.sqrt(variance);
}

export const changeBandRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/change-band',
  title: 'Band of the change in width',
  summary:
    'How much less or more than the average figure a real panel may move, because boards of one species differ.',
  basis: 'derived',
  inputs: {
    changeMm: {
      kind: 'number',
      label: 'Change in width, on average',
      unit: 'mm',
      ...limits.changeMm,
      help: 'Shrinking or swelling, without its sign, from the coefficient or the shrinkage of the species.',
    },
    variationPct: {
      kind: 'number',
      label: 'Coefficient of variation',
      unit: '%',
      ...limits.variationPct,
      help: 'Standard deviation of shrinkage among boards, as a share of the mean: about 15, from memory; figures seen run from 7 to 29.',
    },
    boardCount: {
      kind: 'number',
      label: 'Boards',
      unit: '1',
      ...limits.boardCount,
      help: 'Of like width, side by side. Boards of one tree move alike: count them as one.',
    },
    deviationFactor: {
      kind: 'number',
      label: 'Standard deviations to cover',
      unit: '1',
      ...limits.deviationFactor,
      help: '1.645 leaves about 5 % of panels beyond the high end, 2.326 about 1 %.',
    },
  },
  outputs: {
    lowMm: { label: 'Low end', unit: 'mm' },
    highMm: { label: 'High end', unit: 'mm' },
  },
  compute: changeBand,
  formula: String.raw`\Delta_\pm = \Delta \left(1 \pm \frac{k \, v}{100 \sqrt{n}}\right)`,
  symbols: {
    '\\Delta': 'change in width, on average',
    v: 'coefficient of variation, %',
    n: 'number of boards of like width',
    k: 'standard deviations to cover',
  },
  requires: [{ says: 'a band of at most 100 % of the change', holds: (input) => shareOf(input) <= 1 }],
  sources: [
    { source: jcgm100, at: '5.1.2, Eq. (10): the variance of a sum', confirmed: 'text' },
    {
      source: woodHandbook2010,
      at: 'ch. 4: shrinkage of one species varies by about 15 % from piece to piece',
      confirmed: 'memory',
    },
    {
      source: clonalShrinkage2009,
      at: 'Table III: shrinkage varies by 7 to 10 % between clones of one species, 7.34 to 7.54 tangential, 8.78 to 10.15 radial',
      confirmed: 'text',
    },
    {
      source: clonalTeak2023,
      at: 'Table 3, A0: tangential shrinkage 6.866 %, standard deviation 2.01, which is 29 % of it; radial 3.601 and 0.98, 27 %',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { changeMm: 6, variationPct: 15, boardCount: 9, deviationFactor: 1.645 },
      expect: { lowMm: '5.5065', highMm: '6.4935' },
      from: {
        workedByHand:
          'One board: 6 × 0.15 = 0.9 mm of standard deviation; nine boards: 0.9 / √9 = 0.3 mm; ' +
          '1.645 × 0.3 = 0.4935 mm; 6 − 0.4935 = 5.5065 mm; 6 + 0.4935 = 6.4935 mm',
      },
    },
    {
      given: { changeMm: 10, variationPct: 29, boardCount: 4, deviationFactor: 2 },
      expect: { lowMm: '7.10', highMm: '12.90' },
      from: {
        workedByHand:
          '10 × 0.29 = 2.90 mm for one board; 2.90 / √4 = 1.45 mm; 2 × 1.45 = 2.90 mm; 10 − 2.90 = 7.10 mm; 10 + 2.90 = 12.90 mm',
      },
    },
  ],
  laws: [
    {
      of: 'highMm',
      by: {
        changeMm: 'proportional',
        variationPct: 'linear',
        boardCount: 'decreasing',
        deviationFactor: 'linear',
      },
    },
    {
      of: 'lowMm',
      by: {
        changeMm: 'proportional',
        variationPct: 'decreasing',
        boardCount: 'increasing',
        deviationFactor: 'decreasing',
      },
    },
    { of: 'highMm', by: { variationPct: 'increasing', deviationFactor: 'increasing' } },
  ],
  peers: [
    {
      name: 'the variances of the boards, added one by one',
      of: 'highMm',
      compute: byBoards,
      relative: 1e-12,
    },
  ],
  cautions: [
    'The coefficient of variation differs from species to species and from stand to stand, and few are published. Where a joint must not fail take a high one, or measure your own boards.',
    'Boards from one tree move alike and do not average out. Nor does a wrong guess of the moisture content: this band is about the wood alone.',
  ],
}));
