import { clearanceOverSeasons, holeCount } from '@scantling/grids';

/** Something of the base that holes must miss. */
export interface Member {
  readonly name: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly clearanceMm: number;
}

/** A top that is held along a line, its grid of holes, and the base beneath it. */
export interface Grid {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly holeDiameterMm: number;
  readonly edgeMarginMm: number;
  readonly pitchXMm: number;
  readonly pitchYMm: number;
  /** `null`: as many as fit. */
  readonly columns: number | null;
  readonly rows: number | null;
  readonly fixedLineYMm: number;
  readonly swellPct: number;
  readonly shrinkPct: number;
  readonly members: readonly Member[];
}

export interface Place {
  readonly xMm: number;
  readonly yMm: number;
}

/** What a hole is next to. */
export interface Neighbour {
  /** Index of a member; of an edge its name. */
  readonly to: number | string;
  readonly clearanceMm: number;
  readonly neededMm: number;
}

export interface GridHole extends Place {
  /** Counted from 1. */
  readonly column: number;
  readonly row: number;
  readonly nearest: Neighbour;
  /** What it comes too near to. */
  readonly conflicts: readonly Neighbour[];
}

/** Sums of converted inches miss by rounding errors. */
const SAME_MM = 1e-6;

/** What there is for holes from the first one to the margin at the far end. */
export const roomAfter = (
  { holeDiameterMm, edgeMarginMm }: Grid,
  sideMm: number,
  firstMm: number,
  pitchMm: number,
) => ({ usableLengthMm: Math.max(0, sideMm - edgeMarginMm - holeDiameterMm / 2 - firstMm), pitchMm });

/** The question how near a hole comes to a member over the year. */
export const overSeasons = (grid: Grid, { xMm, yMm }: Place, member: Member) => ({
  ...{ holeXMm: xMm, holeYMm: yMm, holeDiameterMm: grid.holeDiameterMm },
  ...{ xMm: member.xMm, yMm: member.yMm, lengthMm: member.lengthMm, widthMm: member.widthMm },
  ...{ fixedLineYMm: grid.fixedLineYMm, swellPct: grid.swellPct, shrinkPct: grid.shrinkPct },
});

/** Every hole of a grid with what is next to it, by the rules of clearance: the base is square to the top here. */
export function layOut(grid: Grid, first: Place) {
  const { lengthMm, widthMm, members, edgeMarginMm, pitchXMm, pitchYMm } = grid;
  const columns = grid.columns ?? holeCount(roomAfter(grid, lengthMm, first.xMm, pitchXMm)).count;
  const rows = grid.rows ?? holeCount(roomAfter(grid, widthMm, first.yMm, pitchYMm)).count;
  const holeAt = (column: number, row: number): GridHole => {
    const xMm = first.xMm + column * pitchXMm;
    const yMm = first.yMm + row * pitchYMm;
    const edges = { left: xMm, right: lengthMm - xMm, front: yMm, back: widthMm - yMm };
    const neighbours: Neighbour[] = [
      ...members.map((member, to) => ({
        to,
        ...clearanceOverSeasons(overSeasons(grid, { xMm, yMm }, member)),
        neededMm: member.clearanceMm,
      })),
      ...Object.entries(edges).map(([edge, mm]) => ({
        to: `${edge} edge`,
        clearanceMm: mm - grid.holeDiameterMm / 2,
        neededMm: edgeMarginMm,
      })),
    ];
    return {
      ...{ column: column + 1, row: row + 1, xMm, yMm },
      nearest: neighbours.reduce((a, b) => (b.clearanceMm < a.clearanceMm ? b : a)),
      conflicts: neighbours.filter((one) => one.clearanceMm < one.neededMm - SAME_MM),
    };
  };
  const holes = Array.from({ length: columns * rows }, (_, i) =>
    holeAt(i % columns, Math.floor(i / columns)),
  );
  return { columns, rows, holes };
}
