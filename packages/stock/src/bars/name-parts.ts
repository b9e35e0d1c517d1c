import type { CutBar } from '../cut-bars.ts';
import type { Cuts, Filling } from './job.ts';
import { type Counted, inMm } from './measure.ts';
import { barsFor } from './plan-price.ts';

/** Every length of the plan by itself, those of one stock together, the fullest first; uncut lengths last. */
function inOrder({ job }: Counted, cuts: Cuts): Filling[] {
  const filled = ({ kinds, counts }: Filling) =>
    kinds.reduce((sum, kind, i) => sum + (job.sizes[kind] as number) * (counts[i] as number), 0);
  const text = ({ kinds, counts }: Filling) => `${kinds}:${counts}`;
  const sorted = cuts
    .map((cut) => ({ ...cut, filled: filled(cut.filling), text: text(cut.filling) }))
    .sort(
      (a, b) =>
        a.filling.stock - b.filling.stock ||
        b.filled - a.filled ||
        (a.text < b.text ? -1 : Number(a.text > b.text)),
    );
  const each = sorted.flatMap(({ filling, times }) => Array.from({ length: times }, () => filling));
  const bars = barsFor(job, cuts);
  return job.stocks.flatMap(({ lengths }, stock) => {
    const used = each.filter((filling) => filling.stock === stock);
    const uncut = lengths * (bars[stock] as number) - used.length;
    return [...used, ...Array.from({ length: uncut }, () => ({ stock, kinds: [], counts: [] }))];
  });
}

/** Gives the pieces their names and places, and puts lengths that are cut alike together. */
export function nameParts(counted: Counted, cuts: Cuts): CutBar[] {
  const { carried, trimNm, tickNm, job, parts } = counted;
  // Of each kind, which name is given out now, and how many of it have been.
  const given = parts.map(() => ({ at: 0, count: 0 }));
  const nextOf = (kind: number) => {
    const group = parts[kind] as Counted['parts'][number];
    const now = given[kind] as (typeof given)[number];
    if (now.count === group[now.at]?.count) Object.assign(now, { at: now.at + 1, count: 0 });
    now.count += 1;
    return group[now.at] as (typeof group)[number];
  };
  const alike = new Map<string, CutBar>();
  for (const { stock, kinds, counts } of inOrder(counted, cuts)) {
    const { bar, lengthNm } = carried[stock] as Counted['carried'][number];
    let startNm = trimNm;
    const pieces = kinds.flatMap((kind, i) =>
      Array.from({ length: counts[i] as number }, () => {
        const part = nextOf(kind);
        const piece = { name: part.name, lengthMm: part.lengthMm, startMm: inMm(startNm) };
        startNm += (job.sizes[kind] as number) * tickNm;
        return piece;
      }),
    );
    const offcutMm = inMm(Math.max(0, lengthNm - trimNm - startNm));
    const key = JSON.stringify([stock, pieces.map(({ name, lengthMm }) => [name, lengthMm])]);
    const count = (alike.get(key)?.count ?? 0) + 1;
    alike.set(key, { name: bar.name, lengthMm: inMm(lengthNm), count, pieces, offcutMm });
  }
  return [...alike.values()];
}
