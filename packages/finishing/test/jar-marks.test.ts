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
        fc.pre(input.batchMl / input.innerDiameterMm ** 2 > 0.01);
        const { marks, offByPct } = jarMarks({ ...input, ...ruler } as JarMarksInput);
        const stepMm = 'stepMm' in ruler ? ruler.stepMm : 25.4 / 16;
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
    [{ parts: [1, 1], batchMl: 0, innerDiameterMm: 80, stepMm: 1 }, 'jarMarks requires batchMl high enough'],
    [
      { parts: [1], batchMl: 10, innerDiameterMm: 4, stepMm: 1 },
      'jarMarks requires innerDiameterMm between 5 and 2000',
    ],
    [
      { parts: [], batchMl: 10, innerDiameterMm: 40, stepMm: 1 },
      'mixByParts requires parts to have 1 to 12 numbers',
    ],
    [
      { parts: [1], batchMl: 10, innerDiameterMm: 40, stepMm: 0 },
      'nearestMark requires stepMm between 0.001',
    ],
    [
      { parts: [1], batchMl: 10, innerDiameterMm: 40, denominator: 3 },
      'nearestMark requires denominator to be one of',
    ],
  ])('refuses %o', (input, says) => {
    expect(() => jarMarks(input as JarMarksInput)).toThrow(says);
  });
});
