import type { Check, Computed } from '../result.ts';

/** A question to a plan. What is asked of a section that the plan leaves out has no answer. */
export type Question = (computed: Computed) => Check | null;

/** A section that a plan may leave out: what is computed of it, `null` where it is left out, and what is asked of it. */
export interface Section<Planned extends (...given: never[]) => unknown> {
  readonly planned: (...given: Parameters<Planned>) => ReturnType<Planned> | null;
  readonly checks: readonly Question[];
}
