import fc from 'fast-check';
import { expect, test } from 'vitest';
import job from '../../src/jobs/seasonal-movement.ts';
import { throughTheYear } from '../../src/year.ts';
import { figuresOf, outcomeOf } from './figures.ts';

const at70F = (month: string, relativeHumidityPct: string) => ({
  month,
  temperatureC: `${(70 - 32) / 1.8}`,
  relativeHumidityPct,
});

test('red oak of 5 in, 6.2 to 9.2 %, which is 70 °F at 30 and 50 % (Wood Handbook, Table 4-2, from memory)', () => {
  // A flooring association’s example gives 0.055 in for three points, 5 × 0.00369 × 3. The table is to 0.1 points.
  const figures = figuresOf(job, {
    coefficientPerPct: '0.00369',
    widthMm: '5 in',
    moisturePct: '6.2',
    readings: [at70F('2', '30'), at70F('8', '50')],
  });
  const tenthOfAPoint = 5 * 0.00369 * 0.1;
  expect(Math.abs((figures.totalMm as number) / 25.4 - 0.055)).toBeLessThan(tenthOfAPoint + 0.0005);
  expect(Math.abs(figures.driestChangeMm as number) / 25.4).toBeLessThan(tenthOfAPoint);
});

test('held in the middle each edge gets half of what one edge gets', () => {
  const [middle, edge] = ['middle', 'edge'].map((held) => figuresOf(job, { held }));
  expect(edge?.roomMm).toBeCloseTo(2 * (middle?.roomMm as number), 12);
  expect(edge?.openMm).toBeCloseTo(edge?.totalMm as number, 12);
});

test('a panel wetter than all year only shrinks, and needs no room to swell', () => {
  const { roomMm, wettestChangeMm } = figuresOf(job, { moisturePct: '14' });
  expect(roomMm).toBe(0);
  expect(wettestChangeMm).toBeLessThan(0);
  expect(outcomeOf(job, { moisturePct: '14' }).notes?.join()).toContain('wetter than in any month');
});

test('a month has one reading', () => {
  const readings = [at70F('2', '30'), at70F('2', '50')];
  expect(() => outcomeOf(job, { readings })).toThrow('two for February');
});

test('between months that are known the year goes straight and stays between them', () => {
  const months = fc.uniqueArray(fc.integer({ min: 0, max: 11 }), { minLength: 1 });
  const percent = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 12, maxLength: 12 });
  fc.assert(
    fc.property(months, percent, (known, pct) => {
      const sorted = [...known].sort((a, b) => a - b);
      const year = throughTheYear(sorted.map((month) => ({ month, moisturePct: pct[month] as number })));
      const values = sorted.map((month) => pct[month] as number);
      expect(year.length).toBe(12);
      for (const month of sorted) expect(year[month]).toBe(pct[month]);
      for (const [month, value] of year.entries()) {
        expect(value).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
        expect(value).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        if (known.includes(month)) continue;
        const [before, after] = [year.at(month - 1) as number, year[(month + 1) % 12] as number];
        expect(value).toBeCloseTo((before + after) / 2, 9);
      }
    }),
  );
});
