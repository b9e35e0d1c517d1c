/**
 * What wood and bar stock to buy, and how to cut it.
 *
 * @module stock
 */

export { checkLift, type LiftCheck, type LiftedPart, type LiftInput } from './check-lift.ts';
export { type CompareBuying, type CompareBuyingInput, compareBuying } from './compare-buying.ts';
export {
  type ComparedOffer,
  type ComparePricesInput,
  comparePrices,
  type PricedBy,
  type PriceOffer,
} from './compare-prices.ts';
export {
  type BarPart,
  type BoughtBar,
  type CutBar,
  type CutBars,
  type CutBarsInput,
  type CutPiece,
  cutBars,
  type StockBar,
} from './cut-bars.ts';
export {
  type Board,
  type BoardCutting,
  type BoardDefect,
  type BoardPart,
  type BoardPlan,
  type Cut,
  type CutBoard,
  cutBoards,
  type FirstCut,
  type MissingPart,
  type Piece,
} from './cut-boards.ts';
export {
  type DressedSize,
  type DressedSizeInput,
  dressedSize,
  dressedSizeTable,
  gluePressureProvenance,
  gluePressureTable,
  type RoughThicknessInput,
  roughThickness,
  type SurfacedFaces,
  type SurfacedThickness,
  type SurfacedThicknessInput,
  surfacedThickness,
  surfacedThicknessTable,
} from './lumber-sizes.ts';
export { type PickBoardsInput, type PickedBoard, type PickedBoards, pickBoards } from './pick-boards.ts';
export {
  type BoardOrder,
  type PanelPlan,
  type PanelStage,
  type PlacedBoard,
  type PlanPanelInput,
  planPanel,
} from './plan-panel.ts';
export {
  type RoughSize,
  type RoughSizeInput,
  roughSize,
  type ShareAllowance,
  type SizeAllowance,
  type WoodShare,
} from './rough-size.ts';
export type { DressedSizeRow, GluePressureRow, SurfacedThicknessRow } from './rows.ts';
export { type BeamLoading, type BeamSag, type BeamSagInput, beamSag, beamSagRule } from './rules/beam-sag.ts';
export { type BoardFeet, type BoardFeetInput, boardFeet, boardFeetRule } from './rules/board-feet.ts';
export { type ClampCount, type ClampCountInput, clampCount, clampCountRule } from './rules/clamp-count.ts';
export {
  type ClampForce,
  type ClampForceInput,
  clampForce,
  clampForceNotes,
  clampForceRule,
} from './rules/clamp-force.ts';
export { type GlueMass, type GlueMassInput, glueMass, glueMassRule } from './rules/glue-mass.ts';
export { type GlueSpread, type GlueSpreadInput, glueSpread, glueSpreadRule } from './rules/glue-spread.ts';
export {
  type LongTermSag,
  type LongTermSagInput,
  longTermSag,
  longTermSagRule,
  type Seasoning,
} from './rules/long-term-sag.ts';
export {
  type OverhangSag,
  type OverhangSagInput,
  overhangSag,
  overhangSagRule,
} from './rules/overhang-sag.ts';
export {
  type RectangularSection,
  type RectangularSectionInput,
  rectangularSection,
  rectangularSectionRule,
} from './rules/rectangular-section.ts';
export {
  type SurfaceMeasure,
  type SurfaceMeasureInput,
  surfaceMeasure,
  surfaceMeasureRule,
} from './rules/surface-measure.ts';
export {
  type LumberTally,
  type TalliedBoard,
  type TallyInput,
  type TallyLine,
  tallyLumber,
} from './tally-lumber.ts';
export { type HoleRow, type PointLoad, type TopSag, type TopSagInput, topSag } from './top-sag.ts';
