import type { CutBarsInput } from '../src/index.ts';

/** The least price by trying everything: each part in turn on each bar begun, or on a new one. */
export function leastPriceByTrying({ parts, bars, kerfMm, endTrimMm }: CutBarsInput): number | null {
  const lengths = parts.flatMap(({ lengthMm, count }) => Array.from({ length: count }, () => lengthMm));
  const left = bars.map(({ count }) => count ?? lengths.length);
  const begun: number[] = [];
  let best = Number.POSITIVE_INFINITY;
  const place = (i: number, price: number): void => {
    if (price >= best - 1e-9) return;
    const length = lengths[i];
    if (length === undefined) {
      best = price;
      return;
    }
    for (let at = 0; at < begun.length; at++) {
      const room = begun[at] as number;
      if (room < length + kerfMm) continue;
      begun[at] = room - length - kerfMm;
      place(i + 1, price);
      begun[at] = room;
    }
    for (const [at, { lengthMm, eachPrice }] of bars.entries()) {
      const room = lengthMm - 2 * endTrimMm + kerfMm;
      if (left[at] === 0 || room < length + kerfMm) continue;
      left[at] = (left[at] as number) - 1;
      begun.push(room - length - kerfMm);
      place(i + 1, price + eachPrice);
      begun.pop();
      left[at] = (left[at] as number) + 1;
    }
  };
  place(0, 0);
  return Number.isFinite(best) ? best : null;
}
