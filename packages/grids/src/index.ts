/**
 * Hole grids: where the holes of a grid are, what they must miss, and what is left between, all year round.
 *
 * @module grids
 */

export { type AnchoredGrid, anchorGrid, type GridAnchor, type GridToAnchor } from './anchor-grid.ts';
export { type BestOffset, bestOffset } from './best-offset.ts';
export {
  iso2862LimitDeviations as limitDeviationsTable,
  iso2862LimitDeviationsProvenance as limitDeviationsProvenance,
} from './data/iso-286-2--limit-deviations.generated.ts';
export type { Movement, Point } from './geometry.ts';
export {
  type Conflict,
  type DroppedHole,
  type GridTerms,
  type Hole,
  type HoleGrid,
  type HoleLayout,
  type KeepIn,
  type KeepOut,
  layoutHoles,
} from './layout-holes.ts';
export {
  type LongestPinSpan,
  type LongestPinSpanInput,
  longestPinSpan,
  type PinSpan,
} from './longest-pin-span.ts';
export { type CentreMark, type CentreMarks, type CentresToMark, markCentres } from './mark-centres.ts';
export {
  type FitVerdict,
  type LimitingPin,
  type PinFit,
  type PinFitInput,
  pinFit,
  type SeasonFit,
} from './pin-fit.ts';
export type { PinTerms } from './pin-terms.ts';
export type { HoleClass, LimitDeviationsRow, ShaftClass } from './rows.ts';
export {
  type BitPointLength,
  type BitPointLengthInput,
  bitPointLength,
  bitPointLengthRule,
} from './rules/bit-point-length.ts';
export { type BitShares, type BitSharesInput, bitShares, bitSharesRule } from './rules/bit-shares.ts';
export { type CentredRow, type CentredRowInput, centredRow, centredRowRule } from './rules/centred-row.ts';
export {
  type ClearanceOfFit,
  type ClearanceOfFitInput,
  clearanceOfFit,
  clearanceOfFitRule,
} from './rules/clearance-of-fit.ts';
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
export {
  type DiagonalSensitivity,
  type DiagonalSensitivityInput,
  diagonalSensitivity,
  diagonalSensitivityRule,
} from './rules/diagonal-sensitivity.ts';
export {
  type DrillingDepth,
  type DrillingDepthInput,
  drillingDepth,
  drillingDepthRule,
} from './rules/drilling-depth.ts';
export { type HoleCount, type HoleCountInput, holeCount, holeCountRule } from './rules/hole-count.ts';
export {
  type HoleMargins,
  type HoleMarginsInput,
  holeMargins,
  holeMarginsRule,
} from './rules/hole-margins.ts';
export {
  type LimitsOfSize,
  type LimitsOfSizeInput,
  limitsOfSize,
  limitsOfSizeRule,
} from './rules/limits-of-size.ts';
export {
  type OffSquareShift,
  type OffSquareShiftInput,
  offSquareShift,
  offSquareShiftRule,
} from './rules/off-square-shift.ts';
export {
  type OutOfSquare,
  type OutOfSquareInput,
  outOfSquare,
  outOfSquareRule,
} from './rules/out-of-square.ts';
export {
  type PitchPosition,
  type PitchPositionInput,
  pitchPosition,
  pitchPositionRule,
} from './rules/pitch-position.ts';
export {
  type SharedCentres,
  type SharedCentresInput,
  sharedCentres,
  sharedCentresRule,
} from './rules/shared-centres.ts';
export {
  type SpindleSpeed,
  type SpindleSpeedInput,
  spindleSpeed,
  spindleSpeedRule,
} from './rules/spindle-speed.ts';
export {
  type SquareDiagonal,
  type SquareDiagonalInput,
  squareDiagonal,
  squareDiagonalRule,
} from './rules/square-diagonal.ts';
export {
  type StandardTolerance,
  type StandardToleranceInput,
  standardTolerance,
  standardToleranceRule,
  type ToleranceGrade,
} from './rules/standard-tolerance.ts';
export {
  type TemplateHole,
  type TemplateHoleInput,
  templateHole,
  templateHoleRule,
} from './rules/template-hole.ts';
export {
  type ThreeFourFive,
  type ThreeFourFiveInput,
  threeFourFive,
  threeFourFiveRule,
} from './rules/three-four-five.ts';
export {
  type TurnOverDepth,
  type TurnOverDepthInput,
  turnOverDepth,
  turnOverDepthRule,
} from './rules/turn-over-depth.ts';
export type {
  BandShape,
  CircleShape,
  Edge,
  Panel,
  PolygonShape,
  RectangleShape,
  Shape,
} from './shape.ts';
export type { PinSlot } from './slot-for-pin.ts';
export {
  type DiameterLimits,
  type KindOfFit,
  kindOfFit,
  type StandardFit,
  type StandardFitInput,
  standardFit,
} from './standard-fit.ts';
export {
  type GridPlace,
  type StepErrors,
  type SteppedHole,
  stepTemplate,
  type TemplatePlacement,
  type TemplatePlan,
  type TemplateSteppingInput,
} from './step-template.ts';
export type { ErrorPair, PositionError } from './step-template-errors.ts';
export {
  type BaseSetting,
  type SlidingBase,
  type SlidingPart,
  type WidestBase,
  widestBase,
} from './widest-base.ts';
