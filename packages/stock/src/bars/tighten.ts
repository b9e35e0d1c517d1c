import { bestFilling } from './best-filling.ts';
import type { Job, Work } from './job.ts';

/** A table of sums up to this room, or this many steps of a search, is worth its time. */
const MOST_TABLE = 200_000;
const MOST_STEPS = 20_000;

/** Every sum of sizes up to a room, as bits: the last one that is set is the most that can be filled. */
function largestSum(sizes: readonly number[], demand: readonly number[], room: number): number {
  const words = (room >> 5) + 1;
  const sums = new Uint32Array(words);
  sums[0] = 1;
  const join = (by: number) => {
    const [skip, bits] = [by >> 5, by & 31];
    for (let to = words - 1; to >= skip; to--) {
      const high = (sums[to - skip] as number) << bits;
      const low = bits > 0 && to > skip ? (sums[to - skip - 1] as number) >>> (32 - bits) : 0;
      (sums[to] as number) |= high | low;
    }
  };
  for (const [kind, size] of sizes.entries()) {
    // 1, 2, 4 … and a remainder add up to every count.
    let left = Math.min(demand[kind] as number, Math.floor(room / size));
    for (let bundle = 1; left > 0; bundle *= 2) {
      const count = Math.min(bundle, left);
      join(count * size);
      left -= count;
    }
  }
  let sum = room;
  while ((((sums[sum >> 5] as number) >>> (sum & 31)) & 1) === 0) sum -= 1;
  return sum;
}

/** The same job with rooms that parts can fill to the last tick, or no tick above it was ruled out. */
export function tighten({ sizes, demand, stocks }: Job, work: Work): Job {
  const filled = (room: number) => {
    const bundles = demand.reduce((sum, count) => sum + Math.log2(count + 1), 0);
    if (room <= MOST_TABLE && bundles * room <= MOST_TABLE * 1000) {
      work.left -= (bundles * room) / 1000;
      return largestSum(sizes, demand, room);
    }
    const some = { left: MOST_STEPS };
    const given = { sizes, demand, room, worths: sizes, above: 0, least: 0.999 };
    const { bound } = bestFilling(given, some);
    work.left -= MOST_STEPS - some.left;
    return Math.min(room, Math.round(bound));
  };
  return { sizes, demand, stocks: stocks.map((stock) => ({ ...stock, room: filled(stock.room) })) };
}
