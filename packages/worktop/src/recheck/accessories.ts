import type { Accessory } from '../plan/holes.ts';
import type { Point } from '../plan/place.ts';
import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';

type Fit = NonNullable<NonNullable<WorktopPlan['accessories']>[number]['fit']>;

/** Distances of every two of some points. */
const spans = (points: readonly Point[]) =>
  points.flatMap((a, i) => points.slice(i + 1).map((b) => Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm)));

/**
 * What no way of setting it down can better: two pins whose distance differs from that of their holes miss them by half
 * the difference at least, so the play of a hole less that difference bounds the margin.
 */
function mostMarginMm(
  accessory: Accessory,
  pins: readonly Point[],
  holes: readonly Point[],
  scale: number,
): number {
  const moved = holes.map(({ xMm, yMm }) => ({ xMm, yMm: yMm * scale }));
  const apart = spans(pins).map((span, i) => Math.abs(span - (spans(moved)[i] as number)));
  const playMm = accessory.leastHoleMm * Math.min(1, scale) - accessory.mostPinMm;
  if (pins.length === 1) return playMm;
  const errorsMm = 2 * accessory.pinPositionErrorMm + 2 * accessory.holePositionErrorMm * Math.max(1, scale);
  return playMm - errorsMm - Math.max(...apart);
}

/** Every place where it can stand, counted; what it can have to spare, bounded. */
export function recheckAccessories({ plan, accessories, holes, swing }: WorktopPlan): Finding[] {
  const asked = plan.accessories;
  if (!accessories || !asked) return same('accessories', accessories === null, asked == null);
  const { pitchXMm, pitchYMm } = plan.holes;
  const drilled = new Map(holes.map((hole) => [`${hole.row}/${hole.column}`, hole]));
  return [
    ...agree('accessories', accessories.length, asked.length, 0),
    ...asked.flatMap((accessory, i): Finding[] => {
      const path = `accessories[${i}]`;
      const planned = accessories[i];
      if (!planned) return same(path, 'missing', accessory.name);
      const first = accessory.pins[0] as Point;
      const steps = accessory.pins.map(({ xMm, yMm }) => ({
        column: Math.round((xMm - first.xMm) / pitchXMm),
        row: Math.round((yMm - first.yMm) / pitchYMm),
      }));
      const under = (row: number, column: number) =>
        steps.map((step) => drilled.get(`${row + step.row}/${column + step.column}`));
      const apart = new Set(steps.map(({ row, column }) => `${row}/${column}`)).size === steps.length;
      const places = apart ? holes.filter(({ row, column }) => under(row, column).every(Boolean)) : [];
      const stands = planned.holes?.map(({ row, column }) => drilled.get(`${row}/${column}`)) ?? [];
      const atHoles = steps.map(({ row, column }) => ({ xMm: column * pitchXMm, yMm: row * pitchYMm }));
      const season = (fit: Fit, name: 'now' | 'swollen' | 'shrunken', scale: number): Finding[] => {
        const { worstCase, rootSumSquare, atMostMm } = fit[name];
        const most = mostMarginMm(accessory, accessory.pins, atHoles, scale);
        const here = `${path}.fit.${name}`;
        return [
          ...agree(`${here}.atMostMm`, atMostMm, most),
          ...holds(
            `${here}.worstCase.marginMm`,
            worstCase.marginMm <= most + 1e-6,
            `at most ${most} mm can be to spare`,
          ),
          ...holds(
            `${here}.rootSumSquare.marginMm`,
            rootSumSquare.marginMm >= worstCase.marginMm - 1e-6,
            'independent errors cannot leave less than the worst case',
          ),
          ...same(`${here}.worstCase.goesIn`, worstCase.goesIn, worstCase.marginMm >= -1e-6),
          ...same(`${here}.rootSumSquare.goesIn`, rootSumSquare.goesIn, rootSumSquare.marginMm >= -1e-6),
        ];
      };
      const { fit } = planned;
      return [
        ...same(`${path}.name`, planned.name, accessory.name),
        ...agree(`${path}.placeCount`, planned.placeCount, places.length, 0),
        ...same(`${path}.holes`, planned.holes !== null, places.length > 0),
        ...holds(
          `${path}.holes`,
          stands.every(
            (hole, j) =>
              hole !== undefined &&
              hole.row - (stands[0]?.row ?? 0) === steps[j]?.row &&
              hole.column - (stands[0]?.column ?? 0) === steps[j]?.column,
          ),
          'a pin has no hole there',
        ),
        ...same(`${path}.fit`, fit !== null, planned.holes !== null),
        ...(fit
          ? [
              ...season(fit, 'now', 1),
              ...season(fit, 'swollen', 1 + swing.swellPct / 100),
              ...season(fit, 'shrunken', 1 - swing.shrinkPct / 100),
              ...same(
                `${path}.fit.alwaysGoesIn`,
                fit.alwaysGoesIn,
                fit.now.worstCase.goesIn && fit.swollen.worstCase.goesIn && fit.shrunken.worstCase.goesIn,
              ),
              ...holds(`${path}.fit.slot`, !(fit.alwaysGoesIn && fit.slot), 'no slot is needed'),
            ]
          : []),
      ];
    }),
  ];
}
