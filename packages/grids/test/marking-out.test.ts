import { numberArb } from '@scantling/tests-shared';
import { parseLength, steppingError } from '@scantling/units';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { markCentres, sharedCentres } from '../src/index.ts';

// Outside check: exact arithmetic by fraction.js, a general library.

const denominator = fc.constantFrom(2, 4, 8, 16, 32, 64) as fc.Arbitrary<2 | 4 | 8 | 16 | 32 | 64>;
const stepUm = fc.oneof(fc.constantFrom(100, 250, 500, 1000, 10_000), fc.integer({ min: 1, max: 100_000 }));
const tape = fc.oneof(
  denominator.map((d) => ({ given: { denominator: d }, step: new Fraction(254, 10 * d) })),
  stepUm.map((um) => ({ given: { stepMm: um / 1000 }, step: new Fraction(um, 1000) })),
);
const centresUm = fc.array(fc.integer({ min: -20_000_000, max: 20_000_000 }), {
  minLength: 1,
  maxLength: 40,
});

/** Distance to the nearest mark, exactly. */
const exactError = (um: number, step: Fraction) => {
  const quotient = new Fraction(um, 1000).div(step);
  const beyond = quotient.sub(quotient.floor());
  return beyond.compare(new Fraction(1, 2)) < 0 ? beyond.mul(step) : new Fraction(1).sub(beyond).mul(step);
};

/** A reading such as "3 1/16 in" or "-0.25 mm" as an exact length. */
function readExactly(text: string): Fraction {
  const [, sign, number = '', unit] = /^(-?)([\d./ ]+) (in|mm)$/.exec(text) ?? [];
  const parts = number.split(' ').map((part) => new Fraction(part));
  const size = parts.reduce((sum, part) => sum.add(part)).mul(unit === 'in' ? new Fraction(254, 10) : 1);
  return sign === '-' ? size.neg() : size;
}

describe('marks of hole centres', () => {
  test('lie at the exact nearest mark, never more than half a division off, and read as they lie', () => {
    fc.assert(
      fc.property(centresUm, tape, (um, { given, step }) => {
        const { marks } = markCentres({ centresMm: um.map((one) => one / 1000), ...given });
        expect(marks).toHaveLength(um.length);
        for (const [i, { markMm, text, errorMm }] of marks.entries()) {
          const centre = new Fraction(um[i] as number, 1000);
          const mark = readExactly(text);
          expect(mark.div(step).d).toBe(1n);
          expect(
            mark
              .sub(centre)
              .abs()
              .equals(exactError(um[i] as number, step)),
          ).toBe(true);
          expect(mark.sub(centre).abs().compare(step.div(2))).toBeLessThanOrEqual(0);
          expect(errorMm).toBeCloseTo(mark.sub(centre).valueOf(), 9);
          expect(markMm).toBeCloseTo(mark.valueOf(), 9);
          expect(parseLength(text)).toBeCloseTo(markMm, 9);
        }
      }),
    );
  });

  test('the worst one and those on a mark are what an exact search finds', () => {
    fc.assert(
      fc.property(centresUm, tape, (um, { given, step }) => {
        const { worstIndex, worstErrorMm, onMarkCount } = markCentres({
          centresMm: um.map((one) => one / 1000),
          ...given,
        });
        const errors = um.map((one) => exactError(one, step));
        const largest = errors.reduce((worst, error) => (error.compare(worst) > 0 ? error : worst));
        expect(worstIndex).toBe(errors.findIndex((error) => error.equals(largest)));
        expect(worstErrorMm).toBeCloseTo(largest.valueOf(), 9);
        expect(onMarkCount).toBe(errors.filter((error) => error.equals(0)).length);
      }),
    );
  });

  test('an even row is off as the datum column of the stepping error says, however long it is', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        stepUm,
        fc.integer({ min: 1, max: 60 }),
        (pitchUm, um, count) => {
          const stepMm = um / 1000;
          const centresMm = Array.from({ length: count }, (_, i) => ((i + 1) * pitchUm) / 1000);
          const { marks, worstErrorMm } = markCentres({ centresMm, stepMm });
          const row = steppingError({ pitchMm: pitchUm / 1000, marks: count, tapeStepMm: stepMm });
          expect(marks.map(({ errorMm }) => errorMm)).toEqual(row.fromDatumMm);
          expect(worstErrorMm).toBe(row.fromDatumWorstMm);
        },
      ),
    );
  });

  test('a shift by whole divisions changes no error; a finer tape is never worse', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 9_000_000 }), { minLength: 1, maxLength: 20 }),
        denominator,
        fc.integer({ min: 1, max: 800 }),
        (um, d, divisions) => {
          const centresMm = um.map((one) => one / 1000);
          const errors = (moveMm: number, per: typeof d) =>
            markCentres({ centresMm: centresMm.map((mm) => mm + moveMm), denominator: per }).marks.map(
              ({ errorMm }) => errorMm,
            );
          const here = errors(0, d);
          for (const [i, moved] of errors((divisions * 25.4) / d, d).entries()) {
            // Half a division rounds away from the datum on either side of it; the size stays.
            expect(Math.abs(moved)).toBeCloseTo(Math.abs(here[i] as number), 6);
          }
          const finer = errors(0, Math.min(64, 2 * d) as typeof d);
          for (const [i, error] of finer.entries()) {
            expect(Math.abs(error)).toBeLessThanOrEqual(Math.abs(here[i] as number));
          }
        },
      ),
    );
  });

  test('sixteenths of an inch and a step of 1.5875 mm are the same marks', () => {
    fc.assert(
      fc.property(centresUm, (um) => {
        const centresMm = um.map((one) => one / 1000);
        const marks = (tapeOf: { denominator: 16 } | { stepMm: number }) =>
          markCentres({ centresMm, ...tapeOf }).marks.map(({ markMm, errorMm }) => [markMm, errorMm]);
        expect(marks({ denominator: 16 })).toEqual(marks({ stepMm: 1.5875 }));
      }),
    );
  });

  test('the bindery bench: 15 holes at 96 mm from 78 mm, in sixteenths', () => {
    const centresMm = Array.from({ length: 15 }, (_, i) => 78 + 96 * i);
    const { marks, worstErrorMm, worstIndex } = markCentres({ centresMm, denominator: 16 });
    // By hand: 1422 mm is 55.984 in, 895.75 sixteenths, so 896: 56 in, 1422.4 mm.
    expect(marks[14]).toEqual({ centreMm: 1422, markMm: 1422.4, text: '56 in', errorMm: 0.4 });
    // 78 + 5 × 96 = 558 mm is 351.496 sixteenths: 351 of them are 557.2125 mm, almost the half division that is most.
    expect(marks[5]?.text).toBe('21 15/16 in');
    expect([worstIndex, worstErrorMm]).toEqual([5, 0.7875]);
  });

  test.each([
    [{ centresMm: [], denominator: 16 }, /^markCentres requires centresMm to have 1 to 20000 numbers, got 0/],
    [{ centresMm: [1, Number.NaN], denominator: 16 }, /centresMm\[1\] between -20000 and 20000, got NaN/],
    [{ centresMm: Array(20_001).fill(1), stepMm: 1 }, /1 to 20000 numbers, got 20001/],
    [{ centresMm: [1], denominator: 3 }, /denominator to be one of 2, 4, 8, 16, 32, 64, got 3/],
    [{ centresMm: [1], stepMm: 0 }, /stepMm between 0.001 and 1000, got 0/],
    [{ centresMm: [1] }, /stepMm between 0.001 and 1000, got undefined/],
    [undefined, /centresMm to be a list of numbers, got undefined/],
  ])('refuses %j', (input, message) => {
    expect(() => markCentres(input as never)).toThrow(RangeError);
    expect(() => markCentres(input as never)).toThrow(message);
  });

  test('never says −0', () => {
    const { marks } = markCentres({ centresMm: [-0, -0.1, 0.1], stepMm: 1 });
    for (const { centreMm, markMm, errorMm, text } of marks) {
      expect([centreMm, markMm, errorMm].some((value) => Object.is(value, -0))).toBe(false);
      expect(text).toBe('0 mm');
    }
  });
});

describe('holes that two pitches share', () => {
  const micrometres = (most: number) => fc.integer({ min: 1000, max: most });

  test('are those at multiples of the least common multiple, by fraction.js', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 2000 }),
        (pitchMm, otherPitchMm, count) => {
          const every = new Fraction(pitchMm).lcm(otherPitchMm).div(pitchMm).valueOf();
          const { sharedCount } = sharedCentres({ pitchMm, otherPitchMm, count, toleranceMm: 0 });
          expect(sharedCount).toBe(Math.floor((count - 1) / every) + 1);
        },
      ),
    );
  });

  test('are the centres on a mark of a tape with that step', () => {
    fc.assert(
      fc.property(
        micrometres(100_000),
        fc.oneof(fc.constant(32_000), micrometres(100_000)),
        fc.integer({ min: 1, max: 150 }),
        (pitchUm, otherUm, count) => {
          const [pitchMm, otherPitchMm] = [pitchUm / 1000, otherUm / 1000];
          const centresMm = Array.from({ length: count }, (_, i) => (i * pitchUm) / 1000);
          const { onMarkCount } = markCentres({ centresMm, stepMm: otherPitchMm });
          expect(sharedCentres({ pitchMm, otherPitchMm, count, toleranceMm: 0 }).sharedCount).toBe(
            onMarkCount,
          );
        },
      ),
    );
  });

  test('inches: every eighth hole at 3 in falls on a pitch of 8 in, by hand 24 in', () => {
    const row = { pitchMm: 76.2, otherPitchMm: 203.2, count: 17, toleranceMm: 0 };
    expect(sharedCentres(row).sharedCount).toBe(3);
  });

  test('all of them where the tolerance is half of the other pitch', () => {
    const pitch = numberArb({ min: 1, max: 190 });
    fc.assert(
      fc.property(pitch, pitch, fc.integer({ min: 1, max: 500 }), (pitchMm, otherPitchMm, count) => {
        const row = { pitchMm, otherPitchMm, count, toleranceMm: otherPitchMm / 2 + 1e-6 };
        expect(sharedCentres(row).sharedCount).toBe(count);
      }),
    );
  });
});
