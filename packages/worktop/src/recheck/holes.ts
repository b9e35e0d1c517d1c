import type { Rectangle } from '../plan/place.ts';
import type { BlockedHole, PlannedHole, WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, ROUNDING_MM } from './finding.ts';

/** From a point to a rectangle, mm; negative within it. */
function apartMm(x: number, y: number, { xMm, yMm, lengthMm, widthMm }: Rectangle): number {
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
interface Neighbour {
  readonly name: string;
  readonly neededMm: number;
  readonly nearestMm: (x: number, y: number) => number;
}

function neighbours({ plan, swing }: WorktopPlan): Neighbour[] {
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

/** Each place of the grid stands once, in its place, bored where it may be and left out where not. */
export function recheckHoles(result: WorktopPlan): Finding[] {
  const { plan, holes, blockedHoles } = result;
  const { first, pitchXMm, pitchYMm, columns, rows, diameterMm } = plan.holes;
  const around = neighbours(result);
  const places = [...holes, ...blockedHoles].map(({ row, column }) => `${row}/${column}`);
  const recheck = (path: string, hole: PlannedHole, bored: boolean): Finding[] => {
    const rims = around.map(({ name, neededMm, nearestMm }) => {
      const rimMm = nearestMm(hole.xMm, hole.yMm) - diameterMm / 2;
      return { name, rimMm, spareMm: rimMm - neededMm };
    });
    const least = Math.min(...rims.map(({ rimMm }) => rimMm));
    const named = rims.find(({ name }) => name === hole.nearest);
    const spareMm = Math.min(...rims.map((rim) => rim.spareMm));
    const may = bored ? spareMm >= -ROUNDING_MM : spareMm <= ROUNDING_MM;
    return [
      ...agree(`${path}.xMm`, hole.xMm, first.xMm + (hole.column - 1) * pitchXMm),
      ...agree(`${path}.yMm`, hole.yMm, first.yMm + (hole.row - 1) * pitchYMm),
      ...agree(`${path}.clearanceMm`, hole.clearanceMm, least),
      ...agree(`${path}.nearest`, named?.rimMm ?? Number.NaN, least),
      ...holds(path, may, bored ? `is ${-spareMm} mm too near to be bored` : 'may be bored after all'),
    ];
  };
  const inGrid = ({ row, column }: PlannedHole) =>
    Number.isInteger(row) &&
    Number.isInteger(column) &&
    row >= 1 &&
    row <= rows &&
    column >= 1 &&
    column <= columns;
  const each = (list: 'holes' | 'blockedHoles', of: readonly (PlannedHole | BlockedHole)[]) =>
    of.flatMap((hole, i) => [
      ...holds(`${list}[${i}]`, inGrid(hole), 'lies in no row and column of the grid'),
      ...recheck(`${list}[${i}]`, hole, list === 'holes'),
    ]);
  return [
    ...agree('holes', places.length, rows * columns, 0),
    ...holds('holes', new Set(places).size === places.length, 'two are in one place of the grid'),
    ...each('holes', holes),
    ...each('blockedHoles', blockedHoles),
  ];
}
