import { defineRule, requireInputs } from '@scantling/rules';
import { toleranceAccumulation2008 } from '@scantling/rules/sources';
import { NM_PER_MM } from '../length/ticks.ts';

const limits = {
  pitchMm: { min: 0.001, max: 10_000 },
  marks: { min: 1, max: 1000, integer: true },
  tapeStepMm: { min: 0.001, max: 10_000 },
} as const;

export interface SteppingErrorInput {
  /** True distance from one mark to the next, mm, 0.001 to 10 000. */
  readonly pitchMm: number;
  /** How many marks after the datum, 1 to 1000. */
  readonly marks: number;
  /** Distance between the marks of the tape, mm, 0.001 to 10 000; 1/16 in is 1.5875. */
  readonly tapeStepMm: number;
}

export interface SteppingError {
  /** Error of each mark that is read off the tape from the datum, mm; positive where it lies too far out. */
  readonly fromDatumMm: readonly number[];
  /** Error of each mark that is stepped off from the one before, mm; positive where it lies too far out. */
  readonly steppedMm: readonly number[];
  /** The largest of the first, without its sign, mm: at most half a tape step. */
  readonly fromDatumWorstMm: number;
  /** The largest of the second, without its sign, mm. */
  readonly steppedWorstMm: number;
}

/**
 * What each mark is off by when a row of marks is laid out to the marks of a tape, in two ways: every mark from one
 * datum, or every mark stepped off from the one before. From the datum no mark is off by more than half a tape step;
 * stepped off, the rounding of the pitch is repeated and mark `i` is off by `i` times as much.
 *
 * @returns Two errors for each mark and the largest of each, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: ASME Y14.5, 2.6, as retold (chain against base line dimensioning); the arithmetic follows from rounding.
 * @example
 * ```ts
 * import { steppingError } from '@scantling/units';
 * // 40.3 mm between marks, laid out with a tape in whole millimetres
 * const { fromDatumMm, steppedMm } = steppingError({ pitchMm: 40.3, marks: 4, tapeStepMm: 1 });
 * fromDatumMm // => [-0.3, 0.4, 0.1, -0.2]
 * steppedMm // => [-0.3, -0.6, -0.9, -1.2]
 * ```
 */
export function steppingError(input: SteppingErrorInput): SteppingError {
  requireInputs('steppingError', input, limits);
  const { pitchMm, marks, tapeStepMm } = input;
  const pitchNm = Math.round(pitchMm * NM_PER_MM);
  const stepNm = Math.round(tapeStepMm * NM_PER_MM);
  const errorNm = (placeNm: number) => Math.round(placeNm / stepNm) * stepNm - placeNm;
  const oneStepNm = errorNm(pitchNm);
  const fromDatumMm: number[] = [];
  const steppedMm: number[] = [];
  for (let i = 1; i <= marks; i++) {
    fromDatumMm.push(errorNm(i * pitchNm) / NM_PER_MM);
    steppedMm.push((i * oneStepNm) / NM_PER_MM);
  }
  const largest = (errorsMm: readonly number[]) => Math.max(...errorsMm.map(Math.abs));
  return {
    fromDatumMm,
    steppedMm,
    fromDatumWorstMm: largest(fromDatumMm),
    steppedWorstMm: largest(steppedMm),
  };
}

export const steppingErrorRule = /* @__PURE__ */ defineRule(() => ({
  id: 'units/stepping-error',
  title: 'Marks from one datum against marks stepped off',
  summary:
    'What each mark of a row is off by when it is laid out with a tape, from one datum or step by step.',
  basis: 'derived',
  inputs: {
    pitchMm: { kind: 'number', label: 'True pitch', unit: 'mm', ...limits.pitchMm },
    marks: { kind: 'number', label: 'Marks after the datum', unit: '1', ...limits.marks },
    tapeStepMm: {
      kind: 'number',
      label: 'Step of the tape',
      unit: 'mm',
      ...limits.tapeStepMm,
      help: 'The distance between its marks: 1 mm, or 1.5875 mm for sixteenths of an inch.',
    },
  },
  outputs: {
    fromDatumMm: { label: 'Error of each mark, from the datum', unit: 'mm' },
    steppedMm: { label: 'Error of each mark, stepped off', unit: 'mm' },
    fromDatumWorstMm: { label: 'Largest error, from the datum', unit: 'mm' },
    steppedWorstMm: { label: 'Largest error, stepped off', unit: 'mm' },
  },
  compute: steppingError,
  formula: String.raw`e_i = s\,\mathrm{round}\!\left(\frac{i\,p}{s}\right) - i\,p, \qquad E_i = i\,e_1`,
  symbols: {
    e_i: 'error of mark i from the datum',
    E_i: 'error of mark i stepped off',
    p: 'true pitch',
    s: 'step of the tape',
  },
  sources: [
    {
      source: toleranceAccumulation2008,
      at: 'chain dimensioning gives the greatest variation, base line dimensioning less',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { pitchMm: 40.3, marks: 4, tapeStepMm: 1 },
      expect: {
        fromDatumMm: ['-0.3', '0.4', '0.1', '-0.2'],
        steppedMm: ['-0.3', '-0.6', '-0.9', '-1.2'],
        fromDatumWorstMm: '0.400',
        steppedWorstMm: '1.200',
      },
      from: {
        workedByHand:
          'the places 40.3, 80.6, 120.9, 161.2 are read as 40, 81, 121, 161: 40 − 40.3 = −0.3; 81 − 80.6 = 0.4; 121 − 120.9 = 0.1; 161 − 161.2 = −0.2; stepped off at 40: 80 − 80.6 = −0.6; 120 − 120.9 = −0.9; 160 − 161.2 = −1.2, without its sign 1.2',
      },
    },
    {
      given: { pitchMm: 32, marks: 4, tapeStepMm: 1.5875 },
      expect: {
        fromDatumMm: ['-0.2500', '-0.5000', '-0.7500', '0.5875'],
        steppedMm: ['-0.2500', '-0.5000', '-0.7500', '-1.0000'],
        fromDatumWorstMm: '0.7500',
        steppedWorstMm: '1.0000',
      },
      from: {
        workedByHand:
          'in sixteenths of an inch: 32 ÷ 1.5875 = 20.157, and 20 × 1.5875 − 32 = −0.25; 64 ÷ 1.5875 = 40.315, and 40 × 1.5875 − 64 = −0.5; 96 ÷ 1.5875 = 60.472, and 60 × 1.5875 − 96 = −0.75, without its sign 0.75; 128 ÷ 1.5875 = 80.630, and 81 × 1.5875 − 128 = 0.5875; stepped off at 31.75: 4 × 31.75 − 128 = −1, without its sign 1',
      },
    },
  ],
  laws: [
    { of: 'steppedWorstMm', by: { marks: 'proportional' } },
    { of: 'fromDatumWorstMm', by: { marks: 'increasing' } },
  ],
}));
