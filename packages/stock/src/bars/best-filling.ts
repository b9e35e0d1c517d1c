import type { Work } from './job.ts';

/** What a length of stock can hold that is worth most. */
export interface BestFilling {
  /** No filling is worth more. */
  readonly bound: number;
  /** Worth of the filling found: the bound, unless the work ran out or nothing is worth enough. */
  readonly worth: number;
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

/**
 * The parts that are worth most in one length of stock: branch and bound over the kinds, the worthiest for its length
 * first. Only fillings worth more than `above` are looked for, and one worth `enough` will do, as will any after as many
 * steps as there is patience for. `least` is the least by which a better filling must be better: just below 1 where
 * worths are whole numbers.
 */
export function bestFilling(
  {
    sizes,
    demand,
    room,
    worths,
    above,
    least,
    enough = Number.POSITIVE_INFINITY,
    patience = Number.POSITIVE_INFINITY,
  }: {
    readonly sizes: readonly number[];
    readonly demand: ArrayLike<number>;
    readonly room: number;
    readonly worths: ArrayLike<number>;
    readonly above: number;
    readonly least: number;
    readonly enough?: number;
    readonly patience?: number;
  },
  work: Work,
): BestFilling {
  const kinds: number[] = [];
  const density: number[] = [];
  for (let kind = 0; kind < sizes.length; kind++) {
    const fits = (demand[kind] as number) > 0 && (sizes[kind] as number) <= room;
    density.push((worths[kind] as number) / (sizes[kind] as number));
    if (fits && (worths[kind] as number) > 0) kinds.push(kind);
  }
  kinds.sort((a, b) => (density[b] as number) - (density[a] as number) || a - b);
  const n = kinds.length;
  // Plain arrays: this is asked thousands of times for a few kinds, and typed ones take longer to make.
  const size = kinds.map((kind) => sizes[kind] as number);
  const worth = kinds.map((kind) => worths[kind] as number);
  const most = kinds.map((kind) => demand[kind] as number);
  // Smallest size from here on: below it nothing more fits.
  const smallest = [...size, Number.POSITIVE_INFINITY];
  for (let i = n - 1; i >= 0; i--) {
    smallest[i] = Math.min(smallest[i + 1] as number, size[i] as number);
  }
  const now = kinds.map(() => 0);
  let best = now.slice();
  let bestWorth = above;
  let bound = 0;
  const hurryFrom = work.left - patience;

  /** No filling of what room is left with kinds from here on is worth more: whole parts, and a share of the next. */
  const relaxed = (from: number, roomLeft: number): number => {
    let room = roomLeft;
    let sum = 0;
    for (let i = from; i < n; i++) {
      const fit = Math.floor(room / (size[i] as number));
      const count = Math.min(fit, most[i] as number);
      sum += count * (worth[i] as number);
      room -= count * (size[i] as number);
      if (fit === count) return sum + (room * (worth[i] as number)) / (size[i] as number);
    }
    return sum;
  };

  const search = (from: number, roomLeft: number, sum: number): void => {
    work.left -= 1;
    if (sum >= bestWorth + least) {
      bestWorth = sum;
      best = now.slice();
    }
    let i = from;
    while (i < n && (size[i] as number) > roomLeft) i += 1;
    if (i === n || (smallest[i] as number) > roomLeft) return;
    const hope = sum + relaxed(i, roomLeft);
    if (hope < bestWorth + least) return;
    if (work.left < 0 || bestWorth >= enough || (work.left < hurryFrom && bestWorth > above)) {
      bound = Math.max(bound, hope);
      return;
    }
    const fit = Math.min(most[i] as number, Math.floor(roomLeft / (size[i] as number)));
    for (let count = fit; count >= 0; count--) {
      now[i] = count;
      search(i + 1, roomLeft - count * (size[i] as number), sum + count * (worth[i] as number));
    }
    now[i] = 0;
  };
  search(0, room, 0);

  const used: { kind: number; count: number }[] = [];
  for (let i = 0; i < n; i++) {
    if (best[i]) used.push({ kind: kinds[i] as number, count: best[i] as number });
  }
  used.sort((a, b) => a.kind - b.kind);
  return {
    bound: Math.max(bound, bestWorth),
    worth: bestWorth,
    kinds: used.map(({ kind }) => kind),
    counts: used.map(({ count }) => count),
  };
}
