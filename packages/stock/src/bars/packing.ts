import { firstFit } from './first-fit.ts';
import { type Cuts, type Filling, isCut, type Job, type Rest, timesIn, type Work, without } from './job.ts';
import type { Relaxation, Relaxed } from './relaxation.ts';
import { spare, type Weights, weightsOf } from './weights.ts';

/** A way to cut all parts from the lengths; `null` where it is proven that there is none; or the work ran out. */
export type Packed = Cuts | null | 'undecided';

const nameOf = ({ stock, kinds, counts }: Filling) => `${stock}:${kinds}:${counts}`;

/** Fillings tried at each step of a pass, and the work that the pass may take: few and quick first, at last all. */
const PASSES = [
  { width: 3, steps: 20_000 },
  { width: 20, steps: 100_000 },
  { width: 200, steps: 300_000 },
  { width: 1e9, steps: 1e9 },
] as const;

/** What it costs to note down one filling. */
const FILLING_STEPS = 20;

/** Lengths filled one after another, each by a choice that may be taken back: more would fill the call stack. */
const MOST_CHOICES = 300;

/**
 * Fillings of a stock with the longest part left, into which no other part fits, and that no proof rules out: all of
 * them, or as many as were asked for.
 */
function fillingsWith(
  { first, stock, width }: { readonly first: number; readonly stock: number; readonly width: number },
  job: Job,
  rest: Rest,
  proofs: readonly Weights[],
  work: Work,
) {
  const { sizes, stocks } = job;
  const room = stocks[stock]?.room ?? 0;
  const found: { filling: Filling; roomLeft: number }[] = [];
  // What a filling must weigh at least, by each proof, or the rest will not fit.
  const needs = proofs.map((proof) => (proof.mosts[stock] as number) - spare(proof, rest));
  const weighed = proofs.map(() => 0);
  const kinds: number[] = [];
  const counts: number[] = [];
  const extend = (from: number, roomLeft: number, smallestLeftOut: number): void => {
    work.left -= 1;
    if (work.left < 0 || found.length > width) return;
    for (let i = 0; i < proofs.length; i++) {
      const { densest } = proofs[i] as Weights;
      if ((weighed[i] as number) + roomLeft * (densest[from] as number) < (needs[i] as number) - 0.5) return;
    }
    let kind = from;
    while (kind < sizes.length && (rest.demand[kind] === 0 || (sizes[kind] as number) > roomLeft)) kind += 1;
    if (kind === sizes.length) {
      if (smallestLeftOut <= roomLeft) return;
      if (proofs.some((_, i) => (weighed[i] as number) < (needs[i] as number))) return;
      work.left -= FILLING_STEPS;
      found.push({ filling: { stock, kinds: [...kinds], counts: [...counts] }, roomLeft });
      return;
    }
    const size = sizes[kind] as number;
    const have = rest.demand[kind] as number;
    const most = Math.min(have, Math.floor(roomLeft / size));
    for (let count = most; count >= (kind === first ? 1 : 0); count--) {
      if (count > 0) {
        kinds.push(kind);
        counts.push(count);
      }
      for (let i = 0; i < proofs.length; i++) {
        (weighed[i] as number) += count * ((proofs[i] as Weights).weights[kind] as number);
      }
      extend(
        kind + 1,
        roomLeft - count * size,
        count < have ? Math.min(smallestLeftOut, size) : smallestLeftOut,
      );
      for (let i = 0; i < proofs.length; i++) {
        (weighed[i] as number) -= count * ((proofs[i] as Weights).weights[kind] as number);
      }
      if (count > 0) {
        kinds.pop();
        counts.pop();
      }
    }
  };
  extend(first, room, Number.POSITIVE_INFINITY);
  return found;
}

/** Tries, for the longest part left, the fillings that may hold it, and so on, wherever no proof says that it is in vain. */
function tryFillings(
  job: Job,
  from: Rest,
  width: number,
  {
    proofs,
    relaxation,
    work,
  }: { readonly proofs: readonly Weights[]; readonly relaxation: Relaxation; readonly work: Work },
): Packed {
  const inVain = new Set<string>();
  let leftOut = false;

  /** What the relaxed plan would cut first, then the fullest. */
  const childrenOf = (rest: Rest, first: number, relaxed: Relaxed): readonly Filling[] => {
    const likely = relaxed.cuts
      // A plan in fractions that is not whole may cut more than is left.
      .filter(({ filling }) => filling.kinds[0] === first && timesIn(rest, filling) > 0)
      .toSorted((a, b) => b.times - a.times)
      .map(({ filling }) => filling);
    const others = job.stocks.flatMap((_, stock) => {
      if (rest.lengths[stock] === 0) return [];
      const found = fillingsWith({ first, stock, width }, job, rest, proofs, work);
      if (found.length > width) leftOut = true;
      return found.slice(0, width);
    });
    others.sort((a, b) => a.roomLeft - b.roomLeft);
    return [...likely, ...others.map(({ filling }) => filling)];
  };

  const search = (rest: Rest, tried: ReadonlySet<string>, choices: number): Packed => {
    if (isCut(rest)) return [];
    if (work.left < 0 || choices > MOST_CHOICES) return 'undecided';
    if (proofs.some((proof) => spare(proof, rest) < 0)) return null;
    const name = `${rest.lengths}:${rest.demand}`;
    if (inVain.has(name)) return null;
    const finished = firstFit(job, rest);
    if (finished) return finished;
    const relaxed = relaxation.fitting(rest, work);
    if (!relaxed.whole && spare(weightsOf(job, rest, relaxed, work), rest) < 0) {
      inVain.add(name);
      return null;
    }
    const first = rest.demand.findIndex((count) => count > 0);
    // In another order the same fillings would only come again.
    const triedNow = new Set((rest.demand[first] as number) > 1 ? tried : []);
    const seen = new Set(tried);
    for (const filling of childrenOf(rest, first, relaxed)) {
      const child = nameOf(filling);
      if (seen.has(child)) continue;
      seen.add(child);
      const next = without(rest, filling, 1);
      const packed = search(next, next.demand[first] ? triedNow : new Set(), choices + 1);
      if (packed === 'undecided') return packed;
      if (packed) return [{ filling, times: 1 }, ...packed];
      triedNow.add(child);
    }
    if (work.left < 0) return 'undecided';
    inVain.add(name);
    return null;
  };
  const packed = search(from, new Set(), 0);
  return packed === null && leftOut ? 'undecided' : packed;
}

/**
 * Whether parts can be cut from given lengths, by trying ever more fillings for the longest part, at last all.
 */
export function pack(
  job: Job,
  from: Rest,
  { proofs, relaxation }: { readonly proofs: readonly Weights[]; readonly relaxation: Relaxation },
  work: Work,
): Packed {
  for (const { width, steps } of PASSES) {
    if (work.left < 0) break;
    const some = Math.min(steps, work.left);
    const pass = { left: some };
    const packed = tryFillings(job, from, width, { proofs, relaxation, work: pass });
    work.left -= some - pass.left;
    if (packed !== 'undecided') return packed;
  }
  return 'undecided';
}
