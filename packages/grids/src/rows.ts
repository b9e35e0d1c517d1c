import type { TableRow } from '@scantling/rules';

/** A tolerance class of a hole, as ISO 286 writes it. */
export type HoleClass = 'H7' | 'H8' | 'H11' | 'H13';

/** A tolerance class of a shaft, as ISO 286 writes it. */
export type ShaftClass = 'g6' | 'h6';

/** How far a size may lie from its nominal size, for one tolerance class and one step of nominal sizes. */
export interface LimitDeviationsRow extends TableRow {
  /** The step begins above this nominal size, mm. */
  readonly overMm: number;
  /** The step ends with this nominal size, mm. */
  readonly upToMm: number;
  readonly toleranceClass: HoleClass | ShaftClass;
  /** Upper limit of size less the nominal size, µm. */
  readonly upperDeviationUm: number;
  /** Lower limit of size less the nominal size, µm. */
  readonly lowerDeviationUm: number;
}
