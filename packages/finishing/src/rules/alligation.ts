import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import {
  alligationAnswer2022,
  alligationAnswer2023,
  alligationHandout,
  threeStrengthsModule,
} from '@scantling/rules/sources';
import { compatible, oilyRags, productSheet, solvents } from '../cautions.ts';
import { batchLimits } from '../mixing.ts';
import { mixingCard } from '../mixing-card.ts';
import { inSteps, lowestTerms } from '../whole-numbers.ts';

const percent = { min: 0, max: 100 } as const;
const limits = {
  strongerPct: percent,
  weakerPct: percent,
  targetPct: percent,
  batchMl: batchLimits,
} as const;

export interface AlligationInput {
  /** Strength of the stronger liquid, %, 0 to 100: solids, oil, alcohol, by volume. */
  readonly strongerPct: number;
  /** Strength of the weaker liquid, %, below the stronger; 0 for a thinner. */
  readonly weakerPct: number;
  /** Strength wanted, %, from the weaker to the stronger. */
  readonly targetPct: number;
  /** Volume of the whole mix, mL, 0 to 1 000 000. */
  readonly batchMl: number;
}

export interface Alligation {
  /** Parts of the stronger, a whole number in lowest terms; `null` where a strength has more than six decimals. */
  readonly strongerParts: number | null;
  /** Parts of the weaker, a whole number in lowest terms; `null` where a strength has more than six decimals. */
  readonly weakerParts: number | null;
  /** Volume of the stronger, mL. */
  readonly strongerMl: number;
  /** Volume of the weaker, mL. */
  readonly weakerMl: number;
}

/**
 * Two liquids of different strength mixed to a strength between: parts are the differences, taken crosswise. The parts
 * are exact.
 *
 * @returns Whole parts in lowest terms, and volumes in mL.
 * @throws RangeError where an input is outside its limits or the target is not from the weaker to the stronger.
 * Source: alligation, as taught in pharmacy arithmetic.
 * @example
 * ```ts
 * import { alligation } from '@scantling/finishing';
 * // A varnish of 60 % solids and one of 42.5 %, for 50 %: 7.5 to 10 parts, which is 3 to 4
 * alligation({ strongerPct: 60, weakerPct: 42.5, targetPct: 50, batchMl: 700 }) // => { strongerParts: 3, weakerParts: 4, strongerMl: 300, weakerMl: 400 }
 * ```
 */
export function alligation(input: AlligationInput): Alligation {
  requireInputs('alligation', input, limits);
  const { strongerPct, weakerPct, targetPct, batchMl } = input;
  requireThat(
    'alligation',
    weakerPct < strongerPct && weakerPct <= targetPct && targetPct <= strongerPct,
    `targetPct from weakerPct to a larger strongerPct, got ${targetPct}, ${weakerPct} and ${strongerPct}`,
  );
  const high = inSteps(strongerPct, 6);
  const low = inSteps(weakerPct, 6);
  const aim = inSteps(targetPct, 6);
  const exact = high !== null && low !== null && aim !== null;
  const [strongerParts = null, weakerParts = null] = exact ? lowestTerms([aim - low, high - aim]) : [];
  return {
    strongerParts,
    weakerParts,
    strongerMl: plusZero(batchMl * ((targetPct - weakerPct) / (strongerPct - weakerPct))),
    weakerMl: plusZero(batchMl * ((strongerPct - targetPct) / (strongerPct - weakerPct))),
  };
}

const strength = { kind: 'number', unit: '%' } as const;

export const alligationRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/alligation',
  title: 'Two strengths mixed to one between',
  summary: 'How much of a stronger and of a weaker liquid make a batch of a wanted strength, in exact parts.',
  basis: 'derived',
  inputs: {
    strongerPct: {
      ...strength,
      label: 'Stronger',
      ...limits.strongerPct,
      help: 'Solids, oil or alcohol, by volume.',
    },
    weakerPct: { ...strength, label: 'Weaker', ...limits.weakerPct, help: 'A thinner has 0 % solids.' },
    targetPct: { ...strength, label: 'Wanted', ...limits.targetPct },
    batchMl: mixingCard().batchMl,
  },
  outputs: {
    strongerParts: { label: 'Parts of the stronger', unit: '1' },
    weakerParts: { label: 'Parts of the weaker', unit: '1' },
    strongerMl: { label: 'Of the stronger', unit: 'mL' },
    weakerMl: { label: 'Of the weaker', unit: 'mL' },
  },
  compute: alligation,
  formula: String.raw`\frac{p_s}{p_w} = \frac{t - w}{s - t}, \qquad V_s = V\,\frac{t - w}{s - w}, \qquad V_w = V\,\frac{s - t}{s - w}`,
  symbols: {
    'p_s, p_w': 'parts of the stronger, and of the weaker',
    's, w': 'strength of the stronger, and of the weaker',
    t: 'strength wanted',
    'V_s, V_w': 'volume of the stronger, and of the weaker',
    V: 'volume of the batch',
  },
  inSymbols: (input, { strongerParts, weakerParts, strongerMl, weakerMl }) => ({
    ...(strongerParts !== null && { p_s: strongerParts }),
    ...(weakerParts !== null && { p_w: weakerParts }),
    s: input.strongerPct,
    w: input.weakerPct,
    t: input.targetPct,
    V_s: strongerMl,
    V_w: weakerMl,
    V: input.batchMl,
  }),
  requires: [
    {
      says: 'the wanted strength from the weaker to a larger stronger',
      holds: ({ strongerPct, weakerPct, targetPct }) =>
        weakerPct < strongerPct && weakerPct <= targetPct && targetPct <= strongerPct,
    },
  ],
  sources: [
    { source: alligationHandout, at: 'alligation alternate', confirmed: 'text', tier: 'reprint' },
    { source: alligationAnswer2022, at: 'from "have" to "parts"', confirmed: 'text' },
    {
      source: threeStrengthsModule,
      at: 'solved problem: three strengths, taken in pairs',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { strongerPct: 95, weakerPct: 50, targetPct: 70, batchMl: 45 },
      // Printed as 20 parts and 25 parts, which is 4 to 5.
      expect: { strongerMl: '20', weakerMl: '25' },
      from: {
        source: alligationHandout,
        at: 'alligation alternate: 95 % and 50 % alcohol for 70 %',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { strongerPct: 70, weakerPct: 20, targetPct: 30, batchMl: 5 },
      expect: { strongerParts: '1', weakerParts: '4' },
      from: {
        source: alligationHandout,
        at: 'question 1 and answer: elixirs of 70 % and 20 % for 30 %',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { strongerPct: 100, weakerPct: 35, targetPct: 95, batchMl: 260 },
      expect: { strongerMl: '240', weakerMl: '20' },
      from: { source: alligationAnswer2022, at: 'summary', confirmed: 'text' },
    },
    {
      given: { strongerPct: 100, weakerPct: 50, targetPct: 70, batchMl: 20 },
      expect: { strongerMl: '8', weakerMl: '12' },
      from: { source: alligationAnswer2023, at: 'last two lines', confirmed: 'text' },
    },
    {
      given: { strongerPct: 60, weakerPct: 42.5, targetPct: 50, batchMl: 700 },
      expect: { strongerParts: '3.0', weakerParts: '4.0', strongerMl: '300.0', weakerMl: '400.0' },
      from: {
        workedByHand:
          '50 − 42.5 = 7.5 parts and 60 − 50 = 10 parts, as 3 to 4; 700 / 7 = 100; 3 × 100 = 300 and 4 × 100 = 400',
      },
    },
  ],
  laws: [
    { of: 'strongerMl', by: { batchMl: 'proportional', targetPct: 'linear' } },
    { of: 'weakerMl', by: { batchMl: 'proportional', targetPct: 'decreasing' } },
  ],
  cautions: [compatible, oilyRags, solvents, productSheet],
}));
