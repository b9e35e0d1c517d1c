import type { Outlook } from './bounds.ts';
import { covers, type Front, frontArea, nextFronts, roomLeft, sectionArea } from './front.ts';
import { type Blank, type Job, ROUNDING, type Sheet, sidesOf, TICKS_PER_MM } from './job.ts';

/** A part on a board, and all that was cut before it. */
export interface Step {
  readonly before: Step | null;
  /** Its place in the job's kinds. */
  readonly kind: number;
  readonly blank: Blank;
  readonly sheet: Sheet;
  readonly front: Front;
}

/** The best plan so far, ended by its last part. */
export interface Best {
  readonly last: Step | null;
  readonly value: number;
  readonly price: number;
  /** Area past the last section, in the board that was cut last. */
  readonly rest: number;
}

/** What a search goes on with: the best plan, and how many more parts it may place. */
export interface Progress {
  best: Best;
  stepsLeft: number;
}

/** No plan that was not looked at cuts more than this value, or as much as the best for less than this price. */
export interface PassedOver {
  readonly mostValue: number;
  readonly leastPrice: number;
}

/** How a look chooses. */
export interface Choice {
  /** Partial plans kept for each number of parts. */
  readonly width: number;
  /** What counts as used up of the board being cut: its strips so far, or its sections so far. */
  readonly usedBy: 'strips' | 'sections';
}

interface Partial extends Step, PassedOver {
  /** Its blank's place in the list. */
  readonly at: number;
  /** Pieces of each kind that are still wanted, before this one. */
  readonly wanted: Uint16Array;
  readonly value: number;
  readonly price: number;
  /** Enlarged area of what is cut, mm², in all and from this board. */
  readonly area: number;
  readonly boardArea: number;
  /** Price for what was cut, of this board only what is used up. */
  readonly guide: number;
}

/** A partial plan that is kept, and what it leaves to be cut. */
interface Kept {
  readonly plan: Partial | null;
  readonly wanted: Uint16Array;
}

/** Above 1, plans that have cut much come before those that have cut a little with little waste; found by trying. */
const HASTE = 1.3;

/**
 * Grows plans part by part, in the order in which a board is cut. Of all that have as many parts the most promising
 * are kept, save those that another can stand for. Where none had to be passed over, the best is the best there is.
 * Gives `null` where work ran out.
 */
export function look(job: Job, outlook: Outlook, progress: Progress, choice: Choice): PassedOver | null {
  const { kinds, blanks, kerf, filled } = job;
  const { total, exchange } = outlook;
  const sameValue = total * ROUNDING;
  const samePrice = blanks.reduce((sum, { price }) => sum + price, 0) * ROUNDING;

  const worthless = ({ mostValue, leastPrice }: PassedOver): boolean => {
    const { value, price } = progress.best;
    if (mostValue > value + sameValue) return false;
    return mostValue < value - sameValue || leastPrice >= price - samePrice;
  };

  function consider(one: Partial): void {
    const { best } = progress;
    const rest = (one.sheet.u1 - one.front.s1) * (one.sheet.v1 - one.sheet.v0);
    const [more, cheaper] = [one.value - best.value, best.price - one.price];
    const better =
      more > sameValue ||
      (more > -sameValue && (cheaper > samePrice || (cheaper > -samePrice && rest > best.rest)));
    if (better) progress.best = { last: one, value: one.value, price: one.price, rest };
  }

  function added(from: Kept, at: number, sheet: Sheet, kind: number, front: Front): Partial {
    progress.stepsLeft -= 1;
    const { plan, wanted } = from;
    const blank = blanks[at] as Blank;
    const opened = plan?.blank !== blank;
    const partArea = outlook.areas[kind] as number;
    const value = (plan?.value ?? 0) + (kinds[kind]?.value as number);
    const area = (plan?.area ?? 0) + partArea;
    const boardArea = partArea + (opened ? 0 : (plan?.boardArea ?? 0));
    const price = (plan?.price ?? 0) + (opened ? blank.price : 0);
    const capacity = (outlook.capacity[at] as number) - boardArea;
    const [alongU, alongV] =
      sheet.firstCut === 'across' ? [filled.across, filled.along] : [filled.along, filled.across];
    const here = Math.min(capacity, roomLeft(front, sheet, kerf, alongU, alongV) / TICKS_PER_MM ** 2);
    const room = here + (outlook.capacityFrom[at + 1] as number);
    const left = (i: number) => (wanted[i] as number) - Number(i === kind);
    const areaLeft = outlook.totalArea - area;
    const { best } = progress;
    const needed =
      best.value >= total - sameValue ? areaLeft : exchange.areaFor(best.value - value - sameValue, left);
    const later = needed * (1 - ROUNDING) - here;
    const usedArea = choice.usedBy === 'strips' ? frontArea(front, sheet) : sectionArea(front, sheet);
    const used = usedArea / ((sheet.u1 - sheet.u0) * (sheet.v1 - sheet.v0));
    const guide = (price - blank.price * (1 - used)) / value ** HASTE;
    const mostValue = room >= areaLeft ? total : value + exchange.valueOf(room, left);
    const leastPrice = price + (later <= 0 ? 0 : outlook.leastPrice(at + 1, later));
    const one: Partial = {
      before: plan,
      kind,
      blank,
      sheet,
      front,
      at,
      wanted,
      value,
      price,
      area,
      boardArea,
      guide,
      mostValue,
      leastPrice,
    };
    consider(one);
    return one;
  }

  const sides = {
    across: kinds.map((kind) => sidesOf(kind, 'across')),
    along: kinds.map((kind) => sidesOf(kind, 'along')),
  };
  const frontsAfter = (front: Front | null, sheet: Sheet, kind: number): Front[] =>
    (sides[sheet.firstCut][kind] ?? []).flatMap((side) => nextFronts(front, sheet, kerf, side));
  /** By board and kind: the fronts of a first part. */
  const openings = blanks.map(({ sheets }) =>
    kinds.map((_, kind) => sheets.map((sheet) => ({ sheet, fronts: frontsAfter(null, sheet, kind) }))),
  );

  /** Every plan with one more part that may lead to something better, added to a list. */
  function grow(from: Kept, list: Partial[]): void {
    const { plan } = from;
    const now = plan?.at ?? -1;
    const add = (at: number, sheet: Sheet, kind: number, fronts: readonly Front[]) => {
      for (const front of fronts) {
        const one = added(from, at, sheet, kind, front);
        if (!worthless(one)) list.push(one);
      }
    };
    for (const [kind, count] of from.wanted.entries()) {
      if (count === 0) continue;
      if (plan) add(now, plan.sheet, kind, frontsAfter(plan.front, plan.sheet, kind));
      for (let at = now + 1; at < blanks.length; at += 1) {
        // Of boards that are alike the first is cut first.
        if (at - 1 > now && blanks[at]?.key === blanks[at - 1]?.key) continue;
        for (const { sheet, fronts } of openings[at]?.[kind] ?? []) add(at, sheet, kind, fronts);
      }
    }
  }

  /** Whether whatever can follow `b` can follow `a` too, for no more. Both have cut the same parts. */
  const dominates = (a: Partial, b: Partial): boolean =>
    a.at === b.at
      ? a.price <= b.price + samePrice && a.sheet === b.sheet && covers(a.front, b.front)
      : a.at < b.at && a.price + b.blank.price <= b.price + samePrice;

  let mostValue = 0;
  let leastPrice = Number.POSITIVE_INFINITY;
  let layer: Kept[] = [{ plan: null, wanted: Uint16Array.from(kinds, ({ ids }) => ids.length) }];
  while (layer.length > 0) {
    const next: Partial[] = [];
    for (const kept of layer) {
      grow(kept, next);
      if (progress.stepsLeft <= 0 && choice.width > 1) return null;
    }
    next.sort((a, b) => a.guide - b.guide);
    layer = [];
    const alike = new Map<string, Partial[]>();
    for (const plan of next) {
      if (worthless(plan)) continue;
      if (layer.length >= choice.width) {
        mostValue = Math.max(mostValue, plan.mostValue);
        leastPrice = Math.min(leastPrice, plan.leastPrice);
        continue;
      }
      const wanted = plan.wanted.slice();
      wanted[plan.kind] = (wanted[plan.kind] as number) - 1;
      const key = wanted.join();
      const same = alike.get(key) ?? [];
      if (same.some((other) => dominates(other, plan))) continue;
      alike.set(key, [...same, plan]);
      layer.push({ plan, wanted });
    }
  }
  return { mostValue, leastPrice };
}
