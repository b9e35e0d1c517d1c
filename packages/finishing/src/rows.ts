import type { TableRow } from '@scantling/rules';

/** A grade of an abrasive, by the median size of its grains. */
export interface GritRow extends TableRow {
  /** As its scale writes it: `P120`, `F46`, `ANSI 120`. */
  readonly grade: string;
  /** Median size of the grains, µm. */
  readonly medianUm: number;
}

/** A solvent of finishes; for a single figure low and high are the same. */
export interface SolventRow extends TableRow {
  readonly substance: string;
  /** Other names, with semicolons between them. */
  readonly alsoCalled: string;
  readonly lowMolarMassGPerMol: number;
  readonly highMolarMassGPerMol: number;
  /** Density of the liquid against that of water. */
  readonly lowSpecificGravityRatio: number;
  readonly highSpecificGravityRatio: number;
  /** From this temperature on the liquid gives off enough vapour to be lit, °F. */
  readonly lowFlashPointF: number;
  readonly highFlashPointF: number;
  /** Least share of vapour in air that a flame runs through, % by volume; `null` where the table has none. */
  readonly lowerFlammableLimitPct: number | null;
}

/** Who sets an exposure limit. */
export type LimitSetter = 'OSHA' | 'NIOSH' | 'ACGIH';

/**
 * An average over a working day (TWA) or over a quarter of an hour (STEL); what may not be passed at any time
 * (ceiling), but for those of NIOSH for Stoddard solvent and VM&P naphtha, which are averages over 15 minutes; how far
 * above the ceiling for a short while (peak: for toluene, OSHA’s, 10 minutes in a shift of 8 hours); or what is
 * immediately dangerous to life or health (IDLH).
 */
export type LimitKind = 'TWA' | 'STEL' | 'ceiling' | 'peak' | 'IDLH';

/** How much of a substance somebody may breathe, as one body sets it. */
export interface ExposureLimitRow extends TableRow {
  readonly substance: string;
  readonly setBy: LimitSetter;
  readonly kind: LimitKind;
  /** To what work or part of the dust it applies, or when it was in force. */
  readonly applies: string;
  /** Parts of vapour to a million parts of air, by volume; `null` where none is printed. */
  readonly limitPpm: number | null;
  /** mg to the cubic metre of air; `null` where none is printed. */
  readonly limitMgPerM3: number | null;
}

/** A level of gloss, by what a gloss meter reads at 60° and at 85°; `null` where there is no limit. */
export interface GlossLevelRow extends TableRow {
  /** Its number in the standard. */
  readonly level: string;
  /** What it is like. */
  readonly likeness: string;
  /** Gloss units. */
  readonly leastAt60Gu: number | null;
  /** Gloss units. */
  readonly mostAt60Gu: number | null;
  /** Gloss units. */
  readonly leastAt85Gu: number | null;
  /** Gloss units. */
  readonly mostAt85Gu: number | null;
}
