import { outlookOf } from './bounds.ts';
import { type Blank, type Job, ROUNDING } from './job.ts';
import { look, type Progress } from './look.ts';

/** By this share the value asked of a board is lessened as long as it can be ruled out. */
const LESSER = 0.98;

/**
 * A value that no plan can pass in one board, for so many steps: less and less is asked of it, and ruled out by a look at
 * all plans, until one is found or the steps run out.
 */
export function mostOfBoard(job: Job, blank: Blank, steps: number): number {
  const alone = { ...job, blanks: [blank] };
  const outlook = outlookOf(alone);
  const left = (kind: number) => job.kinds[kind]?.ids.length as number;
  let mostValue = outlook.exchange.valueOf(outlook.capacity[0] as number, left);
  let stepsLeft = steps;
  // A board that no part fits gives nothing; to ask less of it would never end.
  while (stepsLeft > 0 && mostValue > 0) {
    const asked = mostValue * LESSER;
    const progress: Progress = { best: { last: null, value: asked, price: 0, rest: 0 }, stepsLeft };
    const everything = { width: Number.POSITIVE_INFINITY, usedBy: 'strips' } as const;
    if (!look(alone, outlook, progress, everything)) break;
    mostValue = progress.best.value;
    if (progress.best.last) break;
    stepsLeft = progress.stepsLeft;
  }
  return mostValue + outlook.total * ROUNDING;
}
