import type { Rectangle } from '../plan/place.ts';
import type { WorktopPlan } from '../result.ts';

/** From a point to a rectangle, mm; negative within it. */
export function apartMm(x: number, y: number, { xMm, yMm, lengthMm, widthMm }: Rectangle): number {
  const dx = Math.abs(x - xMm - lengthMm / 2) - lengthMm / 2;
  const dy = Math.abs(y - yMm - widthMm / 2) - widthMm / 2;
  return dx > 0 && dy > 0 ? Math.hypot(dx, dy) : Math.max(dx, dy);
}

/** Least of a function that has no more than one dip, looked for in ever shorter thirds. */
function leastBetween(from: number, to: number, of: (at: number) => number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 200 && high - low > 1e-12; i++) {
    const third = (high - low) / 3;
    if (of(low + third) <= of(high - third)) high -= third;
    else low += third;
  }
  return Math.min(of(from), of(to), of(low), of(high));
}

/** Something a hole keeps away from: how far it is from the centre of a hole at its nearest, and how far it must be. */
export interface Neighbour {
  readonly name: string;
  readonly neededMm: number;
  readonly nearestMm: (x: number, y: number) => number;
}

/** Everything on the top and beneath it, and its edges. */
export function neighbours({ plan, swing }: WorktopPlan): Neighbour[] {
  const { top, base, holes } = plan;
  const lineMm = base.fixedLineMm;
  const edge = (name: string, nearestMm: Neighbour['nearestMm']) => ({
    name,
    neededMm: holes.edgeMarginMm,
    nearestMm,
  });
  return [
    ...base.members.map((member) => ({
      name: member.name,
      neededMm: member.clearanceMm,
      nearestMm: (x: number, y: number) =>
        leastBetween(-swing.shrinkPct / 100, swing.swellPct / 100, (change) =>
          apartMm(x, lineMm + (y - lineMm) * (1 + change), member),
        ),
    })),
    ...top.inlays.map((inlay) => ({
      name: inlay.name,
      neededMm: inlay.clearanceMm,
      nearestMm: (x: number, y: number) => apartMm(x, y, inlay),
    })),
    ...base.fixings.map(({ name, xMm, yMm }) => ({
      name: `screw ${name}`,
      neededMm: base.screwClearanceMm,
      nearestMm: (x: number, y: number) => Math.hypot(x - xMm, y - yMm) - base.shankDiameterMm / 2,
    })),
    edge('left edge', (x) => x),
    edge('right edge', (x) => top.lengthMm - x),
    edge('front edge', (_, y) => y),
    edge('back edge', (_, y) => top.widthMm - y),
  ];
}
