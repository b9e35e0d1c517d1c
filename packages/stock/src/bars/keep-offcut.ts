import type { Cuts, Job, Work } from './job.ts';
import { restOf } from './job.ts';
import { pack } from './packing.ts';
import { barsFor } from './plan-price.ts';
import { tighten } from './tighten.ts';
import { materialWeights } from './weights.ts';

/** Room left in one length, where it is cut by a filling. */
const roomLeft = ({ sizes, stocks }: Job, { filling }: Cuts[number]) =>
  filling.kinds.reduce(
    (room, kind, i) => room - (sizes[kind] as number) * (filling.counts[i] as number),
    stocks[filling.stock]?.room ?? 0,
  );

/** The most room left in one length of a plan. */
export const longestLeft = (job: Job, cuts: Cuts): number =>
  Math.max(0, ...cuts.map((cut) => roomLeft(job, cut)));

/**
 * A plan for the same bars with a longer offcut, if one is found: an offcut is a part like any other, so the longest
 * one that still fits is sought by halving.
 */
export function keepLongestOffcut(job: Job, cuts: Cuts, resolution: number, work: Work): Cuts {
  const { sizes, demand, stocks } = job;
  const bars = barsFor(job, cuts);
  const bought = restOf(job, bars);
  const room = stocks.reduce((sum, stock, i) => sum + stock.room * (bought.lengths[i] as number), 0);
  const spare = room - sizes.reduce((sum, size, kind) => sum + size * (demand[kind] as number), 0);
  let best = cuts;
  let kept = longestLeft(job, cuts);
  let tooLong = Math.min(spare, Math.max(...stocks.map((stock, i) => (bars[i] ? stock.room : 0)))) + 1;
  for (let size = tooLong - 1; size > kept && work.left > 0; ) {
    const at = sizes.findIndex((other) => other <= size);
    const place = at < 0 ? sizes.length : at;
    const asked = {
      sizes: sizes.toSpliced(place, 0, size),
      demand: demand.toSpliced(place, 0, 1),
      stocks,
    };
    const withOffcut = tighten(asked, work);
    const rest = restOf(withOffcut, bars);
    const packed = pack(withOffcut, rest, [materialWeights(withOffcut)], [], work);
    if (packed && packed !== 'undecided') {
      best = packed.map(({ filling, times }) => {
        const used = filling.kinds.map((kind, i) => ({ kind, count: filling.counts[i] as number }));
        const parts = used.filter(({ kind }) => kind !== place);
        return {
          filling: {
            stock: filling.stock,
            kinds: parts.map(({ kind }) => (kind > place ? kind - 1 : kind)),
            counts: parts.map(({ count }) => count),
          },
          times,
        };
      });
      kept = longestLeft(job, best);
    } else tooLong = size;
    if (tooLong - kept <= Math.max(1, resolution)) break;
    size = Math.floor((kept + tooLong) / 2);
  }
  return best;
}
