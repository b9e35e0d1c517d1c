import fc from 'fast-check';
import { expect, test } from 'vitest';
import job from '../../src/jobs/read-and-add-tapes.ts';
import { figuresOf, outcomeOf } from './figures.ts';

test('three readings from three tapes, added by hand', () => {
  const { sumMm, inchTape, metricTape, partMm, worstCaseMm, rootSumSquareMm } = figuresOf(job);
  // 58 1/4 in is 58.25 × 25.4 = 1479.55; 3 11/16 in from the mark of 1 in is 2.6875 × 25.4 = 68.2625
  // 1479.55 − 68 − 68.2625 = 1343.2875, a twelfth of it 111.940625
  expect(sumMm).toBe(1343.2875);
  expect(partMm).toBeCloseTo(111.940625, 9);
  // 52 7/8 in is 52.875 × 25.4 = 1343.025; 1343.2875 − 1343.025 = 0.2625
  expect(inchTape).toBe('52\u00a07/8\u00a0in (4\u00a0ft\u00a04\u00a07/8\u00a0in) +\u00a00.26\u00a0mm');
  // 1343.2875 − 1343.5 = −0.2125
  expect(metricTape).toBe('1343.5\u00a0mm −\u00a00.21\u00a0mm');
  expect(worstCaseMm).toBe(1.5);
  expect(rootSumSquareMm).toBeCloseTo(0.5 * Math.sqrt(3), 12);
});

test('a tape held at one mark reads the same distance as at any other', () => {
  const mm = fc.integer({ min: 0, max: 10_000 });
  fc.assert(
    fc.property(mm, mm, (length, heldAt) => {
      const at = (start: number) => [
        { readingMm: `${start + length} mm`, heldAtMm: `${start} mm`, counts: 'added' },
      ];
      expect(figuresOf(job, { readings: at(heldAt) })).toEqual(figuresOf(job, { readings: at(0) }));
    }),
  );
});

test('a reading before the mark that the tape is held at is refused', () => {
  const readings = [{ readingMm: '20 mm', heldAtMm: '1 in', counts: 'added' }];
  expect(() => outcomeOf(job, { readings })).toThrow('reading 1 to lie beyond the mark');
});
