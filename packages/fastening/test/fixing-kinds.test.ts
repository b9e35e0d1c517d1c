import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planFixings } from '../src/index.ts';
import { daysOf, inputArb, kindArbs, placeOn, setOff } from './fixing-arbitraries.ts';

const day = numberArb({ min: 0, max: 1 });
const most = (list: readonly number[]) => Math.max(...list);
const least = (list: readonly number[]) => Math.min(...list);
const steps = (lastMm: number) => Array.from({ length: 101 }, (_, n) => (n / 100) * lastMm);

test('a tongue set as planned stays engaged, off the bottom and off the rail; where it is refused no setting does', () => {
  const seen = { holds: 0, fails: 0 };
  fc.assert(
    fc.property(inputArb(kindArbs.tongue), day, (input, someDay) => {
      const plan = planFixings(input);
      for (const [i, { yMm, fit, letsTravel }] of plan.fixings.entries()) {
        const by = input.fixings[i]?.by;
        if (by?.kind !== 'tongue' || fit.kind !== 'tongue') throw new Error('not a tongue');
        const { grooveDepthMm, tongueLengthMm, leastEngagedMm } = by;
        // The button moves with the top; its tip goes in where that is the way that it points.
        const deeper = daysOf(input, someDay).map((scale) => {
          const movedMm = placeOn(plan, yMm, scale) - yMm;
          return by.points === 'back' ? movedMm : -movedMm;
        });
        const worst = (engagedMm: number) => {
          const engaged = deeper.map((mm) => engagedMm + mm);
          return least([
            least(engaged) - leastEngagedMm,
            grooveDepthMm - most(engaged) - input.clearanceMm,
            tongueLengthMm - most(engaged) - input.clearanceMm,
          ]);
        };
        expect(letsTravel).toBe(fit.engagedMm !== null);
        seen[letsTravel ? 'holds' : 'fails'] += 1;
        if (fit.engagedMm === null) {
          expect(most(steps(grooveDepthMm).map(worst))).toBeLessThan(0);
          continue;
        }
        expect(worst(fit.engagedMm)).toBeGreaterThanOrEqual(-1e-6);
        expect((fit.shoulderGapMm as number) + fit.engagedMm).toBeCloseTo(tongueLengthMm, 9);
      }
    }),
  );
  expect(least(Object.values(seen))).toBeGreaterThan(20);
});

test('a screw beside a tab keeps clear of it and its washer stays on it; where it is refused no gap does', () => {
  const seen = { holds: 0, fails: 0 };
  fc.assert(
    fc.property(inputArb(kindArbs.tab), day, (input, someDay) => {
      const plan = planFixings(input);
      for (const [i, { yMm, fit, letsTravel }] of plan.fixings.entries()) {
        const by = input.fixings[i]?.by;
        if (by?.kind !== 'screw beside a tab' || fit.kind !== 'tab') throw new Error('not a tab');
        const rimMm = (by.washerDiameterMm - input.shankDiameterMm) / 2;
        const nearer = daysOf(input, someDay).map((scale) => {
          const movedMm = placeOn(plan, yMm, scale) - yMm;
          return by.tabLies === 'back' ? movedMm : -movedMm;
        });
        const worst = (gapMm: number) => {
          const gaps = nearer.map((mm) => gapMm - mm);
          return least([least(gaps) - input.clearanceMm, rimMm - most(gaps) - by.leastBearingMm]);
        };
        seen[letsTravel ? 'holds' : 'fails'] += 1;
        if (fit.gapMm === null) expect(most(steps(most([0, rimMm])).map(worst))).toBeLessThan(0);
        else expect(worst(fit.gapMm)).toBeGreaterThanOrEqual(-1e-6);
        expect(letsTravel).toBe(fit.gapMm !== null);
      }
    }),
  );
  expect(least(Object.values(seen))).toBeGreaterThan(20);
});

test('a plate lets the top travel exactly where no step of the way asks for more turn or play than it has', () => {
  const seen = { holds: 0, fails: 0 };
  fc.assert(
    fc.property(inputArb(kindArbs.plate), (input) => {
      const plan = planFixings(input);
      for (const [i, { fit, letsTravel, swellMm, shrinkMm }] of plan.fixings.entries()) {
        const by = input.fixings[i]?.by;
        if (by?.kind !== 'plate that turns' || fit.kind !== 'plate') throw new Error('not a plate');
        const { reachMm, angleDeg, mostAngleDeg, playMm } = by;
        const radians = (angleDeg * Math.PI) / 180;
        const along = reachMm * Math.cos(radians);
        // Turn and sideways shift left over, with room for rounding where the arc is steepest.
        const spare = (travelMm: number) => {
          const reached = Math.sin(radians) + travelMm / reachMm;
          if (Math.abs(reached) > 1 + 1e-9) return -Math.abs(reached);
          const sine = Math.max(-1, Math.min(1, reached));
          const turnDeg = (Math.asin(sine) * 180) / Math.PI;
          const asideMm = Math.abs(reachMm * Math.cos(Math.asin(sine)) - along);
          return least([mostAngleDeg - Math.abs(turnDeg), playMm - asideMm]);
        };
        // On the fixed line nothing turns it; elsewhere the clearance is kept beyond either end of the travel.
        const spareMm = swellMm + shrinkMm > 1e-9 ? input.clearanceMm : 0;
        const [inMm, outMm] = [shrinkMm + spareMm, swellMm + spareMm];
        const way = steps(1).map((share) => -inMm + share * (inMm + outMm));
        const worst = least([...way, 0].map(spare));
        seen[letsTravel ? 'holds' : 'fails'] += 1;
        if (letsTravel) expect(worst).toBeGreaterThan(-1e-2);
        if (worst < -1e-2) expect(letsTravel).toBe(false);
        if (worst > 1e-2) expect(letsTravel).toBe(true);
        expect(least([fit.roomToSwellMm, fit.roomToShrinkMm])).toBeGreaterThanOrEqual(-1e-9);
      }
    }),
  );
  expect(least(Object.values(seen))).toBeGreaterThan(20);
});

test('a tongue that slides along its groove is held by it like a screw by its slot', () => {
  let fits = 0;
  fc.assert(
    fc.property(inputArb(kindArbs.sliding), day, (input, someDay) => {
      const plan = planFixings(input);
      for (const [i, fixing] of plan.fixings.entries()) {
        const by = input.fixings[i]?.by;
        const { fit, opening, letsTravel } = fixing;
        if (by?.kind !== 'tongue that slides' || fit.kind !== 'groove' || !opening)
          throw new Error('no groove');
        expect(letsTravel).toBe(fit.lengthMm === by.grooveLengthMm && fit.work === 'leave it as it is');
        fits += letsTravel ? 1 : 0;
        for (const scale of daysOf(input, someDay)) {
          const yMm = placeOn(plan, setOff(fixing, fit.screwOffset.mostMm), scale);
          const roomMm = least([yMm - opening.frontYMm, opening.backYMm - yMm]) - by.tongueWidthMm / 2;
          expect(roomMm).toBeGreaterThanOrEqual(-1e-6);
        }
      }
    }),
  );
  expect(fits).toBeGreaterThan(10);
});
