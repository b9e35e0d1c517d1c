import { expect } from 'vitest';
import type { Board, BoardCutting, BoardPlan, Piece } from '../src/index.ts';

/** A place in a board, mm. */
export interface Area {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** Lengths are compared to a millionth of a millimetre, some rounded at that. */
const SAME_MM = 3e-6;

/** What is left of a board when ends and edges are trimmed. */
export const trimmed = (
  { lengthMm, widthMm }: Pick<Board, 'lengthMm' | 'widthMm'>,
  { endTrimMm, edgeTrimMm }: Pick<BoardCutting, 'endTrimMm' | 'edgeTrimMm'>,
): Area => ({ x0: endTrimMm, x1: lengthMm - endTrimMm, y0: edgeTrimMm, y1: widthMm - edgeTrimMm });

/** Whether any of a defect, be it a line, lies inside an area and not only along its side. */
export const spoils = (defect: Area, { x0, x1, y0, y1 }: Area): boolean =>
  Math.min(x1 - defect.x0, defect.x1 - x0, y1 - defect.y0, defect.y1 - y0) >= SAME_MM;

export const areaOf = ({ xMm, yMm, lengthMm, widthMm }: Omit<Piece, 'partId' | 'cut'>): Area => ({
  x0: xMm,
  x1: xMm + lengthMm,
  y0: yMm,
  y1: yMm + widthMm,
});

function expectAt(piece: Piece, area: Area): void {
  for (const [side, value] of Object.entries(areaOf(piece))) {
    expect(Math.abs(value - area[side as keyof Area]), side).toBeLessThan(SAME_MM);
  }
  expect(Math.min(piece.lengthMm, piece.widthMm)).toBeGreaterThan(0);
}

/** A saw that knows nothing but a piece, a distance, a side to measure from and its kerf: the two areas it leaves. */
function saw({ x0, x1, y0, y1 }: Area, cut: NonNullable<Piece['cut']>, kerfMm: number): Area[] {
  const { direction, distanceMm: d, measuredFrom } = cut;
  expect(d).toBeGreaterThan(0);
  expect(d).toBeLessThan(direction === 'across' ? x1 - x0 : y1 - y0);
  switch (measuredFrom) {
    case 'left end':
      expect([direction, cut.kerfTowards]).toEqual(['across', 'right end']);
      return [
        { x0, x1: x0 + d, y0, y1 },
        { x0: x0 + d + kerfMm, x1, y0, y1 },
      ];
    case 'right end':
      expect([direction, cut.kerfTowards]).toEqual(['across', 'left end']);
      return [
        { x0: x1 - d, x1, y0, y1 },
        { x0, x1: x1 - d - kerfMm, y0, y1 },
      ];
    case 'front edge':
      expect([direction, cut.kerfTowards]).toEqual(['along', 'back edge']);
      return [
        { x0, x1, y0, y1: y0 + d },
        { x0, x1, y0: y0 + d + kerfMm, y1 },
      ];
    case 'back edge':
      expect([direction, cut.kerfTowards]).toEqual(['along', 'front edge']);
      return [
        { x0, x1, y0: y1 - d, y1 },
        { x0, x1, y0, y1: y1 - d - kerfMm },
      ];
  }
}

/** Cuts a board as told, measures every piece, and gives the pieces that are left in the end. */
export function sawn(plan: BoardPlan['boards'][number], input: BoardCutting): Piece[] {
  const { kerfMm, firstCut } = input;
  const left: Piece[] = [];
  const directions = new Set<string>();

  function follow(piece: Piece, area: Area, turns: readonly string[]): void {
    expectAt(piece, area);
    const { cut } = piece;
    if (!cut) {
      left.push(piece);
      return;
    }
    expect(piece.partId).toBeNull();
    const since = turns.at(-1) === cut.direction ? turns : [...turns, cut.direction];
    directions.add(since[0] as string);
    // No more than the stages promised.
    if (firstCut === 'either' || since[0] === firstCut) expect(since.length).toBeLessThanOrEqual(4);
    else expect(since.length).toBeLessThanOrEqual(3);
    const areas = saw(area, cut, kerfMm).filter(({ x0, x1, y0, y1 }) => Math.min(x1 - x0, y1 - y0) > SAME_MM);
    expect(cut.pieces).toHaveLength(areas.length);
    for (const [i, one] of cut.pieces.entries()) follow(one, areas[i] as Area, since);
  }

  const board = input.boards.find(({ id }) => id === plan.boardId) as Board;
  follow(plan.blank, trimmed(board, input), []);
  expect(directions.size).toBeLessThanOrEqual(1);
  return left;
}

/** Everything that a plan must keep to, whether or not it is the best. */
export function expectSound(input: BoardCutting, plan: BoardPlan): void {
  const cut = new Map<string, number>();
  let price = 0;
  let value = 0;
  for (const one of plan.boards) {
    const board = input.boards.find(({ id }) => id === one.boardId) as Board;
    price += board.boardPrice;
    const left = sawn(one, input);
    const parts = left.filter(({ partId }) => partId !== null);
    expect(new Set(one.parts)).toEqual(new Set(parts));
    expect(one.parts.length + one.offcuts.length).toBe(left.length);
    expect(new Set(one.offcuts)).toEqual(new Set(left.filter(({ partId }) => partId === null)));
    expect(parts.length).toBeGreaterThan(0);
    const inside = trimmed(board, input);
    let areaMm2 = 0;
    for (const [i, part] of parts.entries()) {
      const wanted = input.parts.find(({ id }) => id === part.partId) as BoardCutting['parts'][number];
      const lying = (l: number, w: number) =>
        Math.abs(part.lengthMm - l) < SAME_MM && Math.abs(part.widthMm - w) < SAME_MM;
      const { lengthMm, widthMm, grain } = wanted;
      expect(lying(lengthMm, widthMm) || (grain === 'either way' && lying(widthMm, lengthMm))).toBe(true);
      const area = areaOf(part);
      expect(area.x0).toBeGreaterThanOrEqual(inside.x0 - SAME_MM);
      expect(area.x1).toBeLessThanOrEqual(inside.x1 + SAME_MM);
      expect(area.y0).toBeGreaterThanOrEqual(inside.y0 - SAME_MM);
      expect(area.y1).toBeLessThanOrEqual(inside.y1 + SAME_MM);
      for (const defect of board.defects) expect(spoils(areaOf(defect), area)).toBe(false);
      for (const other of parts.slice(0, i)) {
        const b = areaOf(other);
        const apart = Math.max(b.x0 - area.x1, area.x0 - b.x1, b.y0 - area.y1, area.y0 - b.y1);
        expect(apart).toBeGreaterThanOrEqual(input.kerfMm - SAME_MM);
      }
      cut.set(wanted.id, (cut.get(wanted.id) ?? 0) + 1);
      value += wanted.valuePrice ?? lengthMm * widthMm;
      areaMm2 += lengthMm * widthMm;
    }
    expect(one.usedShare).toBeCloseTo(areaMm2 / (board.lengthMm * board.widthMm), 6);
  }
  const missing = input.parts
    .map(({ id, count }) => ({ partId: id, missingCount: count - (cut.get(id) ?? 0) }))
    .filter(({ missingCount }) => missingCount !== 0);
  expect(plan.missing).toEqual(missing);
  for (const { missingCount } of missing) expect(missingCount).toBeGreaterThan(0);
  const total = input.parts.reduce(
    (sum, { count, valuePrice, lengthMm, widthMm }) => sum + count * (valuePrice ?? lengthMm * widthMm),
    0,
  );
  expect(plan.cutShare).toBeCloseTo(value / total, 9);
  expect(plan.mostShare).toBeGreaterThanOrEqual(plan.cutShare);
  expect(plan.mostShare).toBeLessThanOrEqual(1);
  expect(plan.totalPrice).toBeCloseTo(price, 6);
  expect(plan.leastPrice).toBeLessThanOrEqual(plan.totalPrice);
  expect(plan.priceGapPct).toBeCloseTo(price > 0 ? (1 - plan.leastPrice / price) * 100 : 0, 6);
  expect(plan.proven).toBe(plan.priceGapPct <= 1e-7 && plan.mostShare - plan.cutShare <= 1e-9);
}
