import type { BlockedHole, PlannedHole, WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, ROUNDING_MM } from './finding.ts';
import { neighbours } from './neighbours.ts';

/** What a hole is beside, and how far it is and ought to be from it. */
interface Rim {
  readonly name: string;
  readonly rimMm: number;
  readonly spareMm: number;
}

/** Everything that it comes too near to, and nothing else. */
function recheckConflicts(path: string, { conflicts }: BlockedHole, rims: readonly Rim[]): Finding[] {
  const near = rims.filter(({ spareMm }) => spareMm < -ROUNDING_MM);
  return [
    ...agree(path, conflicts.length, near.length, 0),
    ...conflicts.flatMap(({ with: beside, clearanceMm, neededMm }, i) => {
      const rim = rims.find(({ name }) => name === beside);
      return [
        ...agree(`${path}[${i}].clearanceMm`, clearanceMm, rim?.rimMm ?? Number.NaN),
        ...agree(`${path}[${i}].neededMm`, neededMm, rim ? rim.rimMm - rim.spareMm : Number.NaN),
      ];
    }),
  ];
}

/** Each place of the grid stands once, in its place, bored where it may be and left out where not. */
export function recheckHoles(result: WorktopPlan): Finding[] {
  const { plan, holes, blockedHoles } = result;
  const { first, pitchXMm, pitchYMm, columns, rows, diameterMm } = plan.holes;
  const around = neighbours(result);
  const places = [...holes, ...blockedHoles].map(({ row, column }) => `${row}/${column}`);
  const recheck = (path: string, hole: PlannedHole | BlockedHole, bored: boolean): Finding[] => {
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
      ...('conflicts' in hole ? recheckConflicts(`${path}.conflicts`, hole, rims) : []),
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
