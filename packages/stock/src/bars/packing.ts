import { dive } from './dive.ts';
import { firstFit } from './first-fit.ts';
import { type Cuts, type Filling, isCut, type Job, type Rest, type Work, without } from './job.ts';
import { relax } from './relaxation.ts';
import { spare, type Weights, weightsOf } from './weights.ts';

/** A way to cut all parts from the lengths; `null` where it is proven that there is none; or the work ran out. */
export type Packed = Cuts | null | 'undecided';

const nameOf = ({ stock, kinds, counts }: Filling) => `${stock}:${kinds}:${counts}`;

/** Every filling of a stock with the longest part left, into which no other part fits, that no proof rules out. */
function fillingsWith(
  first: number,
  stock: number,
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
    if (work.left < 0) return;
    for (let i = 0; i < proofs.length; i++) {
      const { densest } = proofs[i] as Weights;
      if ((weighed[i] as number) + roomLeft * (densest[from] as number) < (needs[i] as number) - 0.5) return;
    }
    let kind = from;
    while (kind < sizes.length && (rest.demand[kind] === 0 || (sizes[kind] as number) > roomLeft)) kind += 1;
    if (kind === sizes.length) {
      if (smallestLeftOut <= roomLeft) return;
      if (proofs.some((_, i) => (weighed[i] as number) < (needs[i] as number))) return;
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

/**
 * Whether parts can be cut from given lengths. First by rounding; then by trying, for the longest part left, every
 * filling that may hold it, and so on, wherever no proof says that the rest cannot be cut from what is left.
 */
export function pack(job: Job, from: Rest, proofs: readonly Weights[], known: Filling[], work: Work): Packed {
  const quick = dive(job, from, known, Number.POSITIVE_INFINITY, work);
  if (quick) return quick;
  const impossible = new Set<string>();

  const search = (rest: Rest, tried: ReadonlySet<string>): Packed => {
    if (isCut(rest)) return [];
    if (work.left < 0) return 'undecided';
    if (proofs.some((proof) => spare(proof, rest) < 0)) return null;
    const name = `${rest.lengths}:${rest.demand}`;
    if (impossible.has(name)) return null;
    const finished = firstFit(job, rest);
    if (finished) return finished;
    const relaxed = relax(job, rest, known, work);
    if (!relaxed.whole && spare(weightsOf(job, rest, relaxed.worths, work), rest) < 0) {
      impossible.add(name);
      return null;
    }
    const first = rest.demand.findIndex((count) => count > 0);
    const times = new Map(relaxed.cuts.map(({ filling, times }) => [nameOf(filling), times]));
    const children = job.stocks
      .flatMap((_, stock) => (rest.lengths[stock] ? fillingsWith(first, stock, job, rest, proofs, work) : []))
      .map((child) => ({ ...child, name: nameOf(child.filling) }))
      .filter((child) => !tried.has(child.name))
      .map((child) => ({ ...child, times: times.get(child.name) ?? 0 }))
      .sort((a, b) => b.times - a.times || a.roomLeft - b.roomLeft);
    // In another order the same fillings would only come again.
    const triedNow = new Set((rest.demand[first] as number) > 1 ? tried : []);
    for (const { filling, name: child } of children) {
      const next = without(rest, filling, 1);
      const packed = search(next, next.demand[first] ? triedNow : new Set());
      if (packed === 'undecided') return packed;
      if (packed) return [{ filling, times: 1 }, ...packed];
      triedNow.add(child);
    }
    if (work.left < 0) return 'undecided';
    impossible.add(name);
    return null;
  };
  return search(from, new Set());
}
