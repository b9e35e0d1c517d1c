import { expect, test } from 'vitest';
import job from '../../src/jobs/depth-stop.ts';
import { figuresOf, outcomeOf } from './figures.ts';

test('the screw of the bindery bench, by hand', () => {
  // Under the head 1.6 + 4 = 5.6; over it to the face 5.6 + 44.45 = 50.05.
  const figures = figuresOf(job);
  expect(figures.stockAboveTipMm).toBeCloseTo(50.05 - 40, 9);
  expect(figures.longestMm).toBeCloseTo(50.05 - 8, 9);
  expect(figures.penetrationMm).toBeCloseTo(40 - 5.6, 9);
  // Thread from 40 − 28 = 12 to 40 − 5 = 35; shank in the wood 12 − 5.6 = 6.4.
  expect(figures.threadInWoodMm).toBeCloseTo(23, 9);
  // Through the rail of 4: 4 + 34.4 + 2 for the thread, 4 + 6.4 + 2.5 for the shank.
  expect(figures.leadStopMm).toBeCloseTo(40.4, 9);
  expect(figures.shankStopMm).toBeCloseTo(12.9, 9);
});

test('the longest screw that it names will do, and one a little longer will not', () => {
  // 5.6 + 44.45 − 8 = 42.05; its lead hole stops short of the tip, as bits have points.
  const texts = { leadHolePct: '50' };
  expect(outcomeOf(job, { ...texts, screwLengthMm: '42.05' }).verdict?.good).toBe(true);
  expect(outcomeOf(job, { ...texts, screwLengthMm: '42.1' }).verdict?.good).toBe(false);
});

test('sentences say lengths in the unit chosen', () => {
  const inMillimetres = Object.entries(job.first).map(([name, text]) => [
    name,
    /^[\d.]+$/.test(`${text}`) && name !== 'leadHolePct' ? `${text} mm` : text,
  ]);
  const { verdict, reasons = [] } = outcomeOf(job, {
    ...Object.fromEntries(inMillimetres),
    screwLengthMm: '2 1/8 in',
    'length-unit': 'in',
  });
  // 2.125 − 50.05 / 25.4 = 0.1545 in; the planner says it to 0.01 mm.
  expect(verdict).toEqual({
    good: false,
    says: expect.stringContaining('comes through the face by 0.15'),
  });
  expect(verdict?.says).not.toMatch(/\d mm/);
  expect(reasons).toEqual([]);
});
