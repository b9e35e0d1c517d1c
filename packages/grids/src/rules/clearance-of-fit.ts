import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { instructorTrainingDrawing } from '@scantling/rules/sources';

const size = { min: 0, max: 1000 } as const;
const limits = {
  holeLowerLimitMm: size,
  holeUpperLimitMm: size,
  shaftLowerLimitMm: size,
  shaftUpperLimitMm: size,
} as const;

export interface ClearanceOfFitInput {
  /** Smallest hole allowed, mm, 0 to 1000. */
  readonly holeLowerLimitMm: number;
  /** Largest hole allowed, mm, 0 to 1000. */
  readonly holeUpperLimitMm: number;
  /** Smallest shaft or pin allowed, mm, 0 to 1000. */
  readonly shaftLowerLimitMm: number;
  /** Largest shaft or pin allowed, mm, 0 to 1000. */
  readonly shaftUpperLimitMm: number;
}

export interface ClearanceOfFit {
  /** Smallest hole less largest shaft, mm; negative is interference. */
  readonly leastClearanceMm: number;
  /** Largest hole less smallest shaft, mm; negative is interference. */
  readonly mostClearanceMm: number;
}

/**
 * The least and the most play between one hole and one shaft or pin, measured on their diameters.
 *
 * @returns Both clearances, mm; negative where the shaft is the larger one.
 * @throws RangeError where an input is outside its limits, or an upper limit lies below its lower limit.
 * Source: the definitions of ISO 286-1, as a course book of engineering drawing states them.
 * @example
 * ```ts
 * import { clearanceOfFit } from '@scantling/grids';
 * // 20 H7/g6
 * clearanceOfFit({ holeLowerLimitMm: 20, holeUpperLimitMm: 20.021, shaftLowerLimitMm: 19.98, shaftUpperLimitMm: 19.993 }) // => { leastClearanceMm: 0.007, mostClearanceMm: 0.041 }
 * ```
 */
export function clearanceOfFit(input: ClearanceOfFitInput): ClearanceOfFit {
  requireInputs('clearanceOfFit', input, limits);
  const { holeLowerLimitMm, holeUpperLimitMm, shaftLowerLimitMm, shaftUpperLimitMm } = input;
  requireThat(
    'clearanceOfFit',
    holeUpperLimitMm >= holeLowerLimitMm,
    `holeUpperLimitMm at least holeLowerLimitMm, got ${holeUpperLimitMm} and ${holeLowerLimitMm}`,
  );
  requireThat(
    'clearanceOfFit',
    shaftUpperLimitMm >= shaftLowerLimitMm,
    `shaftUpperLimitMm at least shaftLowerLimitMm, got ${shaftUpperLimitMm} and ${shaftLowerLimitMm}`,
  );
  return {
    leastClearanceMm: plusZero(holeLowerLimitMm - shaftUpperLimitMm),
    mostClearanceMm: plusZero(holeUpperLimitMm - shaftLowerLimitMm),
  };
}

export const clearanceOfFitRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/clearance-of-fit',
  title: 'Clearance of a fit',
  summary: 'The least and the most play between a hole and a shaft or pin whose sizes have limits.',
  basis: 'exact',
  inputs: {
    holeLowerLimitMm: { kind: 'number', label: 'Smallest hole', unit: 'mm', ...size },
    holeUpperLimitMm: { kind: 'number', label: 'Largest hole', unit: 'mm', ...size },
    shaftLowerLimitMm: { kind: 'number', label: 'Smallest shaft or pin', unit: 'mm', ...size },
    shaftUpperLimitMm: { kind: 'number', label: 'Largest shaft or pin', unit: 'mm', ...size },
  },
  outputs: {
    leastClearanceMm: { label: 'Least clearance', unit: 'mm', help: 'Negative is interference.' },
    mostClearanceMm: { label: 'Most clearance', unit: 'mm', help: 'Negative is interference.' },
  },
  compute: clearanceOfFit,
  formula: String.raw`C_{\min} = D_{\min} - d_{\max} \qquad C_{\max} = D_{\max} - d_{\min}`,
  symbols: {
    'D_{\\min}, D_{\\max}': 'smallest and largest hole',
    'd_{\\min}, d_{\\max}': 'smallest and largest shaft',
  },
  requires: [
    {
      says: 'The largest hole is no smaller than the smallest.',
      holds: ({ holeLowerLimitMm, holeUpperLimitMm }) => holeUpperLimitMm >= holeLowerLimitMm,
    },
    {
      says: 'The largest shaft is no smaller than the smallest.',
      holds: ({ shaftLowerLimitMm, shaftUpperLimitMm }) => shaftUpperLimitMm >= shaftLowerLimitMm,
    },
  ],
  sources: [
    {
      source: instructorTrainingDrawing,
      at: 'pp. 219 and 220: maximum and minimum clearance, maximum and minimum interference',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: {
        holeLowerLimitMm: 20,
        holeUpperLimitMm: 20.021,
        shaftLowerLimitMm: 19.98,
        shaftUpperLimitMm: 19.993,
      },
      expect: { leastClearanceMm: '0.007', mostClearanceMm: '0.041' },
      from: { source: instructorTrainingDrawing, at: 'p. 219: clearance fit 20 H7/g6', confirmed: 'text' },
    },
    {
      given: {
        holeLowerLimitMm: 25,
        holeUpperLimitMm: 25.021,
        shaftLowerLimitMm: 25.022,
        shaftUpperLimitMm: 25.035,
      },
      expect: { leastClearanceMm: '-0.035', mostClearanceMm: '-0.001' },
      from: {
        source: instructorTrainingDrawing,
        at: 'p. 220: interference fit 25 H7/p6, interference 0.035 and 0.001',
        confirmed: 'text',
      },
    },
    {
      given: {
        holeLowerLimitMm: 75,
        holeUpperLimitMm: 75.046,
        shaftLowerLimitMm: 74.988,
        shaftUpperLimitMm: 75.018,
      },
      expect: { leastClearanceMm: '-0.018', mostClearanceMm: '0.058' },
      from: { source: instructorTrainingDrawing, at: 'p. 220: transition fit 75 H8/j7', confirmed: 'text' },
    },
  ],
  laws: [
    { of: 'leastClearanceMm', by: { holeLowerLimitMm: 'linear', shaftUpperLimitMm: 'linear' } },
    { of: 'leastClearanceMm', by: { holeLowerLimitMm: 'increasing', shaftUpperLimitMm: 'decreasing' } },
    { of: 'mostClearanceMm', by: { holeUpperLimitMm: 'linear', shaftLowerLimitMm: 'linear' } },
    { of: 'mostClearanceMm', by: { holeUpperLimitMm: 'increasing', shaftLowerLimitMm: 'decreasing' } },
  ],
}));
