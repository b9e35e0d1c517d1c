import { type Point, SAME_MM } from './geometry.ts';
import { smallestCircle } from './smallest-circle.ts';

/** A body set over its holes: how far it is turned, and by how much its pins then miss. */
export interface Setting {
  /** Anticlockwise seen from above. */
  readonly turnRad: number;
  /** The farthest that a pin is from its hole's centre, once the body is shifted as well as it can be, mm. */
  readonly missMm: number;
  /** Indices of pins that are that far off. */
  readonly limiting: readonly number[];
  /** Indices of the one to three pins that decide it. */
  readonly by: readonly number[];
}

/** Turning is looked into where it could win more than this, a thousand times the rounding of places 20 m away. */
const WORTH_TURNING_MM = 1e-9;

const distance = (a: Point, b: Point) => Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);

/** Where the holes are when the wood is `scale` times as wide across the grain. */
export const holesInSeason = (holes: readonly Point[], scale: number): Point[] =>
  holes.map(({ xMm, yMm }) => ({ xMm, yMm: yMm * scale }));

/** From each pin to its hole, with the body turned about its first pin. */
export function offsets(pins: readonly Point[], holes: readonly Point[], turnRad: number): Point[] {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const about = pins[0] ?? { xMm: 0, yMm: 0 };
  return pins.map((pin, i) => {
    const [x, y] = [pin.xMm - about.xMm, pin.yMm - about.yMm];
    const hole = holes[i] ?? pin;
    return { xMm: hole.xMm - (cos * x - sin * y), yMm: hole.yMm - (sin * x + cos * y) };
  });
}

function settingAt(pins: readonly Point[], holes: readonly Point[], turnRad: number): Setting {
  const off = offsets(pins, holes, turnRad);
  const circle = smallestCircle(off);
  const limiting = off.flatMap((one, i) => (distance(one, circle) >= circle.radiusMm - SAME_MM ? [i] : []));
  return { turnRad, missMm: circle.radiusMm, limiting, by: circle.by };
}

/** No setting misses by less: two pins are as far apart as they are, however the body is turned. */
export function leastMissMm(pins: readonly Point[], holes: readonly Point[]): number {
  let mostMm = 0;
  for (const [i, pin] of pins.entries()) {
    for (let j = 0; j < i; j++) {
      const apartMm = distance(holes[i] ?? pin, holes[j] ?? pin) - distance(pin, pins[j] ?? pin);
      mostMm = Math.max(mostMm, Math.abs(apartMm));
    }
  }
  return mostMm / 2;
}

/** Where a convex function of one number is least, to a ten-thousand-millionth of the way between the two ends. */
export function leastAt(low: number, high: number, of: (x: number) => number): number {
  let [from, to] = [low, high];
  // Each step leaves two thirds of the way.
  for (let step = 0; step < 57; step++) {
    const third = (to - from) / 3;
    if (of(from + third) <= of(to - third)) to -= third;
    else from += third;
  }
  return (from + to) / 2;
}

/**
 * Sets a rigid body over its holes so that the farthest of its pins misses by as little as can be. Held square, the
 * shift is exact: the centre of the smallest circle round all offsets. Where turning could help, the turn is searched
 * for; what it finds is a setting that exists, so its miss is never too small.
 */
export function setPins(pins: readonly Point[], holes: readonly Point[]): Setting {
  const square = settingAt(pins, holes, 0);
  if (square.missMm - leastMissMm(pins, holes) <= WORTH_TURNING_MM) return square;
  const spanMm = Math.max(...pins.flatMap((a) => pins.map((b) => distance(a, b))));
  // Turned farther, two pins this far apart would miss by more than they do now.
  const farthest = Math.min(Math.PI, (2 * Math.PI * square.missMm) / spanMm);
  const turnRad = leastAt(-farthest, farthest, (turn) => settingAt(pins, holes, turn).missMm);
  const turned = settingAt(pins, holes, turnRad);
  return turned.missMm < square.missMm - WORTH_TURNING_MM ? turned : square;
}
