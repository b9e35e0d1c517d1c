import {
  type Citation,
  requireChoice,
  requireInputs,
  rowCitation,
  type TableProvenance,
} from '@scantling/rules';
import {
  hardwoodThicknessPageThicknesses,
  hardwoodThicknessPageThicknessesProvenance,
} from './data/hardwood-thickness-page--thicknesses.generated.ts';
import { ps20DressedSizes, ps20DressedSizesProvenance } from './data/ps-20--dressed-sizes.generated.ts';
import {
  woodHandbook2010BondingPressures,
  woodHandbook2010BondingPressuresProvenance,
} from './data/wood-handbook-2010--bonding-pressures.generated.ts';
import type { DressedSizeRow, GluePressureRow, SurfacedThicknessRow } from './rows.ts';

/** Dressed sizes of softwood lumber, as printed. */
export const dressedSizeTable: readonly DressedSizeRow[] = ps20DressedSizes;

/** Surfaced thicknesses of hardwood lumber, as printed. */
export const surfacedThicknessTable: readonly SurfacedThicknessRow[] = hardwoodThicknessPageThicknesses;

/** Pressures on the glue line, as printed. */
export const gluePressureTable: readonly GluePressureRow[] = woodHandbook2010BondingPressures;

/** Where `gluePressureTable` comes from. */
export const gluePressureProvenance: TableProvenance = woodHandbook2010BondingPressuresProvenance;

const MM_PER_IN = 25.4;
const size = { min: 1, max: 1000 };
/** Sizes come from inches: what is within this of a row is that row. */
const SLACK_MM = 0.01;

export interface DressedSizeInput {
  /** Boards are under 2 in thick, dimension lumber from there to below 5 in. */
  readonly use: DressedSizeRow['use'];
  readonly side: DressedSizeRow['side'];
  /** What it is called, mm, 1 to 1000: 2 in is 50.8. */
  readonly nominalMm: number;
  /** Dry is 19 % moisture content or less when it was dressed. */
  readonly dressed: 'dry' | 'green';
}

/** A size with where it stands. */
export interface DressedSize {
  /** What it measures at least, mm. */
  readonly actualMm: number;
  readonly citation: Citation;
}

/**
 * What softwood lumber of a nominal size measures at least.
 *
 * @returns The actual size, mm, with its citation; `null` where the table has no such nominal size.
 * @throws RangeError where the size is outside its limits or a choice is none of those named.
 * Source: American Softwood Lumber Standard PS 20, as a page of engineering tables repeats it.
 * @example
 * ```ts
 * import { dressedSize } from '@scantling/stock';
 * // The two sides of a two by four
 * dressedSize({ use: 'dimension', side: 'thickness', nominalMm: 50.8, dressed: 'dry' }).actualMm // => 38.1
 * dressedSize({ use: 'dimension', side: 'width', nominalMm: 101.6, dressed: 'dry' }).actualMm // => 88.9
 * dressedSize({ use: 'dimension', side: 'width', nominalMm: 100, dressed: 'dry' }) // => null
 * ```
 */
export function dressedSize(input: DressedSizeInput): DressedSize | null {
  requireInputs('dressedSize', { nominalMm: input?.nominalMm }, { nominalMm: size });
  const { use, side, nominalMm, dressed } = input;
  requireChoice('dressedSize', 'use', use, ['board', 'dimension']);
  requireChoice('dressedSize', 'side', side, ['thickness', 'width']);
  requireChoice('dressedSize', 'dressed', dressed, ['dry', 'green']);
  const row = dressedSizeTable.find(
    (one) =>
      one.use === use && one.side === side && Math.abs(one.nominalIn * MM_PER_IN - nominalMm) <= SLACK_MM,
  );
  if (!row) return null;
  const actualMm = (dressed === 'dry' ? row.dryIn : row.greenIn) * MM_PER_IN;
  const key = `${use}, ${side}, nominal ${row.nominalIn} in`;
  return { actualMm, citation: rowCitation(ps20DressedSizesProvenance, row, key) };
}

/** How many faces are planed. */
export type SurfacedFaces = 'one' | 'two';

export interface SurfacedThicknessInput {
  /** Rough, mm, 1 to 1000: 5/4 is 31.75. */
  readonly roughMm: number;
  readonly faces: SurfacedFaces;
}

/** A rough thickness, what is reckoned to be left of it, and where that stands. */
export interface SurfacedThickness {
  /** mm. */
  readonly roughMm: number;
  /** mm. */
  readonly surfacedMm: number;
  readonly citation: Citation;
}

const surfacedIn = (row: SurfacedThicknessRow, faces: SurfacedFaces) =>
  faces === 'one' ? row.oneFaceIn : row.twoFacesIn;

function found(row: SurfacedThicknessRow | undefined, faces: SurfacedFaces): SurfacedThickness | null {
  const surfaced = row ? surfacedIn(row, faces) : null;
  if (!row || surfaced === null) return null;
  return {
    roughMm: row.roughIn * MM_PER_IN,
    surfacedMm: surfaced * MM_PER_IN,
    citation: rowCitation(hardwoodThicknessPageThicknessesProvenance, row, `rough ${row.roughIn} in`),
  };
}

/**
 * The thickness that a rough hardwood board is reckoned to have once it is surfaced.
 *
 * @returns The thickness, mm, with its citation; `null` where the table has no such rough thickness.
 * @throws RangeError where the thickness is outside its limits or the number of faces is neither one nor two.
 * Source: standard thicknesses of the National Hardwood Lumber Association, as a page of engineering tables has them.
 * @example
 * ```ts
 * import { surfacedThickness } from '@scantling/stock';
 * surfacedThickness({ roughMm: 25.4, faces: 'two' }).surfacedMm // => 20.6375
 * surfacedThickness({ roughMm: 30, faces: 'two' }) // => null
 * ```
 */
export function surfacedThickness(input: SurfacedThicknessInput): SurfacedThickness | null {
  requireInputs('surfacedThickness', { roughMm: input?.roughMm }, { roughMm: size });
  requireChoice('surfacedThickness', 'faces', input.faces, ['one', 'two']);
  const row = surfacedThicknessTable.find(
    ({ roughIn }) => Math.abs(roughIn * MM_PER_IN - input.roughMm) <= SLACK_MM,
  );
  return found(row, input.faces);
}

export interface RoughThicknessInput {
  /** What is to be left, mm, 1 to 1000. */
  readonly finishedMm: number;
  readonly faces: SurfacedFaces;
}

/**
 * The thinnest rough hardwood that is reckoned to leave a thickness once it is surfaced.
 *
 * @returns Rough and surfaced thickness, mm, with the citation; `null` where the table ends before it.
 * @throws RangeError where the thickness is outside its limits or the number of faces is neither one nor two.
 * Source: standard thicknesses of the National Hardwood Lumber Association, as a page of engineering tables has them.
 * @example
 * ```ts
 * import { roughThickness } from '@scantling/stock';
 * // For 38 mm: 7/4 leaves 38.1
 * roughThickness({ finishedMm: 38, faces: 'two' }).roughMm // => 44.45
 * roughThickness({ finishedMm: 120, faces: 'two' }) // => null
 * ```
 */
export function roughThickness(input: RoughThicknessInput): SurfacedThickness | null {
  requireInputs('roughThickness', { finishedMm: input?.finishedMm }, { finishedMm: size });
  const { finishedMm, faces } = input;
  requireChoice('roughThickness', 'faces', faces, ['one', 'two']);
  // The table goes from thin to thick.
  const row = surfacedThicknessTable.find(
    (one) => (surfacedIn(one, faces) ?? 0) * MM_PER_IN >= finishedMm - SLACK_MM,
  );
  return found(row, faces);
}
