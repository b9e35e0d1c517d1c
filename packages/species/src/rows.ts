import type { TableRow } from '@scantling/rules';

/** What every row of a species table says. */
export interface SpeciesRow extends TableRow {
  /** Name as the table prints it, its heading first: `Maple, sugar`. */
  readonly species: string;
}

/** Shrinkage from green to ovendry, % of the green dimension. */
export interface ShrinkageRow extends SpeciesRow {
  /** Across the growth rings, %: the width of a quartersawn board. */
  readonly radialPct: number;
  /** Along the growth rings, %: the width of a flatsawn board; `null` where the table prints none. */
  readonly tangentialPct: number | null;
  /** Of the volume, %. */
  readonly volumetricPct: number;
}

/** Shrinkage of a wood grown in the United States. */
export interface DomesticShrinkageRow extends ShrinkageRow {
  readonly group: 'hardwood' | 'softwood';
}

/** Shrinkage of an imported wood. */
export interface ImportedShrinkageRow extends ShrinkageRow {
  /** Where it grows: `AF` Africa, `AM` tropical America, `AS` Asia and Oceania. */
  readonly location: 'AF' | 'AM' | 'AS';
}

/** Share of its dimension by which a wood moves for each 1 % of moisture content, between 6 and 14 %. */
export interface MovementCoefficientRow extends SpeciesRow {
  readonly group: 'hardwood' | 'softwood' | 'imported';
  /** Across the growth rings, per 1 %: the width of a quartersawn board. */
  readonly radialPerPct: number;
  /** Along the growth rings, per 1 %: the width of a flatsawn board. */
  readonly tangentialPerPct: number;
}
