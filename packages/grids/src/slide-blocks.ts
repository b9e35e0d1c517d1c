import { type Movement, type Outline, type Point, wayOf } from './geometry.ts';
import { boundingBox, sidesOf } from './outline-distances.ts';

/** From where to where something slides, mm; nothing at its ends. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Along which axis something slides. */
export type Axis = 'x' | 'y';

/** A place seen from a line along which something slides. */
export interface Place {
  /** Along the line. */
  readonly along: number;
  /** Beside it. */
  readonly beside: number;
}

/** Where a line passes nearer than `reachMm` to a straight side; `null` where it does not. */
function passing(p: Place, q: Place, reachMm: number): Stretch | null {
  const least = Math.max(Math.min(p.beside, q.beside), -reachMm);
  const most = Math.min(Math.max(p.beside, q.beside), reachMm);
  if (least > most) return null;
  const [along, beside] = [q.along - p.along, q.beside - p.beside];
  // Furthest along is where the way to the line stands square on the side, or an end of what is in reach.
  const square = beside === 0 ? 0 : (reachMm * along * Math.sign(beside)) / Math.hypot(along, beside);
  const end = (towards: 1 | -1) => {
    const at = Math.min(most, Math.max(least, towards * square));
    const onSide =
      beside === 0
        ? towards * Math.max(towards * p.along, towards * q.along)
        : p.along + ((at - p.beside) / beside) * along;
    return onSide + towards * Math.sqrt(Math.max(0, reachMm * reachMm - at * at));
  };
  return { from: end(-1), to: end(1) };
}

/** The least stretch that holds all that are there. */
function hull(stretches: readonly (Stretch | null)[]): Stretch[] {
  const there = stretches.filter((stretch) => stretch !== null);
  if (there.length === 0) return [];
  return [{ from: Math.min(...there.map(({ from }) => from)), to: Math.max(...there.map(({ to }) => to)) }];
}

/** Where a line runs inside a polygon. */
function inside(corners: readonly Place[], besideMm: number): Stretch[] {
  const crossings = sidesOf(corners)
    .filter(([a, b]) => a.beside > besideMm !== b.beside > besideMm)
    .map(([a, b]) => a.along + ((besideMm - a.beside) / (b.beside - a.beside)) * (b.along - a.along))
    .sort((a, b) => a - b);
  return crossings.flatMap((to, i) => (i % 2 === 1 ? [{ from: crossings[i - 1] as number, to }] : []));
}

/** From where to where an offset goes. */
export interface Offsets {
  readonly low: number;
  readonly high: number;
}

/** Something on a part that slides, as holes see it. */
export interface Body {
  /** Its bounding box, and how much it is grown all round. */
  readonly along: Stretch;
  readonly beside: Stretch;
  readonly radiusMm: number;
  /** Of a polygon; a box and a circle have none. */
  readonly corners: readonly Place[];
  /** From its outline to the centre of a hole, mm. */
  readonly neededMm: number;
}

/** A place seen along an axis. */
export const seenAlong = (axis: Axis, { xMm, yMm }: Point): Place =>
  axis === 'x' ? { along: xMm, beside: yMm } : { along: yMm, beside: xMm };

/** An outline seen along an axis. */
export function bodyOf(axis: Axis, outline: Outline, neededMm: number): Body {
  const { x1, x2, y1, y2, radiusMm } = boundingBox(outline);
  const [x, y] = [
    { from: x1, to: x2 },
    { from: y1, to: y2 },
  ];
  const corners = 'x1' in outline ? [] : outline.map((corner) => seenAlong(axis, corner));
  return {
    ...(axis === 'x' ? { along: x, beside: y } : { along: y, beside: x }),
    radiusMm,
    corners,
    neededMm,
  };
}

/** How far behind and ahead of itself on building day a hole is over the seasons, at the least, anywhere in a range. */
function leastSway({ low, high }: Offsets, movement: Movement | undefined): Stretch {
  if (!movement) return { from: 0, to: 0 };
  // Nearest to the fixed line a hole sways least.
  const yMm = Math.min(high, Math.max(low, movement.fixedLineYMm));
  const { lowMm, highMm } = wayOf(yMm, movement);
  return { from: lowMm - yMm, to: highMm - yMm };
}

/**
 * Where a part that slides along `axis` comes too near to a hole for every offset of a range, by how far it is then
 * ahead of the grid, mm; only where that is `within`. Seen from a grid that moves along with the part nothing changes,
 * so along the axis the range matters for the sway alone.
 */
export function blocked(
  body: Body,
  hole: Place,
  axis: Axis,
  along: Offsets,
  beside: Offsets,
  movement: Movement | undefined,
  within: Stretch,
): Stretch[] {
  const onDay = { low: hole.beside + beside.low, high: hole.beside + beside.high };
  const way = (mm: number) => (axis === 'x' && movement ? wayOf(mm, movement) : { lowMm: mm, highMm: mm });
  const reachMm = body.neededMm + body.radiusMm;
  const awayMm = Math.max(
    0,
    body.beside.from - way(onDay.low).highMm,
    way(onDay.high).lowMm - body.beside.to,
  );
  if (awayMm >= reachMm) return [];
  const sway =
    axis === 'x'
      ? { from: 0, to: 0 }
      : leastSway({ low: hole.along + along.low, high: hole.along + along.high }, movement);
  const ahead = ({ from, to }: Stretch): Stretch => ({
    from: hole.along + sway.from - to,
    to: hole.along + sway.to - from,
  });
  const overMm = Math.sqrt(reachMm * reachMm - awayMm * awayMm);
  const whole = ahead({ from: body.along.from - overMm, to: body.along.to + overMm });
  const counts = ({ from, to }: Stretch) => from < to && from < within.to && to > within.from;
  if (!counts(whole)) return [];
  if (body.corners.length === 0) return [whole];

  // From the middle of the range a distance changes by no more than the way there; a swelling hole's by a little more.
  const swell = axis === 'x' ? (movement?.swellPct ?? 0) / 100 : 0;
  const sureMm = body.neededMm - ((beside.high - beside.low) / 2) * (1 + swell);
  if (sureMm <= 0) return [];
  const middle = (onDay.low + onDay.high) / 2;
  const { lowMm, highMm } = way(middle);
  // A side seen from all of a hole's way is a side drawn along that way: four sides.
  const seenFrom = (mm: number, place: Place): Place => ({ along: place.along, beside: place.beside - mm });
  const sides = sidesOf(body.corners).flatMap(([p, q]) => {
    const [pLow, pHigh, qLow, qHigh] = [
      seenFrom(lowMm, p),
      seenFrom(highMm, p),
      seenFrom(lowMm, q),
      seenFrom(highMm, q),
    ];
    return hull([
      passing(pLow, qLow, sureMm),
      passing(pHigh, qHigh, sureMm),
      passing(pLow, pHigh, sureMm),
      passing(qLow, qHigh, sureMm),
    ]);
  });
  return [...sides, ...inside(body.corners, middle)].map(ahead).filter(counts);
}
