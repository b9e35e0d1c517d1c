import { bestFilling } from './best-filling.ts';
import type { Cuts, Filling, Job, Work } from './job.ts';

/** Room that a filling takes of its length. */
const taken = ({ sizes }: Job, { kinds, counts }: Filling): number =>
  kinds.reduce((sum, kind, i) => sum + (sizes[kind] as number) * (counts[i] as number), 0);

const roomLeft = (job: Job, filling: Filling): number =>
  (job.stocks[filling.stock]?.room ?? 0) - taken(job, filling);

/** The most room left in one length of a plan. */
const longestLeft = (job: Job, cuts: Cuts): number =>
  cuts.reduce((most, { filling }) => Math.max(most, roomLeft(job, filling)), 0);

/** The parts of two lengths dealt anew: the second as full as can be, the first gets the rest. `null` if it is so already. */
function dealt(job: Job, first: Filling, second: Filling, work: Work): readonly [Filling, Filling] | null {
  if (roomLeft(job, second) === 0) return null;
  const pool = new Map<number, number>();
  for (const { kinds, counts } of [first, second]) {
    for (const [i, kind] of kinds.entries()) pool.set(kind, (pool.get(kind) ?? 0) + (counts[i] as number));
  }
  const kinds = [...pool.keys()].sort((a, b) => a - b);
  const sizes = kinds.map((kind) => job.sizes[kind] as number);
  const demand = kinds.map((kind) => pool.get(kind) as number);
  const room = job.stocks[second.stock]?.room ?? 0;
  const fullest = bestFilling(
    { sizes, demand, room, worths: sizes, above: taken(job, second), least: 0.999 },
    work,
  );
  if (fullest.kinds.length === 0) return null;
  for (const [i, at] of fullest.kinds.entries()) (demand[at] as number) -= fullest.counts[i] as number;
  const rest = kinds
    .map((kind, i) => ({ kind, count: demand[i] as number }))
    .filter(({ count }) => count > 0);
  return [
    { stock: first.stock, kinds: rest.map(({ kind }) => kind), counts: rest.map(({ count }) => count) },
    { stock: second.stock, kinds: fullest.kinds.map((at) => kinds[at] as number), counts: fullest.counts },
  ];
}

/**
 * A plan for the same bars with a longer offcut, if one is found: from each length in turn, parts are moved to every other
 * one that they fill better, until none gains.
 */
export function keepLongestOffcut(job: Job, cuts: Cuts, work: Work): Cuts {
  const lengths = cuts
    .flatMap(({ filling, times }) => Array.from({ length: times }, () => filling))
    .sort((a, b) => roomLeft(job, b) - roomLeft(job, a));
  let best: readonly Filling[] = lengths;
  let kept = longestLeft(job, cuts);
  for (const [at, start] of lengths.entries()) {
    if (work.left < 0) break;
    if (lengths.indexOf(start) < at) continue;
    const plan = lengths.slice();
    let emptied = start;
    // Fillings that gained nothing from what the emptied length holds now.
    const inVain = new Set<Filling>();
    for (let other = 0; other < plan.length && work.left >= 0; ) {
      const filling = plan[other] as Filling;
      const pair = other === at || inVain.has(filling) ? null : dealt(job, emptied, filling, work);
      inVain.add(filling);
      other += 1;
      if (!pair) continue;
      [emptied, plan[other - 1]] = pair;
      inVain.clear();
      other = 0;
    }
    plan[at] = emptied;
    const left = roomLeft(job, emptied);
    if (left <= kept) continue;
    kept = left;
    best = plan;
  }
  return best.filter(({ kinds }) => kinds.length > 0).map((filling) => ({ filling, times: 1 }));
}
