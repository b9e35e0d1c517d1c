import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlannedStrip } from '../src/index.ts';
import { checkOf, letIn, stripOf } from './shop-sections.ts';

describe('laws of a strip', () => {
  const some = fc.record({
    rabbetWidthMm: numberArb({ min: 20, max: 40 }),
    rabbetDepthMm: numberArb({ min: 0.5, max: 20 }),
    thicknessMm: numberArb({ min: 0.5, max: 20 }),
    expansionUmPerMK: numberArb({ min: 0, max: 200 }),
    buildingDayC: numberArb({ min: -10, max: 60 }),
    toleranceMm: numberArb({ min: 0, max: 1 }),
    endDistanceMm: numberArb({ min: 0, max: 200 }),
    mostPitchMm: numberArb({ min: 20, max: 1000 }),
  });

  test('turned end for end it is the same strip, its ends exchanged', () => {
    fc.assert(
      fc.property(some, numberArb({ min: 1, max: 60 }), (changes, xMm) => {
        const there = stripOf(letIn({ ...changes, fixedScrew: 'first' }, { xMm }));
        const mirrored = 1479.55 - 1400 - xMm;
        const back = stripOf(letIn({ ...changes, fixedScrew: 'last' }, { xMm: mirrored }));
        expect(back.start.gapMm).toBeCloseTo(there.end.gapMm, 6);
        expect(back.end.mostGapMm).toBeCloseTo(there.start.mostGapMm, 6);
        expect(back.rabbet.xMm).toBeCloseTo(1479.55 - there.rabbet.xMm - there.rabbet.lengthMm, 6);
        const lengths = there.screws.map(({ slot }) => slot?.lengthMm ?? 0);
        back.screws.forEach(({ slot }, i) => {
          expect(slot?.lengthMm ?? 0).toBeCloseTo(lengths.at(-1 - i) as number, 6);
        });
      }),
    );
  });

  test('rabbet and strip: the strip lies in it, and its gaps are its length beyond the strip', () => {
    fc.assert(
      fc.property(
        some,
        numberArb({ min: 0, max: 79.55 }),
        numberArb({ min: 0, max: 614.6 }),
        (changes, xMm, yMm) => {
          const part = stripOf(letIn({ ...changes, rabbetWidthMm: changes.rabbetWidthMm + 6 }, { xMm, yMm }));
          const { rabbet } = part;
          expect(rabbet.xMm).toBeLessThanOrEqual(xMm);
          expect(rabbet.yMm).toBeLessThanOrEqual(yMm);
          expect(rabbet.xMm + rabbet.lengthMm).toBeGreaterThanOrEqual(xMm + 1400 - 1e-6);
          expect(rabbet.yMm + rabbet.widthMm).toBeGreaterThanOrEqual(yMm + 25.4 - 1e-6);
          const gaps = part.start.gapMm + part.end.gapMm;
          if (xMm > 1e-5 && xMm < 79.54) expect(rabbet.lengthMm - 1400).toBeCloseTo(gaps, 6);
          expect(part.metalOutgrowsMm).toBeGreaterThanOrEqual(0);
          expect(part.woodOutgrowsMm).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  test('what is more patient never needs more slots, and a wider year never a smaller gap', () => {
    fc.assert(
      fc.property(
        some,
        numberArb({ min: 0, max: 2 }),
        numberArb({ min: 0, max: 5 }),
        (changes, more, warmer) => {
          const slots = (part: PlannedStrip) => part.screws.filter(({ slot }) => slot).length;
          const before = stripOf(letIn(changes));
          const patient = stripOf(letIn({ ...changes, toleranceMm: changes.toleranceMm + more }));
          expect(slots(patient)).toBeLessThanOrEqual(slots(before));
          const plan = letIn(changes);
          const { driest, wettest } = plan.seasons;
          const drier = {
            temperatureC: driest.temperatureC,
            relativeHumidityPct: driest.relativeHumidityPct - warmer,
          };
          const wider = stripOf({ ...plan, seasons: { driest: drier, wettest } });
          expect(wider.metalOutgrowsMm).toBeGreaterThanOrEqual(before.metalOutgrowsMm - 1e-9);
          expect(wider.end.gapMm).toBeGreaterThanOrEqual(before.end.gapMm - 1e-9);
        },
      ),
    );
  });

  test('a wider rabbet never fails for its width where a narrower passes', () => {
    fc.assert(
      fc.property(some, numberArb({ min: 0, max: 5 }), (changes, more) => {
        const narrow = (rabbetWidthMm: number) =>
          checkOf(letIn({ ...changes, rabbetWidthMm }, { yMm: 60 }), 'strip-rabbet').says.startsWith(
            'strip.rabbetWidth',
          );
        if (!narrow(changes.rabbetWidthMm)) expect(narrow(changes.rabbetWidthMm + more)).toBe(false);
      }),
      { numRuns: 40 },
    );
  });
});
