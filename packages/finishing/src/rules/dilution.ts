import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { dilutionAnswer2017 } from '@scantling/rules/sources';
import { oilyRags, productSheet, solvents, thinWithin } from '../cautions.ts';

const limits = {
  fromPct: { min: 0.1, max: 100 },
  toPct: { min: 0.1, max: 100 },
  volumeMl: { min: 0, max: 1_000_000 },
} as const;

export interface DilutionInput {
  /** Strength there is, %, 0.1 to 100. */
  readonly fromPct: number;
  /** Strength wanted, %, at most what there is. */
  readonly toPct: number;
  /** Volume there is, mL, 0 to 1 000 000. */
  readonly volumeMl: number;
}

export interface Dilution {
  /** Thinner to add, mL. */
  readonly thinnerMl: number;
  /** What it makes, mL. */
  readonly totalMl: number;
}

/**
 * How much thinner takes a liquid from one strength to a lower one. Volumes are taken to add up.
 *
 * @returns The thinner and the total, mL.
 * @throws RangeError where an input is outside its limits or the wanted strength is above what there is.
 * Source: what is dissolved stays; strength times volume is the same before and after.
 * @example
 * ```ts
 * import { dilution } from '@scantling/finishing';
 * // 400 mL at 50 % hold 200 mL of solids, which are 40 % of 500 mL
 * dilution({ fromPct: 50, toPct: 40, volumeMl: 400 }) // => { thinnerMl: 100, totalMl: 500 }
 * ```
 */
export function dilution(input: DilutionInput): Dilution {
  requireInputs('dilution', input, limits);
  const { fromPct, toPct, volumeMl } = input;
  requireThat('dilution', toPct <= fromPct, `toPct at most fromPct, got ${toPct} and ${fromPct}`);
  return {
    thinnerMl: plusZero((volumeMl * (fromPct - toPct)) / toPct),
    totalMl: plusZero((volumeMl * fromPct) / toPct),
  };
}

export const dilutionRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/dilution',
  title: 'From one strength to a lower one',
  summary: 'How much thinner to add to a liquid of known strength, so that it has the strength wanted.',
  basis: 'derived',
  inputs: {
    fromPct: { kind: 'number', label: 'Strength there is', unit: '%', ...limits.fromPct },
    toPct: { kind: 'number', label: 'Strength wanted', unit: '%', ...limits.toPct },
    volumeMl: { kind: 'number', label: 'Volume there is', unit: 'mL', ...limits.volumeMl },
  },
  outputs: {
    thinnerMl: { label: 'Thinner to add', unit: 'mL' },
    totalMl: { label: 'Makes', unit: 'mL' },
  },
  compute: dilution,
  formula: String.raw`c_1 V_1 = c_2 V_2, \qquad V = V_2 - V_1`,
  symbols: {
    c_1: 'strength there is',
    V_1: 'volume there is',
    c_2: 'strength wanted',
    V_2: 'what it makes',
    V: 'thinner to add',
  },
  inSymbols: (input, output) => ({
    c_1: input.fromPct,
    V_1: input.volumeMl,
    c_2: input.toPct,
    V_2: output.totalMl,
    V: output.thinnerMl,
  }),
  requires: [
    { says: 'the wanted strength at most what there is', holds: ({ fromPct, toPct }) => toPct <= fromPct },
  ],
  sources: [{ source: dilutionAnswer2017, at: 'explanation: the dilution formula', confirmed: 'text' }],
  examples: [
    {
      given: { fromPct: 70, toPct: 40, volumeMl: 300 },
      expect: { thinnerMl: '225', totalMl: '525' },
      from: { source: dilutionAnswer2017, at: 'answer', confirmed: 'text' },
    },
  ],
  laws: [
    { of: 'thinnerMl', by: { volumeMl: 'proportional', fromPct: 'increasing', toPct: 'decreasing' } },
    { of: 'totalMl', by: { volumeMl: 'proportional', fromPct: 'increasing', toPct: 'decreasing' } },
  ],
  cautions: [thinWithin, oilyRags, solvents, productSheet],
}));
