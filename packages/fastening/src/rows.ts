import type { TableRow } from '@scantling/rules';

/** A wood screw by its gauge, with the flat head. */
export interface InchWoodScrewRow extends TableRow {
  readonly gauge: number;
  /** Basic diameter, in. */
  readonly diameterIn: number;
  /** Greatest diameter of the unthreaded body, in. */
  readonly bodyDiameterIn: number;
  readonly threadsPerIn: number;
  /** Greatest diameter of the flat head, to a sharp edge, in. */
  readonly headDiameterIn: number;
  /** Least diameter of the flat head, over a rounded or flat edge, in. */
  readonly headEdgeDiameterIn: number;
  /** Height of the flat head, in. */
  readonly headHeightIn: number;
}

/** Root diameter of a wood screw. */
export interface WoodScrewRootRow extends TableRow {
  readonly gauge: number;
  readonly diameterIn: number;
  readonly rootDiameterIn: number;
}

/** Thread of a lag screw of the inch series. */
export interface InchLagScrewRow extends TableRow {
  /** Size as printed: `3/8`, `No. 10`. */
  readonly size: string;
  readonly diameterIn: number;
  readonly threadsPerIn: number;
  readonly rootDiameterIn: number;
}

/** Tip of a lag screw of the inch series. */
export interface LagScrewTipRow extends TableRow {
  readonly size: string;
  readonly diameterIn: number;
  readonly rootDiameterIn: number;
  /** Length of the tapered tip, in. */
  readonly tipLengthIn: number;
}

/** A hexagon head wood screw of the metric series. */
export interface MetricLagScrewRow extends TableRow {
  readonly diameterMm: number;
  readonly rootDiameterMm: number;
  readonly pitchMm: number;
  /** Across two opposite flats of the head, mm. */
  readonly acrossFlatsMm: number;
  readonly headHeightMm: number;
}

/** A countersunk head wood screw of the metric series: its head. */
export interface MetricCountersunkWoodScrewRow extends TableRow {
  readonly diameterMm: number;
  readonly headDiameterMm: number;
  readonly headHeightMm: number;
}

/** A round head wood screw of the metric series. */
export interface MetricWoodScrewRow extends MetricCountersunkWoodScrewRow {
  readonly rootDiameterMm: number;
  readonly pitchMm: number;
}

/** A machine screw of the inch series, with the flat head. */
export interface InchMachineScrewRow extends TableRow {
  /** Size as printed: `1/4`, `No. 8`. */
  readonly size: string;
  readonly diameterIn: number;
  /** Of the coarse thread. */
  readonly threadsPerIn: number;
  /** Greatest diameter of the head, to a sharp edge, in. */
  readonly headDiameterIn: number;
  readonly headHeightIn: number;
}

/** Countersunk head of a metric machine screw. */
export interface MetricHeadRow extends TableRow {
  /** `M6` */
  readonly size: string;
  readonly diameterMm: number;
  /** Greatest diameter, to a sharp edge, mm. */
  readonly headDiameterMm: number;
  /** Over the edge as it is made, mm. */
  readonly headEdgeDiameterMm: number;
  readonly headHeightMm: number;
}

/** Coarse metric thread. */
export interface MetricThreadRow extends TableRow {
  /** `M6` */
  readonly size: string;
  readonly diameterMm: number;
  readonly pitchMm: number;
  /** Drill before tapping, mm. */
  readonly tapDrillDiameterMm: number;
}

/** Clearance holes of one diameter of screw. */
export interface MetricClearanceHoleRow extends TableRow {
  readonly diameterMm: number;
  readonly closeMm: number;
  readonly normalMm: number;
  readonly looseMm: number;
}

/** Clearance holes of one size of screw of the inch series. */
export interface InchClearanceHoleRow extends TableRow {
  readonly size: string;
  readonly diameterIn: number;
  readonly closeMm: number;
  readonly normalMm: number;
  readonly looseMm: number;
}

/** A drill by number or letter. */
export interface DrillRow extends TableRow {
  /** `No. 7`, `F`. */
  readonly name: string;
  readonly diameterIn: number;
}

/** A plain washer of the metric series. */
export interface MetricWasherRow extends TableRow {
  /** Screw that it is for: `M6`. */
  readonly size: string;
  readonly diameterMm: number;
  readonly insideDiameterMm: number;
  readonly outsideDiameterMm: number;
  readonly thicknessMm: number;
}

/** A plain washer of the inch series. */
export interface InchWasherRow extends TableRow {
  /** Screw that it is for: `1/4`, `No. 8`. */
  readonly size: string;
  readonly diameterIn: number;
  /** `undivided` below 1/4 in, where the table has one washer for each size. */
  readonly series: 'undivided' | 'narrow' | 'wide';
  readonly insideDiameterIn: number;
  readonly outsideDiameterIn: number;
  readonly thicknessIn: number;
}

/** A bright common wire nail. */
export interface CommonNailRow extends TableRow {
  /** Its penny size: `8d`. */
  readonly size: string;
  readonly lengthIn: number;
  readonly diameterIn: number;
}
