/** A printed figure beside ours, as the accuracy files of the packages give it. */
export interface Deviation {
  readonly printed: number;
  readonly ours: number;
  /** Half of its last printed digit, or what else it is known to. */
  readonly known: number;
  readonly at?: { readonly row: number; readonly column: number };
}

/** A comparison with one printed table. */
export interface AccuracyTable {
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
  readonly surface?: { readonly row: string; readonly column: string };
  readonly remark?: string;
  readonly deviations: readonly Deviation[];
}

/** What comes out of it. */
export interface AccuracySummary {
  readonly count: number;
  readonly confirmed: readonly { readonly how: 'text' | 'memory' | 'computed'; readonly count: number }[];
  readonly worst: string;
  readonly mean: string;
  readonly withinLastDigit: number;
}

// The code that writes the READMEs, so that the two cannot differ.
const [accuracy] = Object.values(
  import.meta.glob<{ readonly summaryOf: (table: AccuracyTable) => AccuracySummary }>(
    '../../../../tests-shared/src/accuracy.ts',
    { eager: true },
  ),
);
if (!accuracy) throw new Error('tests-shared/src/accuracy.ts is not where it was.');

export const { summaryOf } = accuracy;
