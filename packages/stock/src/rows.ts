import type { TableRow } from '@scantling/rules';

/** What softwood lumber of a nominal size measures at least once it is dressed. */
export interface DressedSizeRow extends TableRow {
  /** Boards are under 2 in thick, dimension lumber from there to below 5 in. */
  readonly use: 'board' | 'dimension';
  readonly side: 'thickness' | 'width';
  /** What it is called, in. */
  readonly nominalIn: number;
  /** Dressed dry, at 19 % moisture content or less, in. */
  readonly dryIn: number;
  /** Dressed green, in. */
  readonly greenIn: number;
}

/** What rough hardwood is reckoned to measure once it is surfaced. */
export interface SurfacedThicknessRow extends TableRow {
  /** in. */
  readonly roughIn: number;
  /** Surfaced on one face, in; `null` where none is printed. */
  readonly oneFaceIn: number | null;
  /** Surfaced on two faces, in. */
  readonly twoFacesIn: number;
}

/** A pressure that glue lines are held under. */
export interface GluePressureRow extends TableRow {
  readonly wood: string;
  readonly pressurePsi: number;
}
