import type { Box, Movement, Outline } from './geometry.ts';
import type { GridTerms } from './layout-holes.ts';
import { boundingBox, distanceTo } from './outline-distances.ts';
import { beyondEdge, type Edge, everywhere, outlineOf } from './shape.ts';

/** What a hole keeps away from, or within. */
export interface Obstacle {
  readonly name: string;
  readonly neededMm: number;
  readonly reason?: string | undefined;
  /** One outline; of areas that a hole keeps within, any. */
  readonly outlines: readonly Outline[];
  /** Round all of it; of what a hole keeps within, everywhere. */
  readonly box: Box;
  /** Whether a hole keeps within it rather than away from it. */
  readonly within: boolean;
  /** How holes move past it; left out where it moves with them. */
  readonly movement?: Movement | undefined;
}

export const edges: readonly Edge[] = ['left edge', 'right edge', 'front edge', 'back edge'];

/** Everything that a hole keeps away from: keep-outs in their order, the keep-in, the edges of the panel. */
export function obstaclesOf(grid: GridTerms): Obstacle[] {
  const { panel, keepOuts, keepIn, edgeMarginMm, movement } = grid;
  const awayFrom = (outline: Outline) => ({ outlines: [outline], box: boundingBox(outline), within: false });
  return [
    ...keepOuts.map((keepOut) => ({
      name: keepOut.id,
      neededMm: keepOut.clearanceMm,
      reason: keepOut.reason,
      ...awayFrom(outlineOf(keepOut, panel)),
      movement: keepOut.belongsTo === 'base' ? movement : undefined,
    })),
    ...(keepIn ? [keepIn] : []).map(({ id, clearanceMm, areas }) => ({
      name: id,
      neededMm: clearanceMm,
      outlines: areas.map((area) => outlineOf(area, panel)),
      box: everywhere,
      within: true,
    })),
    ...edges.map((edge) => ({
      name: edge,
      neededMm: edgeMarginMm,
      ...awayFrom(beyondEdge(edge, panel)),
    })),
  ];
}

/** From a point to what it keeps away from, or from the outline that it keeps within; negative where it does not. */
export function distanceMm({ outlines, within, movement }: Obstacle, xMm: number, yMm: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const outline of outlines) least = Math.min(least, distanceTo(outline, xMm, yMm, movement));
  return within ? -least : least;
}
