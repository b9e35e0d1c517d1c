import { areaBounds, outlookOf, tightest, valueBounds } from './bounds.ts';
import { cutAnew } from './cut-anew.ts';
import type { Job } from './job.ts';
import type { BoardSet } from './least-price.ts';
import { type Best, type Choice, look, type Progress } from './look.ts';
import { mostOfBoard } from './most-of-board.ts';
import { setsByPrice } from './sets-by-price.ts';

/** Work is counted in parts placed, so that the same question always gets the same answer. */
const MOST_STEPS = 800_000;

/** So many more to learn what each board can give, to cut boards anew, and to rule out what is left. */
const BOARD_STEPS = 600_000;
const ANEW_STEPS = 800_000;
const LAST_STEPS = 200_000;

/** Partial plans kept for each number of parts where boards are cut anew. */
const ANEW_WIDTH = 36;

/** Every look is this much wider than the one before. */
const WIDER = 6;

/** Sets of boards looked at by themselves after each look at all boards. */
const SETS_AT_A_TIME = 12;

/** Sets of boards that are ruled out one by one. */
const MOST_SETS = 5000;

/** What is less than this share is less by more than rounding. */
const LESS = 0.999_999_999;

/** The best plan found, and what no plan can pass. */
export interface Found extends Best {
  readonly mostValue: number;
  /** Least price for as much value. */
  readonly leastPrice: number;
}

const boardsOf = ({ members }: BoardSet): number[] => {
  const found: number[] = [];
  for (let one = members; one; one = one.others) found.push(one.index);
  return found;
};

/** Finds the plan of most value and, at that, of least price. */
export function searchPlans(job: Job): Found {
  const { blanks } = job;
  const outlook = outlookOf(job);
  let bounds = areaBounds(job);
  const progress: Progress = { best: { last: null, value: 0, price: 0, rest: 0 }, stepsLeft: MOST_STEPS };
  let { mostValue } = bounds;
  let leastPrice = 0;

  const proven = (): boolean =>
    mostValue * LESS <= progress.best.value && leastPrice >= progress.best.price * LESS;

  /** Looks at all boards, and learns from what was passed over. */
  function lookAtAll(choice: Choice): void {
    const passedOver = look(job, outlook, progress, choice);
    const { best } = progress;
    if (passedOver) {
      mostValue = Math.min(mostValue, Math.max(best.value, passedOver.mostValue));
      leastPrice = Math.max(leastPrice, Math.min(best.price, passedOver.leastPrice));
    }
    learn();
  }

  /** Holds what the bounds say against the best plan. */
  function learn(): void {
    mostValue = Math.min(mostValue, bounds.mostValue);
    leastPrice = Math.max(leastPrice, bounds.leastPrice(progress.best.value * LESS));
  }

  function lookAt(boards: readonly number[], choice: Choice) {
    const some = { ...job, blanks: blanks.filter((_, i) => boards.includes(i)) };
    return look(some, outlookOf(some), progress, choice);
  }

  /** Looks at some boards alone: the sets that cost less than the best plan, those that hold most first. */
  function lookAtSets(choice: Choice): void {
    const cheaper = outlook.sets.filter(({ price }) => price < progress.best.price * LESS);
    for (const set of cheaper.reverse().slice(0, SETS_AT_A_TIME)) {
      const { best, stepsLeft } = progress;
      const boards = boardsOf(set);
      if (stepsLeft > 0 && set.price < best.price * LESS && bounds.mayHold(boards, best.value * LESS)) {
        lookAt(boards, choice);
      }
    }
  }

  /** Rules out set after set, the cheapest first, by its area or by a look at all plans, as far as the steps go. */
  function ruleOutSets(steps: number): void {
    const kept = progress.stepsLeft - steps;
    progress.stepsLeft = steps;
    let sets = 0;
    for (const { members, price } of setsByPrice(blanks.map((blank) => blank.price))) {
      const { best } = progress;
      if (price >= best.price * LESS) {
        leastPrice = best.price;
        break;
      }
      leastPrice = Math.max(leastPrice, price);
      sets += 1;
      if (sets > MOST_SETS) break;
      // Of boards that are alike the first is cut first.
      if (members.some((one) => blanks[one]?.key === blanks[one - 1]?.key && !members.includes(one - 1)))
        continue;
      if (!bounds.mayHold(members, best.value * LESS)) continue;
      if (progress.stepsLeft <= 0) break;
      const widest = { width: Number.POSITIVE_INFINITY, usedBy: 'strips' } as const;
      if (!lookAt(members, widest)) break;
    }
    progress.stepsLeft += kept;
  }

  /** Learns what each board can give by itself. */
  function lookAtEachBoard(): void {
    const steps = BOARD_STEPS / blanks.length;
    const most = blanks.map((blank) => mostOfBoard(job, blank, steps));
    bounds = tightest([bounds, valueBounds(job, most)]);
    learn();
  }

  for (let width = 1; progress.stepsLeft > 0 && !proven(); width *= WIDER) {
    for (const usedBy of ['strips', 'sections'] as const) {
      if (!proven()) lookAtAll({ width, usedBy });
    }
    if (!proven()) lookAtSets({ width, usedBy: 'strips' });
    if (!proven()) ruleOutSets(width === 1 ? 0 : progress.stepsLeft / 4);
  }
  if (!proven()) lookAtEachBoard();
  if (!proven()) {
    progress.stepsLeft = ANEW_STEPS;
    cutAnew(job, progress, { width: ANEW_WIDTH, usedBy: 'strips' });
    learn();
  }
  if (!proven()) ruleOutSets(LAST_STEPS);
  const { best } = progress;
  return {
    ...best,
    mostValue: Math.max(mostValue, best.value),
    leastPrice: Math.min(leastPrice, best.price),
  };
}
