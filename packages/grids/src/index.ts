/**
 * Hole grids: where the holes of a grid are, what they must miss, and what is left between, all year round.
 *
 * @module grids
 */
export type { Movement, Point, Rectangle } from './geometry.ts';
export {
  type Conflict,
  type DroppedHole,
  type Edge,
  type Hole,
  type HoleGrid,
  type HoleLayout,
  type KeepOut,
  layoutHoles,
} from './layout-holes.ts';
export { type CentredRow, type CentredRowInput, centredRow, centredRowRule } from './rules/centred-row.ts';
export {
  type ClearanceOverSeasons,
  type ClearanceOverSeasonsInput,
  clearanceOverSeasons,
  clearanceOverSeasonsRule,
} from './rules/clearance-over-seasons.ts';
export {
  type ClearanceToRectangle,
  type ClearanceToRectangleInput,
  clearanceToRectangle,
  clearanceToRectangleRule,
} from './rules/clearance-to-rectangle.ts';
export { type HoleCount, type HoleCountInput, holeCount, holeCountRule } from './rules/hole-count.ts';
export {
  type PitchPosition,
  type PitchPositionInput,
  pitchPosition,
  pitchPositionRule,
} from './rules/pitch-position.ts';
