import type { Citation, TableRow } from '@scantling/rules';
import type { FastenerTable } from './screw-tables.ts';

/** A figure as a table gives it, in the unit that its property names. */
export interface ScrewFigure {
  readonly value: number;
  /** Table, how the figure was confirmed, and what is known to be wrong with it. */
  readonly citation: Citation;
}

/** A head that a screw of this size is made with. */
export interface ScrewHead {
  readonly shape: 'countersunk' | 'round' | 'hexagon';
  /** Angle of the whole cone, in degrees; `null` for a head that is not countersunk. */
  readonly angleDeg: number | null;
  /**
   * Greatest diameter, mm: of a countersunk head to a sharp edge; `null` where its table gives only the edge as made, which
   * with `heightMm` leads to it by `sharpHeadDiameter`.
   */
  readonly diameterMm: ScrewFigure | null;
  /** Diameter of a countersunk head over its edge as made, mm; `null` where no table gives it. */
  readonly edgeDiameterMm: ScrewFigure | null;
  /** Across two opposite flats, mm; `null` for a head that is not a hexagon. */
  readonly acrossFlatsMm: ScrewFigure | null;
  readonly heightMm: ScrewFigure;
}

/** For screwing into wood by hand or driver; into a thread; into wood with a spanner. */
export type ScrewKind = 'wood screw' | 'machine screw' | 'lag screw';

/** What the tables say of one size of screw. A figure that no table gives is `null`. */
export interface Screw {
  /** `No. 8 wood screw`, `M6 machine screw`, `1/4 in lag screw`. */
  readonly name: string;
  readonly kind: ScrewKind;
  readonly series: 'inch' | 'metric';
  /** `No. 8`, `M6`, `1/4 in`, `6 mm`. */
  readonly size: string;
  /** Nominal diameter, mm: of the shank and over the thread. */
  readonly diameterMm: ScrewFigure;
  /** Greatest diameter of the unthreaded body, mm. */
  readonly bodyDiameterMm: ScrewFigure | null;
  /** Diameter at the root of the thread, mm. */
  readonly rootDiameterMm: ScrewFigure | null;
  /** From thread to thread, mm. */
  readonly pitchMm: ScrewFigure | null;
  /** Length of the tapered tip of a lag screw, mm. */
  readonly tipLengthMm: ScrewFigure | null;
  /** Drill before tapping the thread of a machine screw, mm. */
  readonly tapDrillDiameterMm: ScrewFigure | null;
  readonly heads: readonly ScrewHead[];
}

const MM_PER_INCH = 25.4;

/** Nominal diameters within half of the last digit that a table prints are one size. */
export const isSameSize = (aMm: number, bMm: number): boolean => Math.abs(aMm - bMm) < 0.005;

const sameMm = (printed: number): number => printed;
export const mmFromIn = (printed: number): number => printed * MM_PER_INCH;
/** Nominal diameter of a gauge by ASME B18.6.1, of wood and of machine screws alike. */
export const mmFromGauge = (gauge: number): number => mmFromIn(0.06 + 0.013 * gauge);
export const pitchFromThreads = (threadsPerIn: number): number => MM_PER_INCH / threadsPerIn;

/** Columns of a row that hold numbers. */
type NumberColumn<Row> = { [K in keyof Row]: Row[K] extends number ? K : never }[keyof Row] & string;

/** One figure of a row, with its citation: table, mark of the row, and errata about this figure. */
export function figureOf<Row extends TableRow>(
  { provenance: { source, at, errata } }: FastenerTable<Row>,
  row: Row,
  column: NumberColumn<Row>,
  toMm: (printed: number) => number = sameMm,
): ScrewFigure {
  const { confirmed, tier } = row;
  // An erratum names a row by its key, which is the row's first column.
  const [key] = Object.values(row);
  const erratum = errata
    .filter(({ rows, columns }) => rows.includes(String(key)) && (!columns || columns.includes(column)))
    .map(({ says }) => says)
    .join(' ');
  return {
    value: toMm(Number(row[column])),
    citation: {
      source,
      at,
      confirmed,
      ...(tier === 'reprint' && { tier }),
      ...(erratum && { erratum }),
    },
  };
}
