import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type JarMarksInput, jarMarks, mixByParts } from '../src/index.ts';

describe('jarMarks', () => {
  const jar = fc.record({
    parts: fc.array(numberArb({ min: 0.5, max: 20 }), { minLength: 1, maxLength: 5 }),
    batchMl: numberArb({ min: 100, max: 3000 }),
    innerDiameterMm: numberArb({ min: 40, max: 200 }),
  });

  test('a fine ruler pours the mix itself', () => {
    fc.assert(
      fc.property(jar, (input) => {
        const { marks, partMm, offByPct } = jarMarks({ ...input, stepMm: 0.001 });
        const { partMl, volumesMl } = mixByParts(input);
        expect(partMm * Math.PI * (input.innerDiameterMm / 2) ** 2).toBeCloseTo(partMl * 1000, 3);
        const areaMm2 = Math.PI * (input.innerDiameterMm / 2) ** 2;
        marks.forEach(({ volumeMl }, i) => {
          expect(Math.abs(volumeMl - (volumesMl[i] ?? Number.NaN))).toBeLessThanOrEqual(
            0.00101 * (areaMm2 / 1000),
          );
        });
        expect(offByPct).toBeLessThan(0.2);
      }),
    );
  });

  test('marks lie within half a step of the true height, and errors do not add up', () => {
    fc.assert(
      fc.property(jar, fc.constantFrom({ stepMm: 1 }, { denominator: 16 } as const), (input, ruler) => {
        const stepMm = 'stepMm' in ruler ? ruler.stepMm : 25.4 / 16;
        const { partMl, volumesMl } = mixByParts(input);
        const lowMm = (Math.min(...volumesMl) * 4000) / (Math.PI * input.innerDiameterMm ** 2);
        // Marks a step apart or more are never the same; closer ones are refused where they are.
        fc.pre(partMl > 0 && lowMm > stepMm * 1.001);
        const { marks, offByPct } = jarMarks({ ...input, ...ruler } as JarMarksInput);
        for (const { heightMm, markMm, ticks } of marks) {
          expect(Math.abs(markMm - heightMm)).toBeLessThanOrEqual(stepMm / 2 + 1e-6);
          expect(markMm).toBeCloseTo(ticks * stepMm, 6);
        }
        expect(offByPct).toBeGreaterThanOrEqual(0);
        // A share is off by no more than two halves of a step at its own marks and one in the whole.
        expect(offByPct).toBeLessThanOrEqual(
          (100 * 1.5 * stepMm) / (marks.at(-1)?.markMm ?? Number.NaN) + 1e-6,
        );
      }),
    );
  });

  test('leaves no liquid out: every one has a mark of its own, or the jar is refused', () => {
    let refused = 0;
    const small = jar.map((input) => ({ ...input, batchMl: input.batchMl / 10 }));
    fc.assert(
      fc.property(small, fc.constantFrom({ stepMm: 1 }, { denominator: 16 } as const), (input, ruler) => {
        const stepMm = 'stepMm' in ruler ? ruler.stepMm : 25.4 / 16;
        try {
          for (const { volumeMl } of jarMarks({ ...input, ...ruler } as JarMarksInput).marks)
            expect(volumeMl).toBeGreaterThan(0);
        } catch (error) {
          if (!(error instanceof RangeError)) throw error;
          refused += 1;
          expect(error.message).toMatch(/^jarMarks requires a finer ruler/);
          const lowMm =
            (Math.min(...mixByParts(input).volumesMl) * 4000) / (Math.PI * input.innerDiameterMm ** 2);
          expect(lowMm).toBeLessThan(stepMm * 1.001);
        }
      }),
    );
    expect(refused).toBeGreaterThan(10);
  });

  // Worked by hand: 6 in² of a jar would be easier, but a jar of 100 mm holds 7.85398 mL to the millimetre: 300 mL stand
  // 38.197 mm high, 24/16 in is 38.1 mm; 450 mL stand 57.296 mm, 36/16 in is 57.15 mm.
  test('of two parts to one in a jar of 100 mm, in sixteenths, worked by hand', () => {
    const { marks, offByPct } = jarMarks({
      parts: [2, 1],
      batchMl: 450,
      innerDiameterMm: 100,
      denominator: 16,
    });
    expect(marks.map(({ ticks, markMm }) => [ticks, markMm])).toEqual([
      [24, 38.1],
      [36, 57.15],
    ]);
    expect(marks[0]?.heightMm).toBeCloseTo(38.197, 3);
    expect(marks[1]?.heightMm).toBeCloseTo(57.296, 3);
    // What is poured from mark to mark: 38.1 and 19.05 mm of 7.85398 mL, still two to one.
    expect(marks[0]?.volumeMl).toBeCloseTo(299.237, 3);
    expect(marks[1]?.volumeMl).toBeCloseTo(149.618, 3);
    expect(offByPct).toBeCloseTo(0, 9);
  });

  test.each<[object, string]>([
    [{ parts: [1, 1], batchMl: 0, innerDiameterMm: 80, stepMm: 1 }, 'jarMarks requires a finer ruler'],
    // The hardener stood at the mark of the resin, 3 mm, and was left out.
    [
      { parts: [10, 1], batchMl: 20, innerDiameterMm: 90, stepMm: 1 },
      'jarMarks requires a finer ruler or a larger batchMl to mark parts[1], got 3 mm again',
    ],
    [
      { parts: [2, 1], batchMl: 600, innerDiameterMm: 90, stepMm: 1, denominator: 16 },
      'jarMarks requires denominator or stepMm, got 16 and 1',
    ],
    [undefined as unknown as object, 'jarMarks requires batchMl between 0 and 1000000, got undefined'],
    [
      { parts: [1], batchMl: 10, innerDiameterMm: 40 },
      'jarMarks requires stepMm between 0.001 and 1000, got undefined',
    ],
    [
      { parts: [1], batchMl: 10, innerDiameterMm: 4, stepMm: 1 },
      'jarMarks requires innerDiameterMm between 5 and 2000',
    ],
    [
      { parts: [], batchMl: 10, innerDiameterMm: 40, stepMm: 1 },
      'jarMarks requires parts to have 1 to 12 numbers',
    ],
    [{ parts: [1], batchMl: 10, innerDiameterMm: 40, stepMm: 0 }, 'jarMarks requires stepMm between 0.001'],
    [
      { parts: [1], batchMl: 10, innerDiameterMm: 40, denominator: 3 },
      'jarMarks requires denominator to be one of',
    ],
  ])('refuses %o', (input, says) => {
    expect(() => jarMarks(input as JarMarksInput)).toThrow(says);
  });
});
