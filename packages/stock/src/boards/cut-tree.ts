import type { Cut, FirstCut, Piece } from '../cut-boards.ts';
import { type Job, type Rect, type Sheet, TICKS_PER_MM, turned } from './job.ts';
import type { Step } from './look.ts';

/** What a piece is cut into next, or the part that it is. */
interface Goal {
  readonly box: Rect;
  /** In the order they lie; a kerf or more between neighbours. */
  readonly within: readonly Goal[];
  readonly partId: string | null;
}

const ends = { across: ['left end', 'right end'], along: ['front edge', 'back edge'] } as const;
const otherCut = { across: 'along', along: 'across' } as const;

/** Steps that belong together: each that begins something at this level or above starts a new group. */
function grouped(steps: readonly Step[], level: number): Step[][] {
  const groups: Step[][] = [];
  for (const step of steps) {
    const last = groups.at(-1);
    if (!last || step.front.level <= level) groups.push([step]);
    else last.push(step);
  }
  return groups;
}

const boxOf = ({ front: { u, v, du, dv } }: Step): Rect => ({ u0: u, u1: u + du, v0: v, v1: v + dv });

const around = (boxes: readonly Rect[]): Rect => ({
  u0: Math.min(...boxes.map(({ u0 }) => u0)),
  u1: Math.max(...boxes.map(({ u1 }) => u1)),
  v0: Math.min(...boxes.map(({ v0 }) => v0)),
  v1: Math.max(...boxes.map(({ v1 }) => v1)),
});

/** Sections, in them strips, in them lengths, in each a part. */
function goalsOf(steps: readonly Step[], idOf: (step: Step) => string, level: 1 | 2 | 3): Goal[] {
  return grouped(steps, level).map((group) => {
    const [first] = group as [Step];
    const within =
      level === 3
        ? [{ box: boxOf(first), within: [], partId: idOf(first) }]
        : goalsOf(group, idOf, level === 1 ? 2 : 3);
    return { box: around(within.map(({ box }) => box)), within, partId: null };
  });
}

/** Cuts a sheet up so that all that is left over past the last section, strip or length stays in one piece. */
export function cutUp(job: Job, sheet: Sheet, steps: readonly Step[], idOf: (step: Step) => string): Piece {
  const { kerf } = job;
  const [firstLow] = ends[sheet.firstCut];

  /** `u` and `v` of a rectangle are along and across the board, or the other way round. */
  function pieceOf(box: Rect, cut: Cut | null, partId: string | null): Piece {
    const { u0, u1, v0, v1 } = firstLow === 'left end' ? box : turned(box);
    return {
      ...{ xMm: u0 / TICKS_PER_MM, yMm: v0 / TICKS_PER_MM },
      ...{ lengthMm: (u1 - u0) / TICKS_PER_MM, widthMm: (v1 - v0) / TICKS_PER_MM },
      ...{ partId, cut },
    };
  }

  /** Cuts this way along u where `alongU`, else along v. */
  function divided(box: Rect, goals: readonly Goal[], direction: FirstCut, alongU: boolean): Piece {
    const [goal, ...rest] = goals;
    if (!goal) return pieceOf(box, null, null);
    const [low, high] = alongU ? (['u0', 'u1'] as const) : (['v0', 'v1'] as const);
    const [lowSide, highSide] = ends[direction];
    const piecesOf = (measured: Piece, waste: Rect, of: readonly Goal[]) =>
      waste[low] < waste[high] ? [measured, divided(waste, of, direction, alongU)] : [measured];
    const distance = (ticks: number) => ticks / TICKS_PER_MM;
    if (goal.box[low] > box[low]) {
      // What comes before is cut off first, measured from the far side.
      const kept = divided({ ...box, [low]: goal.box[low] }, goals, direction, alongU);
      const waste = { ...box, [high]: goal.box[low] - kerf };
      const cut = { direction, distanceMm: distance(box[high] - goal.box[low]) };
      return pieceOf(
        box,
        { ...cut, measuredFrom: highSide, kerfTowards: lowSide, pieces: piecesOf(kept, waste, []) },
        null,
      );
    }
    const fitted = { ...box, [high]: goal.box[high] };
    const next = () =>
      goal.partId === null
        ? divided(fitted, goal.within, otherCut[direction], !alongU)
        : pieceOf(fitted, null, goal.partId);
    if (goal.box[high] === box[high]) return next();
    const waste = { ...box, [low]: goal.box[high] + kerf };
    const cut = { direction, distanceMm: distance(goal.box[high] - box[low]) };
    return pieceOf(
      box,
      { ...cut, measuredFrom: lowSide, kerfTowards: highSide, pieces: piecesOf(next(), waste, rest) },
      null,
    );
  }

  const { u0, u1, v0, v1 } = sheet;
  return divided({ u0, u1, v0, v1 }, goalsOf(steps, idOf, 1), sheet.firstCut, true);
}
