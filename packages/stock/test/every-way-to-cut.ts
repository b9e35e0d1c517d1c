import type { Board, BoardCutting } from '../src/index.ts';
import { type Area, areaOf, spoils, trimmed } from './saw.ts';

interface One {
  readonly sides: readonly (readonly [number, number])[];
  readonly value: number;
}

const onesOf = ({ parts }: BoardCutting): One[] =>
  parts.flatMap(({ lengthMm: l, widthMm: w, count, grain, valuePrice }) =>
    Array.from({ length: count }, () => ({
      sides:
        grain === 'either way'
          ? ([
              [l, w],
              [w, l],
            ] as const)
          : ([[l, w]] as const),
      value: valuePrice ?? l * w,
    })),
  );

/**
 * Every set of parts that a board can give, as bits, by sawing at every whole millimetre: first one way, then the
 * other, then the first, and in the end the other, to bring a length to size. Serves boards, defects, kerfs and parts of a few whole millimetres.
 */
export function setsOf(board: Board, input: BoardCutting, firstCut: 'across' | 'along'): Set<number> {
  const ones = onesOf(input);
  const { kerfMm } = input;
  const known = new Map<string, Set<number>>();

  function from(area: Area, stage: number): Set<number> {
    const { x0, x1, y0, y1 } = area;
    if (x1 <= x0 || y1 <= y0) return new Set([0]);
    const key = [x0, x1, y0, y1, stage].join();
    const before = known.get(key);
    if (before) return before;
    const sets = new Set([0]);
    if (!board.defects.some((defect) => spoils(areaOf(defect), area))) {
      for (const [i, { sides }] of ones.entries()) {
        if (sides.some(([l, w]) => l === x1 - x0 && w === y1 - y0)) sets.add(1 << i);
      }
    }
    if (stage < 4) {
      for (const set of from(area, stage + 1)) sets.add(set);
      const across = (firstCut === 'across') === (stage % 2 === 0);
      const [low, high] = across ? [x0, x1] : [y0, y1];
      const part = (a: number, b: number) => (across ? { x0: a, x1: b, y0, y1 } : { x0, x1, y0: a, y1: b });
      for (let at = low; at < high; at += 1) {
        const rest = at === low ? [] : [...from(part(low, at), stage)];
        // The saw goes in at `at`, past what is before, or takes what is before with it.
        for (const far of from(part(at + (at === low ? 1 : kerfMm), high), stage)) {
          sets.add(far);
          for (const near of rest) if (stage < 3 && (near & far) === 0) sets.add(near | far);
        }
        for (const near of rest) sets.add(near);
      }
    }
    known.set(key, sets);
    return sets;
  }

  return from(trimmed(board, input), 0);
}

/** The most value that boards give, and the least price for it, by trying every set of parts of every board. */
export function bestOfEveryWay(input: BoardCutting): { value: number; price: number } {
  const ones = onesOf(input);
  const ways = input.firstCut === 'either' ? (['across', 'along'] as const) : [input.firstCut];
  let states = new Map([[0, 0]]);
  for (const board of input.boards) {
    const sets = new Set(ways.flatMap((way) => [...setsOf(board, input, way)]));
    const next = new Map(states);
    for (const [cut, price] of states) {
      for (const set of sets) {
        if (set === 0) continue;
        const both = cut | set;
        next.set(both, Math.min(next.get(both) ?? Number.POSITIVE_INFINITY, price + board.boardPrice));
      }
    }
    states = next;
  }
  const all = [...states].map(([cut, price]) => ({
    value: ones.reduce((sum, { value }, i) => sum + (cut & (1 << i) ? value : 0), 0),
    price,
  }));
  const value = Math.max(...all.map((one) => one.value));
  return { value, price: Math.min(...all.filter((one) => one.value === value).map(({ price }) => price)) };
}
