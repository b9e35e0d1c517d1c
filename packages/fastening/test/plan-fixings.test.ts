import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FixingsInput, type PlannedFixing, planFixings } from '../src/index.ts';
import { daysOf, inputArb, kindArbs, placeOn, setOff } from './fixing-arbitraries.ts';

const day = numberArb({ min: 0, max: 1 });
const screwsArb = inputArb(kindArbs.screw);

/** Room left at the tighter end of an opening for a shank at some place of the base. */
const roomAround = (opening: { frontYMm: number; backYMm: number }, yMm: number, shankDiameterMm: number) =>
  Math.min(yMm - opening.frontYMm, opening.backYMm - yMm) - shankDiameterMm / 2;

/** What a hole that is there has to leave around the shank: nothing where the screw stands still, on the fixed line. */
const toLeave = (input: FixingsInput, { swellMm, shrinkMm }: PlannedFixing) =>
  Math.max(swellMm, shrinkMm) <= 1e-9 ? 0 : input.clearanceMm;

describe('the hole or slot of a screw', () => {
  test('holds the shank on every day of the year, with the clearance, for any fixed line', () => {
    fc.assert(
      fc.property(screwsArb, day, day, (input, someDay, someShare) => {
        const plan = planFixings(input);
        for (const fixing of plan.fixings) {
          const { fit, opening } = fixing;
          if (fit.kind !== 'opening' || opening === null) throw new Error('a screw without an opening');
          const { leastMm, mostMm } = fit.screwOffset;
          const kept = fit.work === 'leave it as it is';
          const askedMm = kept ? toLeave(input, fixing) : input.clearanceMm;
          for (const offset of [leastMm, mostMm, leastMm + someShare * (mostMm - leastMm)]) {
            for (const scale of daysOf(input, someDay)) {
              const yMm = placeOn(plan, setOff(fixing, offset), scale);
              const roomMm = roomAround(opening, yMm, input.shankDiameterMm);
              expect(roomMm).toBeGreaterThanOrEqual(askedMm - 1e-6);
            }
          }
          expect(opening.backYMm - opening.frontYMm).toBeCloseTo(fit.lengthMm, 9);
          if (!fit.work.includes('slot')) {
            // A drilled hole is round: its middle is the point given.
            expect((opening.frontYMm + opening.backYMm) / 2).toBeCloseTo(fixing.yMm, 9);
          }
        }
      }),
    );
  });

  test('is no longer than it has to be where it is cut anew: the clearance is used up at both ends', () => {
    let slots = 0;
    fc.assert(
      fc.property(screwsArb, (input) => {
        const plan = planFixings(input);
        for (const fixing of plan.fixings) {
          const { fit, opening } = fixing;
          if (fit.kind !== 'opening' || fit.work !== 'cut a slot' || opening === null) continue;
          slots += 1;
          const rooms = daysOf(input, 0).map((scale) => {
            const yMm = placeOn(plan, fixing.yMm, scale);
            return [yMm - opening.frontYMm, opening.backYMm - yMm].map(
              (mm) => mm - input.shankDiameterMm / 2,
            );
          });
          for (const end of [0, 1]) {
            expect(Math.min(...rooms.map((room) => room[end] as number))).toBeCloseTo(input.clearanceMm, 6);
          }
          expect(fit.lengthMm).toBeCloseTo(fit.neededMm, 9);
        }
      }),
    );
    expect(slots).toBeGreaterThan(20);
  });

  test('stays as it is exactly where some place of the screw in it would do', () => {
    const seen = { stay: 0, slot: 0 };
    fc.assert(
      fc.property(screwsArb, (input) => {
        const plan = planFixings(input);
        for (const [i, fixing] of plan.fixings.entries()) {
          const by = input.fixings[i]?.by;
          if (by?.kind !== 'screw' || by.holeMm === undefined) continue;
          const { holeMm } = by;
          const hole = { frontYMm: fixing.yMm - holeMm / 2, backYMm: fixing.yMm + holeMm / 2 };
          const askedMm = toLeave(input, fixing);
          const places = Array.from({ length: 201 }, (_, n) => hole.frontYMm + (n / 200) * holeMm);
          const best = Math.max(
            ...places.map((yMm) =>
              Math.min(
                ...daysOf(input, 0).map((scale) =>
                  roomAround(hole, placeOn(plan, yMm, scale), input.shankDiameterMm),
                ),
              ),
            ),
          );
          const stays = plan.stay.includes(fixing.name);
          const step = holeMm / 200;
          if (best >= askedMm) expect(stays).toBe(true);
          if (best < askedMm - 2 * step) expect(stays).toBe(false);
          seen[stays ? 'stay' : 'slot'] += 1;
          if (stays) continue;
          const { fit, opening } = fixing;
          if (fit.kind !== 'opening' || opening === null) throw new Error('a screw without an opening');
          expect(fit.longerTowardsMm + fit.longerAwayMm).toBeGreaterThan(0);
          expect(holeMm + fit.longerTowardsMm + fit.longerAwayMm).toBeCloseTo(fit.lengthMm, 9);
          expect(opening.frontYMm).toBeLessThanOrEqual(hole.frontYMm + 1e-9);
          expect(opening.backYMm).toBeGreaterThanOrEqual(hole.backYMm - 1e-9);
        }
      }),
    );
    expect(Math.min(seen.stay, seen.slot)).toBeGreaterThan(20);
  });

  test('is covered all year by the washer that it names, and by none smaller', () => {
    fc.assert(
      fc.property(screwsArb, day, (input, someDay) => {
        const plan = planFixings(input);
        for (const fixing of plan.fixings) {
          const { fit, opening, washerCovers } = fixing;
          if (fit.kind !== 'opening' || opening === null) throw new Error('a screw without an opening');
          const { leastMm, mostMm } = fit.screwOffset;
          const stands = setOff(fixing, Math.min(Math.max(leastMm, 0), mostMm));
          const reaches = daysOf(input, someDay).map((scale) => {
            const yMm = placeOn(plan, stands, scale);
            return 2 * Math.max(yMm - opening.frontYMm, opening.backYMm - yMm);
          });
          expect(Math.max(...reaches)).toBeCloseTo(fit.coveringWasherMm, 6);
          expect(washerCovers).toBe((input.washerDiameterMm as number) >= fit.coveringWasherMm - 1e-9);
        }
      }),
    );
  });
});

describe('the whole plan', () => {
  test('swings follow the fixed line in proportion', () => {
    const shift = numberArb({ min: -200, max: 200 });
    const lineMm = numberArb({ min: 0, max: 600 });
    fc.assert(
      fc.property(inputArb(), lineMm, shift, (input, yMm, byMm) => {
        const swings = (y: number) =>
          planFixings({ ...input, fixedLine: { yMm: y } }).fixings.map(({ outwards, swellMm, shrinkMm }) =>
            [swellMm, shrinkMm].map((mm) => (outwards === 'front' ? -mm : mm)),
          );
        const [before, after] = [swings(yMm), swings(yMm + byMm)];
        for (const [i, [swell, shrink]] of before.entries()) {
          expect(after[i]?.[0]).toBeCloseTo((swell as number) - (byMm * input.swellPct) / 100, 9);
          expect(after[i]?.[1]).toBeCloseTo((shrink as number) - (byMm * input.shrinkPct) / 100, 9);
        }
      }),
    );
  });

  test('both overhangs together change by what the top changes in width', () => {
    fc.assert(
      fc.property(inputArb(), (input) => {
        const { front, back } = planFixings(input).overhangs;
        const widthMm = input.top.backYMm - input.top.frontYMm;
        const change = (day: 'swollenMm' | 'shrunkMm') =>
          front[day] - front.buildingDayMm + (back[day] - back.buildingDayMm);
        expect(change('swollenMm')).toBeCloseTo((widthMm * input.swellPct) / 100, 9);
        expect(change('shrunkMm')).toBeCloseTo((-widthMm * input.shrinkPct) / 100, 9);
      }),
    );
  });

  test('a mirrored top has a mirrored plan', () => {
    const swap = { front: 'back', back: 'front' } as const;
    const mirrored = (input: FixingsInput): FixingsInput => {
      const across = ({ frontYMm, backYMm }: FixingsInput['top']) => ({
        frontYMm: 900 - backYMm,
        backYMm: 900 - frontYMm,
      });
      const { fixedLine } = input;
      const named = { 'front row': 'back row', 'back row': 'front row', middle: 'middle' } as const;
      const other =
        typeof fixedLine === 'string'
          ? named[fixedLine]
          : 'yMm' in fixedLine
            ? { yMm: 900 - fixedLine.yMm }
            : fixedLine;
      return {
        ...input,
        top: across(input.top),
        base: across(input.base),
        fixedLine: other,
        fixings: input.fixings.map((point) => {
          const { by } = point;
          const turned =
            by.kind === 'tongue'
              ? { ...by, points: swap[by.points] }
              : by.kind === 'screw beside a tab'
                ? { ...by, tabLies: swap[by.tabLies] }
                : by;
          return { ...point, yMm: 900 - point.yMm, by: turned };
        }),
      };
    };
    fc.assert(
      fc.property(inputArb(), (input) => {
        const [plan, other] = [planFixings(input), planFixings(mirrored(input))];
        expect(other.fixedLineYMm).toBeCloseTo(900 - plan.fixedLineYMm, 6);
        expect(other.overhangs.front.swollenMm).toBeCloseTo(plan.overhangs.back.swollenMm, 6);
        expect(other.overhangs.back.shrunkMm).toBeCloseTo(plan.overhangs.front.shrunkMm, 6);
        for (const [i, { distanceMm, opening, swellMm }] of plan.fixings.entries()) {
          const twin = other.fixings[i];
          expect(twin?.distanceMm).toBeCloseTo(distanceMm, 6);
          expect(twin?.swellMm).toBeCloseTo(swellMm, 6);
          expect(twin?.opening === null).toBe(opening === null);
          if (!opening || !twin?.opening) continue;
          expect(twin.opening.backYMm - twin.opening.frontYMm).toBeCloseTo(
            opening.backYMm - opening.frontYMm,
            4,
          );
          expect(twin.opening.frontYMm).toBeCloseTo(900 - opening.backYMm, 4);
        }
      }),
    );
  });

  test('in another unit of length every length scales, and every verdict stays', () => {
    const lengths = (value: unknown, by: number): unknown => {
      if (Array.isArray(value)) return value.map((one) => lengths(one, by));
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(
        Object.entries(value).map(([name, one]) => [
          name,
          typeof one === 'number' && name.endsWith('Mm') ? one * by : lengths(one, by),
        ]),
      );
    };
    // Halves and doubles are exact in floating-point numbers, so that no verdict turns on a rounding error.
    const scaleArb = fc.constantFrom(2, 4);
    fc.assert(
      fc.property(inputArb(), scaleArb, (input, scale) => {
        const larger = lengths(input, scale) as FixingsInput;
        expect(planFixings(larger)).toEqual(
          expect.objectContaining({
            becomeSlots: planFixings(input).becomeSlots,
            stay: planFixings(input).stay,
            holding: planFixings(input).holding,
          }),
        );
        const [one, other] = [planFixings(input), planFixings(larger)];
        expect(other.longestSwingMm).toBeCloseTo(one.longestSwingMm * scale, 9);
        for (const [i, { opening }] of one.fixings.entries()) {
          if (!opening) continue;
          expect(other.fixings[i]?.opening?.frontYMm).toBeCloseTo(opening.frontYMm * scale, 6);
          expect(other.fixings[i]?.opening?.backYMm).toBeCloseTo(opening.backYMm * scale, 6);
        }
      }),
    );
  });
});
