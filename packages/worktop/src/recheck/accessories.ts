import type { Accessory } from '../plan/holes.ts';
import type { Point } from '../plan/place.ts';
import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';

type Fit = NonNullable<NonNullable<WorktopPlan['accessories']>[number]['fit']>;

/** Distances of every two of some points. */
const spans = (points: readonly Point[]) =>
  points.flatMap((a, i) => points.slice(i + 1).map((b) => Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm)));

/** Radius of the smallest circle round some points, by trying every two and every three of them. */
function leastCircleMm(points: readonly Point[]): number {
  const radiusFrom = (at: Point) =>
    Math.max(...points.map(({ xMm, yMm }) => Math.hypot(xMm - at.xMm, yMm - at.yMm)));
  const middles = points.flatMap((a, i) =>
    points.slice(i).map((b) => ({ xMm: (a.xMm + b.xMm) / 2, yMm: (a.yMm + b.yMm) / 2 })),
  );
  const centres = points.flatMap((a, i) =>
    points.slice(i + 1).flatMap((b, j) =>
      points.slice(i + j + 2).flatMap((c) => {
        const [bx, by] = [b.xMm - a.xMm, b.yMm - a.yMm];
        const [cx, cy] = [c.xMm - a.xMm, c.yMm - a.yMm];
        const d = 2 * (bx * cy - by * cx);
        if (Math.abs(d) < 1e-12) return [];
        const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
        return [{ xMm: a.xMm + (cy * bb - by * cc) / d, yMm: a.yMm + (bx * cc - cx * bb) / d }];
      }),
    ),
  );
  return Math.min(...[...middles, ...centres].map(radiusFrom));
}

/** Holes as the season leaves them, less the pins turned as claimed: what a shift of the whole has to take up. */
function missesMm(pins: readonly Point[], holes: readonly Point[], scale: number, turnDeg: number): Point[] {
  const turn = (turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return pins.map(({ xMm, yMm }, i) => {
    const hole = holes[i] as Point;
    return { xMm: hole.xMm - (cos * xMm - sin * yMm), yMm: hole.yMm * scale - (sin * xMm + cos * yMm) };
  });
}

/** What is to spare once the misses are known, with every error at its limit, and with errors that vary independently. */
function marginsMm(accessory: Accessory, pinCount: number, scale: number, missMm: number) {
  const { leastPinMm, mostPinMm, leastHoleMm, mostHoleMm } = accessory;
  const narrower = Math.min(1, scale);
  const pinOff = accessory.pinPositionErrorMm;
  const holeOff = accessory.holePositionErrorMm * Math.max(1, scale);
  const [holeTolerance, pinTolerance] = [
    ((mostHoleMm - leastHoleMm) / 2) * narrower,
    (mostPinMm - leastPinMm) / 2,
  ];
  const playMm = ((mostHoleMm + leastHoleMm) / 2) * narrower - (mostPinMm + leastPinMm) / 2;
  // One pin finds its hole wherever that is; of more, two pull apart, each with half of its sizes and all of its place.
  const ofOne = [holeTolerance, pinTolerance];
  const ofTwo = [holeTolerance / 2, pinTolerance / 2, holeOff, pinOff];
  const errors = pinCount === 1 ? ofOne : [...ofTwo, ...ofTwo];
  const sum = errors.reduce((total, error) => total + error, 0);
  return {
    worstCase: playMm - sum - 2 * missMm,
    // Each pin by itself has to go in as well.
    rootSumSquare: Math.min(playMm - Math.hypot(...ofOne), playMm - Math.hypot(...errors) - 2 * missMm),
  };
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
        const { worstCase, rootSumSquare, atMostMm, turnDeg, limitingPins } = fit[name];
        const here = `${path}.fit.${name}`;
        const missMm = leastCircleMm(missesMm(accessory.pins, atHoles, scale, turnDeg));
        const margins = marginsMm(accessory, atHoles.length, scale, missMm);
        // Two pins whose distance differs from that of their holes miss them by half the difference each, at least.
        const moved = spans(atHoles.map(({ xMm, yMm }) => ({ xMm, yMm: yMm * scale })));
        const apartMm = spans(accessory.pins).map((span, j) => Math.abs(span - (moved[j] as number)));
        const bound = marginsMm(accessory, atHoles.length, scale, Math.max(0, ...apartMm) / 2).worstCase;
        return [
          ...agree(`${here}.atMostMm`, atMostMm, bound),
          ...agree(`${here}.worstCase.marginMm`, worstCase.marginMm, margins.worstCase, 1e-4),
          ...agree(`${here}.rootSumSquare.marginMm`, rootSumSquare.marginMm, margins.rootSumSquare, 1e-4),
          ...limitingPins.flatMap(({ index, xMm, yMm }, j) => [
            ...agree(`${here}.limitingPins[${j}].xMm`, xMm, accessory.pins[index]?.xMm ?? Number.NaN),
            ...agree(`${here}.limitingPins[${j}].yMm`, yMm, accessory.pins[index]?.yMm ?? Number.NaN),
          ]),
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
