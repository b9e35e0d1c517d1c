import type { Citation, TableRow, Tier } from '@scantling/rules';
import { citationOf, type PrintedTable } from './citation.ts';

/** A figure as one table gives it, in the unit that its property names. */
export interface PrintedFigure {
  readonly value: number;
  /** Table and page, how the figure was confirmed, and what is known to be wrong with it. */
  readonly citation: Citation;
}

/** The figure to use, and what other tables give for the same property. */
export interface WoodFigure extends PrintedFigure {
  readonly others: readonly PrintedFigure[];
}

/** Shrinkage from green to ovendry, % of the green dimension. */
export interface WoodShrinkage {
  /** Across the growth rings, %: the width of a quartersawn board. */
  readonly radialPct: WoodFigure | null;
  /** Along the growth rings, %: the width of a flatsawn board. */
  readonly tangentialPct: WoodFigure | null;
  /** Of the volume, %. */
  readonly volumetricPct: WoodFigure | null;
}

/** Share of its dimension by which a wood moves for each 1 % of moisture content, between 6 and 14 %. */
export interface WoodMovement {
  /** Across the growth rings, per 1 %: the width of a quartersawn board. */
  readonly radialPerPct: WoodFigure | null;
  /** Along the growth rings, per 1 %: the width of a flatsawn board. */
  readonly tangentialPerPct: WoodFigure | null;
}

/** Strength of clear, straight-grained wood at one moisture content. */
export interface WoodStrength {
  /** Ovendry mass over the volume at this moisture content, by that of water. */
  readonly specificGravityRatio: WoodFigure | null;
  readonly modulusOfElasticityMPa: WoodFigure | null;
  readonly modulusOfRuptureMPa: WoodFigure | null;
  /** Force that presses a ball of 11.28 mm half into a side. */
  readonly sideHardnessN: WoodFigure | null;
}

/** What is known of one wood. A figure that no table gives is `null`. */
export interface Wood {
  /** Its common name in lower case with hyphens: `sugar-maple`. */
  readonly id: string;
  readonly commonName: string;
  /** `null` where none was found. A group of species that are sold together has `spp.` */
  readonly botanicalName: { readonly name: string; readonly citation: Citation } | null;
  readonly group: 'hardwood' | 'softwood';
  /** Grown in the United States, or imported. */
  readonly origin: 'domestic' | 'imported';
  /** Other names that the trade uses: common practice, no source. */
  readonly aliases: readonly string[];
  /** Its names in the tables. */
  readonly printedAs: readonly string[];
  readonly shrinkage: WoodShrinkage;
  readonly movement: WoodMovement;
  /** Strength of wood as felled, which holds more water than its fibres take up. */
  readonly green: WoodStrength;
  /** Strength at 12 % moisture content. */
  readonly at12Pct: WoodStrength;
}

/** Newtons in a pound-force: 0.453 592 37 kg × 9.806 65 m/s², exactly. */
const N_PER_LBF = 4.4482216152605;
const MPA_PER_PSI = N_PER_LBF / 25.4 ** 2;

/** A figure in the unit of a table's column, in the unit of the wood. */
type Conversion = (printed: number) => number;

const asPrinted: Conversion = (printed) => printed;

/** What gives each figure: columns of the tables, the finest rounding first. */
const columns = {
  radialPct: { radialPct: asPrinted },
  tangentialPct: { tangentialPct: asPrinted },
  volumetricPct: { volumetricPct: asPrinted },
  radialPerPct: { radialPerPct: asPrinted },
  tangentialPerPct: { tangentialPerPct: asPrinted },
  specificGravityRatio: { specificGravityRatio: asPrinted },
  modulusOfElasticityMPa: {
    modulusOfElasticityMillionPsi: (printed: number) => printed * 1e6 * MPA_PER_PSI,
    modulusOfElasticityMPa: asPrinted,
  },
  modulusOfRuptureMPa: {
    modulusOfRupturePsi: (printed: number) => printed * MPA_PER_PSI,
    modulusOfRuptureKPa: (printed: number) => printed / 1000,
    modulusOfRuptureMPa: asPrinted,
  },
  sideHardnessN: {
    sideHardnessLbf: (printed: number) => printed * N_PER_LBF,
    sideHardnessN: asPrinted,
  },
};

type FigureName = keyof typeof columns;
type ColumnName = { [Name in FigureName]: keyof (typeof columns)[Name] }[FigureName];

/** A table's row about one wood, as printed, without the columns that no wood shows. */
export interface WoodRow extends TableRow, Readonly<Partial<Record<ColumnName, number>>> {
  readonly table: PrintedTable;
  readonly moisture?: 'green' | '12%';
  /** What is known to be wrong with its figures, by their columns. */
  readonly errata?: Readonly<Partial<Record<ColumnName, string>>>;
}

/** What `data/woods.csv` says of a wood, with the rows that it is joined to. */
export interface WoodEntry
  extends Pick<Wood, 'id' | 'commonName' | 'group' | 'origin' | 'aliases' | 'printedAs'> {
  readonly botanicalName: (TableRow & { readonly name: string; readonly table: PrintedTable }) | null;
  readonly rows: readonly WoodRow[];
}

const tiers: readonly Tier[] = ['publication', 'reprint', 'memory'];
const isHandbook = ({ table }: WoodRow) => table.source.id.startsWith('wood-handbook');

/**
 * Which of several figures to use: one that was seen before one from memory, the publication before a reprint; then
 * the Wood Handbook before those who repeat its figures; then the one that is rounded less.
 */
function figureOf(rows: readonly WoodRow[], name: FigureName): WoodFigure | null {
  const conversions = Object.entries(columns[name]) as [ColumnName, Conversion][];
  const printed = rows.flatMap((row) =>
    conversions.flatMap(([column, toSI], rounding) => {
      const value = row[column];
      const rank = 100 * tiers.indexOf(row.tier) + (isHandbook(row) ? 0 : 10) + rounding;
      return value === undefined
        ? []
        : [{ rank, value: toSI(value), citation: citationOf(row.table, row, row.errata?.[column]) }];
    }),
  );
  const [first, ...others] = printed
    .sort((a, b) => a.rank - b.rank)
    .map(({ value, citation }) => ({ value, citation }));
  return first ? { ...first, others } : null;
}

function strengthAt(moisture: WoodRow['moisture'], rows: readonly WoodRow[]): WoodStrength {
  const then = rows.filter((row) => row.moisture === moisture);
  return {
    specificGravityRatio: figureOf(then, 'specificGravityRatio'),
    modulusOfElasticityMPa: figureOf(then, 'modulusOfElasticityMPa'),
    modulusOfRuptureMPa: figureOf(then, 'modulusOfRuptureMPa'),
    sideHardnessN: figureOf(then, 'sideHardnessN'),
  };
}

/** Joins what the tables print of one wood. */
export function joinWood({ botanicalName, rows, ...entry }: WoodEntry): Wood {
  return {
    ...entry,
    botanicalName: botanicalName && {
      name: botanicalName.name,
      citation: citationOf(botanicalName.table, botanicalName),
    },
    shrinkage: {
      radialPct: figureOf(rows, 'radialPct'),
      tangentialPct: figureOf(rows, 'tangentialPct'),
      volumetricPct: figureOf(rows, 'volumetricPct'),
    },
    movement: {
      radialPerPct: figureOf(rows, 'radialPerPct'),
      tangentialPerPct: figureOf(rows, 'tangentialPerPct'),
    },
    green: strengthAt('green', rows),
    at12Pct: strengthAt('12%', rows),
  };
}
