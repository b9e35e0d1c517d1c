import type { Status, WorktopPlan } from '../../result.ts';

/** What a check has to say of a finished plan. */
export interface Expected {
  readonly status: Status;
  readonly figures: readonly number[];
  /** What there is, and what is needed or allowed. */
  readonly margin?: readonly [thereIs: number, limit: number];
}

/** By the id of the check; `null` where a plan does not ask for it. */
export type Verdicts = Readonly<Record<string, (result: WorktopPlan) => Expected | null>>;

const ROUNDING = 1e-6;

export const graver = (fails: boolean, warns = false): Status => (fails ? 'fail' : warns ? 'warn' : 'pass');

export const atLeast = (thereIs: number, needed: number): boolean => thereIs >= needed - ROUNDING;

/** The item where a measure is least, and that measure. */
export function lowest<T>(items: readonly T[], of: (item: T) => number): { item: T; value: number } | null {
  const ranked = items.map((item) => ({ item, value: of(item) })).sort((a, b) => a.value - b.value);
  return ranked[0] ?? null;
}
