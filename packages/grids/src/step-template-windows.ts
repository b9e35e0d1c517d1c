import { SAME_MM } from './geometry.ts';

/** A grid of holes and a template to bore them through, both counted in holes. */
export interface Stepping {
  readonly columns: number;
  readonly rows: number;
  /** Columns and rows of the template. */
  readonly width: number;
  readonly height: number;
  readonly pitchXMm: number;
  readonly pitchYMm: number;
  /** Two pins nearer to each other than this do not locate the template. */
  readonly leastPinSpanMm: number;
  /** 1 for each place that gets a hole, row by row. */
  readonly wanted: Uint8Array;
  /** The placement that is located from the datum edges. */
  readonly first: number;
}

/** Two finished holes under the template, as places of the grid, and how far apart they are. */
export interface PinPair {
  readonly from: number;
  readonly to: number;
  readonly spanMm: number;
}

/**
 * Placements are numbered row by row by the place under the template's first hole. A template that overhangs the grid
 * bores and finds nothing that it would not bore and find when pushed back onto it, so these are all that matter.
 */
export const placementsAcross = ({ columns, width }: Stepping): number => columns - width + 1;

export const placementCount = (stepping: Stepping): number =>
  placementsAcross(stepping) * (stepping.rows - stepping.height + 1);

/** Column and row of the grid under the template's first hole. */
export function cornerOf(stepping: Stepping, placement: number): readonly [number, number] {
  const across = placementsAcross(stepping);
  return [placement % across, Math.floor(placement / across)];
}

/** Every place under the template that gets a hole, row by row. */
export function placesUnder(stepping: Stepping, placement: number): number[] {
  const [left, front] = cornerOf(stepping, placement);
  const places: number[] = [];
  for (let row = front; row < front + stepping.height; row++) {
    for (let column = left; column < left + stepping.width; column++) {
      const place = row * stepping.columns + column;
      if (stepping.wanted[place]) places.push(place);
    }
  }
  return places;
}

/** How many columns and rows two placements have in common; 0 or less where they have none. */
export function overlap(stepping: Stepping, one: number, other: number): readonly [number, number] {
  const [a, b] = cornerOf(stepping, one);
  const [c, d] = cornerOf(stepping, other);
  return [stepping.width - Math.abs(a - c), stepping.height - Math.abs(b - d)];
}

export function overlaps(stepping: Stepping, one: number, other: number): boolean {
  const [columns, rows] = overlap(stepping, one, other);
  return columns > 0 && rows > 0;
}

/** The two finished holes under the template that are farthest apart, the first such pair row by row; or `null`. */
export function pinsFor(stepping: Stepping, placement: number, finished: Uint8Array): PinPair | null {
  const { columns, width, height, pitchXMm, pitchYMm } = stepping;
  const [left, front] = cornerOf(stepping, placement);
  // Within a row only the outermost holes can be farthest from any other hole.
  const outermost: number[] = [];
  for (let row = front; row < front + height; row++) {
    const start = row * columns;
    let low = start + left;
    let high = low + width - 1;
    while (low <= high && !finished[low]) low++;
    if (low > high) continue;
    while (!finished[high]) high--;
    outermost.push(low);
    if (high > low) outermost.push(high);
  }
  let pins: PinPair | null = null;
  for (const [i, from] of outermost.entries()) {
    for (let j = i + 1; j < outermost.length; j++) {
      const to = outermost[j] as number;
      const spanMm = Math.hypot(
        pitchXMm * ((to % columns) - (from % columns)),
        pitchYMm * (Math.floor(to / columns) - Math.floor(from / columns)),
      );
      if (spanMm > (pins?.spanMm ?? stepping.leastPinSpanMm - SAME_MM) + SAME_MM / 2)
        pins = { from, to, spanMm };
    }
  }
  return pins;
}

/** A placement with the pins that locate it (`null` for the first) and the holes that it bores. */
export interface Step {
  readonly placement: number;
  readonly pins: PinPair | null;
  readonly bores: readonly number[];
}

/**
 * Puts placements in an order in which each finds its pins in finished holes: next is always the one whose pins are
 * farthest apart. Leaves out those that find none or have nothing to bore. What gets finished does not depend on the
 * order: a hole that is finished never stands in the way.
 */
export function inOrder(stepping: Stepping, placements: readonly number[]): Step[] {
  const finished = new Uint8Array(stepping.wanted.length);
  const pending = new Map<number, PinPair | null>(placements.map((placement) => [placement, null]));
  const steps: Step[] = [];
  const bore = (placement: number, pins: PinPair | null) => {
    const bores = placesUnder(stepping, placement).filter((place) => !finished[place]);
    pending.delete(placement);
    if (bores.length === 0) return;
    for (const place of bores) finished[place] = 1;
    steps.push({ placement, pins, bores });
    for (const other of pending.keys()) {
      if (overlaps(stepping, placement, other)) pending.set(other, pinsFor(stepping, other, finished));
    }
  };
  bore(stepping.first, null);
  for (;;) {
    let next: { placement: number; pins: PinPair } | undefined;
    for (const [placement, pins] of pending) {
      if (pins && pins.spanMm > (next?.pins.spanMm ?? 0) + SAME_MM) next = { placement, pins };
    }
    if (next === undefined) return steps;
    bore(next.placement, next.pins);
  }
}

/** Every hole that steps finish. */
export const finishedBy = (steps: readonly Step[]): number[] => steps.flatMap(({ bores }) => bores);
