import { bestFilling } from './best-filling.ts';
import { type Cuts, type Filling, type Job, type Rest, type Work, without } from './job.ts';

/** How much of the room to spare, shared out evenly over the lengths still to fill, one of them may waste. */
const SHARES = [1, 0.5, 2, 0] as const;

/** What the search may take for one length, and for all. */
const PATIENCE = 2000;
const STEPS = 60_000;

/**
 * One length filled with the longest part left, and with others until no more is wasted than may be, or so little as is
 * found.
 */
function fill({ sizes, stocks }: Job, demand: Int32Array, stock: number, mayWaste: number, work: Work) {
  const { room } = stocks[stock] as Job['stocks'][number];
  const first = demand.findIndex((count, kind) => count > 0 && (sizes[kind] as number) <= room);
  if (first < 0) return { filling: null, waste: room };
  const others = demand.slice();
  (others[first] as number) -= 1;
  const roomLeft = room - (sizes[first] as number);
  const { worth, kinds, counts } = bestFilling(
    {
      sizes,
      demand: others,
      room: roomLeft,
      worths: sizes,
      above: 0,
      least: 0.999,
      enough: roomLeft - mayWaste,
      patience: PATIENCE,
    },
    work,
  );
  const more = kinds[0] === first;
  const filling: Filling = {
    stock,
    kinds: more ? kinds : [first, ...kinds],
    counts: more ? [(counts[0] as number) + 1, ...counts.slice(1)] : [1, ...counts],
  };
  return { filling, waste: roomLeft - worth };
}

/** Fills lengths in the order given; `null` where more is wasted than there is to spare. */
function fillAll(
  job: Job,
  from: Rest,
  {
    order,
    share,
    toSpare,
  }: { readonly order: readonly number[]; readonly share: number; readonly toSpare: number },
  work: Work,
): Cuts | null {
  const cuts: { filling: Filling; times: number }[] = [];
  let rest = from;
  let left = toSpare;
  for (const [at, stock] of order.entries()) {
    const { filling, waste } = fill(job, rest.demand, stock, (share * left) / (order.length - at), work);
    left -= waste;
    if (left < 0 || work.left < 0) return null;
    if (!filling) continue;
    cuts.push({ filling, times: 1 });
    rest = without(rest, filling, 1);
  }
  // What was to spare has not been overdrawn: all the rest of the room holds parts.
  return cuts;
}

/**
 * A way to cut all parts from given lengths, where there is a little to spare: each length is filled to the brim, or
 * nearly, in turn. After Gupta and Ho (1999), minimum bin slack, with the longest part first and the waste allowed of
 * Fleszar and Hindi (2002). `null` where none is found.
 */
export function fillUp(job: Job, from: Rest, work: Work): Cuts | null {
  const falling = job.stocks.flatMap((_, stock) => Array<number>(from.lengths[stock] as number).fill(stock));
  const given = falling.reduce((sum, stock) => sum + (job.stocks[stock]?.room ?? 0), 0);
  const needed = job.sizes.reduce((sum, size, kind) => sum + size * (from.demand[kind] as number), 0);
  const toSpare = given - needed;
  const some = { left: Math.min(STEPS, work.left) };
  let cuts: Cuts | null = null;
  for (const share of SHARES) {
    for (const order of [falling, falling.toReversed()]) {
      cuts ??= toSpare < 0 || some.left < 0 ? null : fillAll(job, from, { order, share, toSpare }, some);
    }
  }
  work.left -= Math.min(STEPS, work.left) - some.left;
  return cuts;
}
