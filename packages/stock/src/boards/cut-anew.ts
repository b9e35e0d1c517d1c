import { outlookOf } from './bounds.ts';
import type { Blank, Job } from './job.ts';
import { type Best, type Choice, look, type Progress, type Step } from './look.ts';

/** The steps of a plan, the first one first. */
export function stepsOf({ last }: Best): Step[] {
  const steps: Step[] = [];
  for (let step = last; step; step = step.before) steps.push(step);
  return steps.reverse();
}

/** Every choice of so many out of a list. */
function groupsOf<T>(size: number, list: readonly T[]): T[][] {
  if (size === 0) return [[]];
  return list.flatMap((one, i) => groupsOf(size - 1, list.slice(i + 1)).map((others) => [one, ...others]));
}

/** Boards of a plan that are cut anew together. */
const GROUPS = [1, 2, 3];

/**
 * Betters a plan a few boards at a time: what is cut from them, and what is missing, is cut anew from them and from boards
 * not used so far. The rest of the plan stays.
 */
export function cutAnew(job: Job, progress: Progress, choice: Choice): void {
  const tried = new Set<string>();

  /** Whether a plan came of it that is better. */
  function better(steps: readonly Step[], freed: readonly Blank[], used: readonly Blank[]): boolean {
    const kept = steps.filter(({ blank }) => !freed.includes(blank));
    const kinds = job.kinds.map((one, i) => ({
      ...one,
      ids: one.ids.slice(kept.filter(({ kind }) => kind === i).length),
    }));
    const blanks = job.blanks.filter((one) => freed.includes(one) || !used.includes(one));
    const part = { ...job, kinds, blanks };
    const value = kept.reduce((sum, { kind }) => sum + (job.kinds[kind]?.value as number), 0);
    const price = used.reduce((sum, one) => sum + (freed.includes(one) ? 0 : one.price), 0);
    const { best, stepsLeft } = progress;
    const anew: Progress = {
      best: {
        last: null,
        value: best.value - value,
        price: best.price - price,
        rest: Number.POSITIVE_INFINITY,
      },
      stepsLeft,
    };
    look(part, outlookOf(part), anew, choice);
    progress.stepsLeft = anew.stepsLeft;
    if (!anew.best.last) return false;
    const last = [...kept, ...stepsOf(anew.best)].reduce<Step | null>(
      (before, step) => ({ ...step, before }),
      null,
    );
    progress.best = { ...anew.best, last, value: value + anew.best.value, price: price + anew.best.price };
    return true;
  }

  /** Cuts one group of boards anew that was not tried; whether there was one. */
  function next(): boolean {
    const steps = stepsOf(progress.best);
    const used = [...new Set(steps.map(({ blank }) => blank))];
    for (const size of GROUPS) {
      for (const freed of groupsOf(size, used)) {
        const key = steps
          .filter(({ blank }) => freed.includes(blank))
          .map(({ blank, kind }) => [blank.index, kind])
          .join();
        if (tried.has(key)) continue;
        tried.add(key);
        if (better(steps, freed, used)) return true;
        if (progress.stepsLeft <= 0) return false;
      }
    }
    return false;
  }
  while (progress.stepsLeft > 0 && next());
}
