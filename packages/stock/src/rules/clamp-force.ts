import { checkRange, defineRule, type RangeNote, type RuleRange, requireInputs } from '@scantling/rules';
import { gluePressureColumn2014, woodHandbook2010 } from '@scantling/rules/sources';
import { clampsUnderLoad, glueLabel } from '../cautions.ts';

const limits = {
  pressureMPa: { min: 0, max: 5 },
  lengthMm: { min: 1, max: 20_000 },
  thicknessMm: { min: 1, max: 1000 },
} as const;

export interface ClampForceInput {
  /** Pressure on the glue line, MPa, 0 to 5. */
  readonly pressureMPa: number;
  /** Length of the joint, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** Thickness of the boards, mm, 1 to 1000. */
  readonly thicknessMm: number;
}

export interface ClampForce {
  /** All clamps together, N. */
  readonly forceN: number;
}

/**
 * The force that all clamps together put on an edge joint for a pressure on its glue line. It goes through every joint
 * of the panel, so that more joints do not ask for more.
 *
 * @returns The force of all clamps together, N.
 * @throws RangeError where an input is outside its limits.
 * Source: force is pressure times area; a wood technologist's column on edge gluing. Published pressures: Wood
 * Handbook (FPL-GTR-190), ch. 10, from 0.7 MPa for light woods to 1.7 MPa for the heaviest.
 * @example
 * ```ts
 * import { clampForce } from '@scantling/stock';
 * clampForce({ pressureMPa: 1, lengthMm: 1800, thicknessMm: 45 }).forceN // => 81000
 * ```
 */
export function clampForce(input: ClampForceInput): ClampForce {
  requireInputs('clampForce', input, limits);
  return { forceN: input.pressureMPa * input.lengthMm * input.thicknessMm + 0 };
}

/** What it takes, and where its source claims it. */
const range = (): RuleRange<ClampForceInput, ClampForce> => ({
  inputs: {
    pressureMPa: {
      kind: 'number',
      label: 'Pressure on the glue line',
      unit: 'MPa',
      ...limits.pressureMPa,
      help: 'The Wood Handbook has 0.7 MPa for light woods up to 1.7 MPa for the heaviest.',
    },
    lengthMm: { kind: 'number', label: 'Length of the joint', unit: 'mm', ...limits.lengthMm },
    thicknessMm: { kind: 'number', label: 'Thickness', unit: 'mm', ...limits.thicknessMm },
  },
  valid: { pressureMPa: [0.689, 1.704] },
});

/**
 * What lies outside the range that the source of `clampForce` claims, without the rest of its card.
 *
 * @returns One note for each figure outside the claimed range; none where all is inside.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), ch. 10, from 0.7 MPa for light woods to 1.7 MPa for the heaviest.
 * @example
 * ```ts
 * import { clampForceNotes } from '@scantling/stock';
 * clampForceNotes({ pressureMPa: 2, lengthMm: 1800, thicknessMm: 45 })[0].message // => 'Pressure on the glue line 2 MPa is outside 0.689 to 1.704 MPa, the range that the source claims.'
 * clampForceNotes({ pressureMPa: 1, lengthMm: 1800, thicknessMm: 45 }) // => []
 * ```
 */
export function clampForceNotes(input: ClampForceInput): RangeNote[] {
  requireInputs('clampForceNotes', input, limits);
  return checkRange(range(), input);
}

export const clampForceRule = /* @__PURE__ */ defineRule(() => {
  const PSI_IN_MPA = 0.006894757293168361;
  const column = (at: string) => ({ source: gluePressureColumn2014, at, confirmed: 'text' as const });
  const LBF_IN_N = 4.4482216152605;
  return {
    id: 'stock/clamp-force',
    title: 'Clamping force of an edge joint',
    summary:
      'The force that all clamps together put on the joints of a panel for a pressure on the glue line.',
    basis: 'derived',
    ...range(),
    outputs: { forceN: { label: 'All clamps together', unit: 'N' } },
    compute: clampForce,
    formula: String.raw`F = p \, L \, T`,
    symbols: { F: 'force of all clamps', p: 'pressure', L: 'length of the joint', T: 'thickness' },
    inSymbols: (input, output) => ({
      F: output.forceN,
      p: input.pressureMPa,
      L: input.lengthMm,
      T: input.thicknessMm,
    }),
    sources: [
      column('that pressure times area is the force, and that every joint gets all of it'),
      {
        source: woodHandbook2010,
        at: 'ch. 10, p. 10-16: 100 lb/in² for low-density wood, up to 247 lb/in² for the highest',
        confirmed: 'memory',
      },
    ],
    examples: [
      {
        given: { pressureMPa: 0.7, lengthMm: 1800, thicknessMm: 40 },
        expect: { forceN: '50400' },
        from: { workedByHand: '0.7 × 1800 × 40 = 50400 N' },
      },
      {
        given: { pressureMPa: 100 * PSI_IN_MPA, lengthMm: 254, thicknessMm: 25.4 },
        expect: { forceN: { printed: '1000', unit: 'lbf', times: LBF_IN_N } },
        from: column('1 in thick, 10 in long, 100 psi: 1,000 pounds'),
      },
      {
        given: { pressureMPa: 100 * PSI_IN_MPA, lengthMm: 508, thicknessMm: 25.4 },
        expect: { forceN: { printed: '2000', unit: 'lbf', times: LBF_IN_N } },
        from: column('1 in thick, 20 in long, 100 psi: 2,000 pounds'),
      },
    ],
    laws: [
      {
        of: 'forceN',
        by: { pressureMPa: 'proportional', lengthMm: 'proportional', thicknessMm: 'proportional' },
      },
    ],
    cautions: [clampsUnderLoad, glueLabel],
  };
});
