import { plusZero, requireFields, requireThat } from '@scantling/rules';
import { type Point, SAME_MM } from './geometry.ts';
import { place } from './limits.ts';
import { acrossGrain, checkPinTerms, marginsOf, type PinSeason, type PinTerms } from './pin-terms.ts';
import { holesInSeason, leastMissMm, offsets, type Setting, setPins } from './set-pins.ts';
import { neededShiftMm, type PinSlot } from './slot-for-pin.ts';

const MOST_PINS = 24;

/** A rigid body with pins, and the holes in wood that they are to go into. */
export interface PinFitInput extends PinTerms {
  /** Where the pins are, from any point of the body: 1 to 24, x along the grain, y across it. */
  readonly pins: readonly Point[];
  /** Where the hole of each pin is, from any point of the panel; left out, the holes lie as the pins do. */
  readonly holes?: readonly Point[];
}

/** Whether the pins go in, and what is to spare. */
export interface FitVerdict {
  /** By how much every hole could be smaller in diameter, mm; negative, by how much it would have to be larger. */
  readonly marginMm: number;
  readonly goesIn: boolean;
}

/** A pin that touches first: its index, and where it is on the body. */
export interface LimitingPin extends Point {
  readonly index: number;
}

/** The fit at one time of the year. */
export interface SeasonFit {
  /** With every size and place at its limit, all against it. */
  readonly worstCase: FitVerdict;
  /** With sizes and places that vary independently, as two pins that pull apart add up. */
  readonly rootSumSquare: FitVerdict;
  /** No way of setting the body makes the worst-case margin larger than this, mm: two pins stay as far apart. */
  readonly atMostMm: number;
  /** How far the body turns to go in, degrees, anticlockwise seen from above; 0 wherever turning is no help. */
  readonly turnDeg: number;
  /** The pins that touch first. */
  readonly limitingPins: readonly LimitingPin[];
}

/** Whether a body goes in over the year, and the one slot that would make it. */
export interface PinFit {
  /** As the holes were bored. */
  readonly now: SeasonFit;
  readonly swollen: SeasonFit;
  readonly shrunken: SeasonFit;
  /** Whether it goes in at all three times, worst case. */
  readonly alwaysGoesIn: boolean;
  /**
   * A slot at one hole that lets the body always go in, the shortest with the body held square or turned as it fits
   * best without one; `null` where none is needed or one does not do it.
   */
  readonly slot: PinSlot | null;
}

/**
 * Whether a rigid body with pins (a jig, a sewing frame, a press) goes into holes bored in wood, now and at both ends of
 * the season. The body may shift and turn as a whole. Worst case is a proof: a setting is found that clears whatever the
 * errors are, and where `atMostMm` is the same no other is better. Between two times of the year the fit is no worse
 * than at the worse of them. Along the grain wood is taken to keep its length.
 *
 * @param input - Pins, holes, their limits and errors, and how far the wood moves across the grain; lengths in mm.
 * @returns A verdict for each time of the year, and a slot that would help.
 * @throws RangeError where a field is missing or outside its limits, two pins or holes overlap, or their numbers differ.
 * Source: worst case, the fixed-fastener formula of ASME Y14.5 (appendix B) with the miss of the places added;
 * root-sum-square, JCGM 100:2008, Eq. (10).
 * @example
 * ```ts
 * import { pinFit } from '@scantling/grids';
 * // A press with two pins three pitches of 96 mm apart across the grain, in a top that moves by up to 0.5 %
 * const fit = pinFit({
 *   pins: [{ xMm: 0, yMm: 0 }, { xMm: 0, yMm: 288 }],
 *   pin: { lowerLimitMm: 19, upperLimitMm: 19.1 },
 *   hole: { lowerLimitMm: 20, upperLimitMm: 20.2 },
 *   pinPositionErrorMm: 0.05,
 *   holePositionErrorMm: 0.1,
 *   swellPct: 0.25,
 *   shrinkPct: 0.5,
 * });
 * fit.now.worstCase // => { marginMm: 0.6, goesIn: true }
 * fit.shrunken.worstCase // => { marginMm: -0.94, goesIn: false }
 * fit.slot // => { index: 0, axis: 'y', lengthMm: 1.89 }
 * ```
 */
export function pinFit(input: PinFitInput): PinFit {
  const holes = checkPins(input);
  const { pins } = input;
  const across = acrossGrain(input);
  const settings = {} as Record<PinSeason, Setting>;
  const fitIn = (season: PinSeason): SeasonFit => {
    const scale = across[season];
    const placed = holesInSeason(holes, scale);
    const setting = setPins(pins, placed);
    settings[season] = setting;
    const { worstCaseMm, rootSumSquareMm } = marginsOf(input, scale, pins.length, setting.missMm);
    return {
      worstCase: verdict(worstCaseMm),
      rootSumSquare: verdict(rootSumSquareMm),
      atMostMm: plusZero(marginsOf(input, scale, pins.length, leastMissMm(pins, placed)).worstCaseMm),
      turnDeg: plusZero((setting.turnRad * 180) / Math.PI),
      limitingPins: setting.limiting.map((index) => ({
        index,
        xMm: plusZero((pins[index] as Point).xMm),
        yMm: plusZero((pins[index] as Point).yMm),
      })),
    };
  };
  const year = { now: fitIn('now'), swollen: fitIn('swollen'), shrunken: fitIn('shrunken') };
  const alwaysGoesIn = Object.values(year).every(({ worstCase }) => worstCase.goesIn);
  return { ...year, alwaysGoesIn, slot: alwaysGoesIn ? null : shortestSlot(input, holes, settings) };
}

const verdict = (marginMm: number): FitVerdict => ({
  marginMm: plusZero(marginMm),
  goesIn: marginMm >= -SAME_MM,
});

/** Throws where pins or holes make no sense; gives the place of each pin's hole. */
function checkPins(input: PinFitInput): readonly Point[] {
  checkPinTerms('pinFit', input);
  const { pins, holes, pin, hole } = input;
  checkPlaces('pins', pins, pin.upperLimitMm + 2 * input.pinPositionErrorMm);
  if (holes !== undefined) {
    requireThat('pinFit', holes?.length === pins.length, `as many holes as pins, got ${holes?.length}`);
  }
  const apartMm = hole.upperLimitMm + 2 * input.holePositionErrorMm;
  checkPlaces(holes === undefined ? 'pins' : 'holes', holes ?? pins, apartMm);
  return holes ?? pins;
}

function checkPlaces(name: string, places: readonly Point[], apartMm: number): void {
  requireThat('pinFit', Array.isArray(places), `${name} to be a list, got ${typeof places}`);
  const counted = places.length >= 1 && places.length <= MOST_PINS;
  requireThat('pinFit', counted, `1 to ${MOST_PINS} ${name}, got ${places.length}`);
  for (const [i, at] of places.entries()) {
    requireFields('pinFit', `${name}[${i}]`, at, { xMm: place, yMm: place });
    for (const [j, other] of places.slice(0, i).entries()) {
      const isMm = Math.hypot(at.xMm - other.xMm, at.yMm - other.yMm);
      requireThat(
        'pinFit',
        isMm >= apartMm - SAME_MM,
        `${name}[${i}] at least ${Number(apartMm.toFixed(6))} mm from ${name}[${j}], or the two may overlap, got ${isMm}`,
      );
    }
  }
}

/** Only one of the pins that decide the worst season can help: the others would still decide it. */
function shortestSlot(
  input: PinFitInput,
  holes: readonly Point[],
  settings: Readonly<Record<PinSeason, Setting>>,
): PinSlot | null {
  const { pins } = input;
  const seasons = Object.entries(acrossGrain(input)).map(([season, scale]) => {
    const { turnRad, missMm, by } = settings[season as PinSeason];
    const { worstCaseMm } = marginsOf(input, scale, pins.length, missMm);
    const placed = holesInSeason(holes, scale);
    // A body held square needs a slot of another length than one that is turned.
    const turns = turnRad === 0 ? [0] : [0, turnRad];
    return { scale, by, worstCaseMm, allowedMm: worstCaseMm / 2 + missMm, placed, turns };
  });
  const [worst] = [...seasons].sort((a, b) => a.worstCaseMm - b.worstCaseMm);
  let shortest: PinSlot | null = null;
  for (const pin of worst?.by ?? []) {
    for (const axis of ['x', 'y'] as const) {
      const lengths = seasons.map(({ scale, allowedMm, placed, turns }) => {
        const ways = turns.flatMap(
          (turn) => neededShiftMm(offsets(pins, placed, turn), pin, axis, allowedMm) ?? [],
        );
        // The slot moves with the wood: across the grain it is as much longer or shorter.
        return (2 * Math.min(...ways)) / (axis === 'y' ? scale : 1);
      });
      const lengthMm = Math.max(...lengths);
      if (lengthMm < (shortest?.lengthMm ?? Number.POSITIVE_INFINITY))
        shortest = { index: pin, axis, lengthMm };
    }
  }
  return shortest;
}
