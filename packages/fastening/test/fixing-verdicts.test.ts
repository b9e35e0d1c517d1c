import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planFixings } from '../src/index.ts';
import { inputArb, kindArbs } from './fixing-arbitraries.ts';

const screwsArb = inputArb(kindArbs.screw);

test('an opening is made round only where the screw does not travel, and long only where it does', () => {
  const seen = { round: 0, slot: 0 };
  fc.assert(
    fc.property(screwsArb, (input) => {
      for (const { fit, swellMm, shrinkMm } of planFixings(input).fixings) {
        if (fit.kind !== 'opening') throw new Error('a screw without an opening');
        const drilled = fit.work === 'drill it round' || fit.work === 'drill it larger';
        const slotted = fit.work === 'cut a slot' || fit.work === 'make it a slot';
        if (drilled) expect(Math.max(swellMm, shrinkMm)).toBeLessThanOrEqual(1e-9);
        if (slotted) expect(Math.max(swellMm, shrinkMm)).toBeGreaterThan(1e-9);
        seen.round += drilled ? 1 : 0;
        seen.slot += slotted ? 1 : 0;
      }
    }),
  );
  expect(Math.min(seen.round, seen.slot)).toBeGreaterThan(20);
});

test('a screw holds the top only on the fixed line; where none does the plan says so first', () => {
  const seen = { held: 0, loose: 0 };
  fc.assert(
    fc.property(inputArb(), (input) => {
      const { holding, cautions, fixings } = planFixings(input);
      seen[holding.length > 0 ? 'held' : 'loose'] += 1;
      expect(cautions.findIndex((each) => each.startsWith('Nothing holds the top'))).toBe(
        holding.length > 0 ? -1 : 0,
      );
      for (const { name, fit, swellMm, shrinkMm } of fixings) {
        if (!holding.includes(name)) continue;
        expect(fit.kind).toBe('opening');
        expect(Math.max(swellMm, shrinkMm)).toBeLessThanOrEqual(1e-9);
      }
    }),
  );
  expect(Math.min(seen.held, seen.loose)).toBeGreaterThan(5);
});

test('asked for more clearance no opening is shorter, no hole or groove may stay that could not, and nothing travels that did not', () => {
  const more = numberArb({ min: 0.1, max: 7 });
  let refused = 0;
  fc.assert(
    fc.property(inputArb(), more, (input, byMm) => {
      const [less, roomier] = [0, byMm].map((mm) =>
        planFixings({ ...input, clearanceMm: input.clearanceMm + mm }),
      );
      if (!less || !roomier) throw new Error('no plans');
      for (const name of roomier.stay) expect(less.stay).toContain(name);
      for (const name of less.becomeSlots) expect(roomier.becomeSlots).toContain(name);
      for (const [i, fixing] of less.fixings.entries()) {
        const other = roomier.fixings[i];
        if (!fixing.letsTravel) expect(other?.letsTravel).toBe(false);
        refused += fixing.letsTravel && !other?.letsTravel ? 1 : 0;
        if (!('lengthMm' in fixing.fit) || !other || !('lengthMm' in other.fit)) continue;
        expect(other.fit.lengthMm).toBeGreaterThanOrEqual(fixing.fit.lengthMm - 1e-9);
      }
    }),
    { numRuns: 200 },
  );
  expect(refused).toBeGreaterThan(5);
});

test('a groove is never named among the holes', () => {
  let short = 0;
  fc.assert(
    fc.property(inputArb(fc.oneof(kindArbs.sliding, kindArbs.screw)), (input) => {
      const plan = planFixings(input);
      for (const { name, fit } of plan.fixings) {
        if (fit.kind === 'opening') continue;
        expect([...plan.becomeSlots, ...plan.stay, ...plan.holding]).not.toContain(name);
        if (fit.kind !== 'groove') continue;
        expect(fit.work).toBe(
          fit.longerTowardsMm + fit.longerAwayMm > 0 ? 'lengthen the groove' : 'leave it as it is',
        );
        short += fit.work === 'lengthen the groove' ? 1 : 0;
      }
    }),
  );
  expect(short).toBeGreaterThan(20);
});
