import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  equalSpacing,
  formatLength,
  nearestMark,
  parseLength,
  stackUp,
  steppingError,
  sumOfReadings,
} from '../src/index.ts';

/** Readings from an inch tape, a rule in decimal inches and a metric tape: as text, and exactly in mm. */
const reading = fc.oneof(
  fc
    .tuple(fc.integer({ min: 0, max: 20_000 }), fc.constantFrom(8, 16, 32, 64))
    .map(([top, bottom]) => ({ text: `${top}/${bottom} in`, mm: new Fraction(top, bottom).mul(254, 10) })),
  fc
    .integer({ min: 0, max: 9_999_999 })
    .map((n) => ({ text: `${n / 1e5} in`, mm: new Fraction(n, 1e5).mul(254, 10) })),
  fc.integer({ min: 0, max: 999_999 }).map((n) => ({ text: `${n / 100} mm`, mm: new Fraction(n, 100) })),
);
const plainText = /^[\d./]+ \w+$/;
const readings = fc.array(
  reading.filter(({ text }) => plainText.test(text)),
  { minLength: 1, maxLength: 40 },
);
const sum = (texts: readonly string[]) =>
  sumOfReadings({ readingsMm: texts.map((text) => parseLength(text)) }).sumMm;

describe('sum of readings', () => {
  test('31 7/16 in + 0.41 in is 31.8475 in, worked by hand, exactly when shown', () => {
    const total = sum(['31 7/16 in', '0.41 in']);
    expect(formatLength(total, { unit: 'in', decimals: 4 })).toBe('31.8475 in');
    expect(formatLength(total, { unit: 'in', decimals: 5 })).toBe('31.84750 in');
  });

  test('agrees with fraction.js, which adds exactly', () => {
    fc.assert(
      fc.property(readings, (list) => {
        const exact = list.reduce((total, { mm }) => total.add(mm), new Fraction(0));
        expect(sum(list.map(({ text }) => text))).toBe(exact.valueOf());
      }),
      { numRuns: 2000 },
    );
  });

  test('is the same in any order', () => {
    const lengths = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), {
      minLength: 1,
      maxLength: 50,
    });
    fc.assert(
      fc.property(
        lengths.chain((list) =>
          fc.tuple(
            fc.constant(list),
            fc.shuffledSubarray(list, { minLength: list.length, maxLength: list.length }),
          ),
        ),
        ([readingsMm, shuffled]) => {
          expect(sumOfReadings({ readingsMm: shuffled })).toEqual(sumOfReadings({ readingsMm }));
        },
      ),
    );
  });

  test('a thousand 64ths do not drift, and a reading and its negative leave nothing', () => {
    const readingsMm = Array.from({ length: 1000 }, () => 25.4 / 64);
    expect(sumOfReadings({ readingsMm }).sumMm).toBe(396.875); // 1000 × 0.396875
    const half = 25.4 / 128; // 198 437.5 nm
    expect(sumOfReadings({ readingsMm: [half, -half] })).toEqual({ sumMm: 0 });
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (mm) => {
        expect(sumOfReadings({ readingsMm: [mm, -mm] })).toEqual({ sumMm: 0 });
      }),
    );
  });
});

const tolerances = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 30 });
const stackOf = (tolerancesMm: readonly number[]) =>
  stackUp({ lengthsMm: tolerancesMm.map(() => 1), tolerancesMm });

describe('stack-up', () => {
  test('root-sum-square lies between the largest tolerance and the worst case', () => {
    fc.assert(
      fc.property(tolerances, (list) => {
        const { worstCaseMm, rootSumSquareMm } = stackOf(list);
        const rounding = 1e-6 * list.length; // the worst case is taken to the nanometre
        expect(rootSumSquareMm).toBeGreaterThanOrEqual(Math.max(...list) * (1 - 1e-12));
        expect(rootSumSquareMm).toBeLessThanOrEqual(worstCaseMm + rounding);
        expect(worstCaseMm).toBeLessThanOrEqual(Math.sqrt(list.length) * rootSumSquareMm + rounding);
      }),
    );
  });

  test('equal tolerances: n times one, and the square root of n times one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 1, max: 10_000 }), (n, micrometres) => {
        const { worstCaseMm, rootSumSquareMm } = stackOf(Array.from({ length: n }, () => micrometres / 1000));
        expect(worstCaseMm).toBeCloseTo((n * micrometres) / 1000, 9);
        expect(rootSumSquareMm).toBeCloseTo((Math.sqrt(n) * micrometres) / 1000, 9);
      }),
    );
  });
});

const division = fc.record({
  startMm: fc.double({ min: -1e4, max: 1e4, noNaN: true }),
  lengthMm: fc.double({ min: 0, max: 1e4, noNaN: true }),
  spaces: fc.integer({ min: 1, max: 300 }),
});

describe('equal spacing', () => {
  test('the spaces make up the length, and each of them is the pitch', () => {
    fc.assert(
      fc.property(division, (input) => {
        const { pitchMm, positionsMm } = equalSpacing({ ...input, ends: 'marked' });
        expect(positionsMm).toHaveLength(input.spaces + 1);
        expect(positionsMm[0]).toBe(input.startMm + 0);
        expect(positionsMm.at(-1)).toBeCloseTo(input.startMm + input.lengthMm, 9);
        for (const [i, at] of positionsMm.entries()) {
          expect(Math.abs(at - (input.startMm + (i * input.lengthMm) / input.spaces))).toBeLessThan(1e-10);
        }
        const spacesMm = positionsMm.slice(1).map((at, i) => at - (positionsMm[i] as number));
        for (const space of spacesMm) expect(Math.abs(space - pitchMm)).toBeLessThan(1e-10);
      }),
    );
  });

  test('open ends leave the first and the last mark out', () => {
    fc.assert(
      fc.property(division, (input) => {
        const open = equalSpacing({ ...input, ends: 'open' });
        const marked = equalSpacing({ ...input, ends: 'marked' });
        expect(open.positionsMm).toEqual(marked.positionsMm.slice(1, -1));
        expect(open.pitchMm).toBe(marked.pitchMm);
      }),
    );
  });

  test('a single space with open ends has no mark', () => {
    const input = { startMm: 10, lengthMm: 100, spaces: 1, ends: 'open' } as const;
    expect(equalSpacing(input)).toEqual({ pitchMm: 100, positionsMm: [] });
  });
});

const layout = fc.record({
  pitchMm: fc.integer({ min: 1000, max: 500_000 }).map((micrometres) => micrometres / 1000),
  marks: fc.integer({ min: 1, max: 60 }),
  tapeStepMm: fc.constantFrom(0.5, 1, 25.4 / 16, 25.4 / 32),
});

describe('stepping error', () => {
  test('from the datum each mark is the nearest on the tape, stepped off each repeats the first', () => {
    fc.assert(
      fc.property(layout, (input) => {
        const { fromDatumMm, steppedMm } = steppingError(input);
        for (let i = 1; i <= input.marks; i++) {
          const mark = nearestMark({ lengthMm: i * input.pitchMm, stepMm: input.tapeStepMm });
          expect(fromDatumMm[i - 1]).toBeCloseTo(-mark.offsetMm, 5);
          expect(steppedMm[i - 1]).toBeCloseTo(i * (steppedMm[0] as number), 9);
        }
        expect(fromDatumMm[0]).toBe(steppedMm[0]);
      }),
    );
  });

  test('the datum keeps every mark within half a step; stepping does not', () => {
    let beyond = 0;
    fc.assert(
      fc.property(layout, (input) => {
        const { fromDatumWorstMm, steppedWorstMm } = steppingError(input);
        expect(fromDatumWorstMm).toBeLessThanOrEqual(input.tapeStepMm / 2 + 1e-9);
        if (steppedWorstMm > input.tapeStepMm / 2) beyond += 1;
      }),
    );
    expect(beyond).toBeGreaterThan(10);
  });

  test('agrees with fraction.js on the whole row', () => {
    fc.assert(
      fc.property(layout, ({ pitchMm, marks, tapeStepMm }) => {
        const pitch = new Fraction(Math.round(pitchMm * 1e6), 1e6);
        const step = new Fraction(Math.round(tapeStepMm * 1e6), 1e6);
        const error = (place: Fraction) => place.roundTo(step).sub(place);
        const { fromDatumMm, steppedMm } = steppingError({ pitchMm, marks, tapeStepMm });
        for (let i = 1; i <= marks; i++) {
          expect(fromDatumMm[i - 1]).toBe(error(pitch.mul(i)).valueOf());
          expect(steppedMm[i - 1]).toBe(error(pitch).mul(i).valueOf());
        }
      }),
    );
  });
});
