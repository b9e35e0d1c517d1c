import { type HeldBase, holdsTop, plannedFixings } from '../parts/fixings.ts';
import type { Base } from '../plan/base.ts';
import { endsOf, holeCount, type Placement, placeAt, type Question, withSlides } from './place.ts';
import { slidesAcross } from './slid.ts';

/** A line where the top may be held, wherever the fixings have slid to. */
type Line = (fixings: Base['fixings']) => number;

/** How a top is held at a line. */
export interface Hold {
  readonly fixedLineMm: number;
  /** Names of the screws that hold the top there. */
  readonly holding: readonly string[];
  /** How much longer than they are slots would have to be, added up, mm. */
  readonly lackMm: number;
  /** Longest way of a screw over the year, mm. */
  readonly longestTravelMm: number;
}

/** A line with everything that follows from it. */
export interface HeldAt extends Hold {
  readonly placement: Placement;
}

/** Slides and line that depend on each other mostly meet after three or four turns. */
const MOST_TURNS = 12;

/** Lines nearer than this are one line. */
const SAME_LINE_MM = 1e-6;

/** Differences that are not worth choosing by, mm. */
const SAME_MM = 1e-6;

/** The part that takes a fixing along across the grain, if its slide is open. */
const openAcross = ({ plan }: Question, name: string) =>
  plan.base.sliding?.find(
    (part) => part.slideMm === 'choose' && slidesAcross(part) && part.fixings.includes(name),
  );

/** Every row of screws from front to back, and the middle between the first and the last. */
function linesOf(question: Question): Line[] {
  const rows = question.plan.base.fixings.map(({ name, yMm }) => ({
    name,
    yMm,
    part: openAcross(question, name)?.name ?? '',
  }));
  const inOrder = rows.sort((a, b) => a.yMm - b.yMm || (a.part < b.part ? -1 : Number(a.part > b.part)));
  const distinct = inOrder.filter(
    ({ yMm, part }, i) => yMm !== inOrder[i - 1]?.yMm || part !== inOrder[i - 1]?.part,
  );
  const row = ({ name }: { readonly name: string }): Line => {
    return (now) => now.find((one) => one.name === name)?.yMm as number;
  };
  const middle: Line = (now) => {
    const ys = now.map(({ yMm }) => yMm);
    return (Math.min(...ys) + Math.max(...ys)) / 2;
  };
  return [...distinct.map(row), middle];
}

/** How the top is held at a line, with its fixings where they stand. */
function holdOn({ plan, swing }: Question, standing: Placement['base'], fixedLineMm: number): Hold {
  const base: HeldBase = { ...plan.base, ...standing, fixedLineMm };
  const fixings = plannedFixings({ base }, swing);
  const lacks = fixings.map(({ neededSlotMm, slotMm }) => Math.max(0, neededSlotMm - slotMm));
  const holding = fixings.filter((fixing) => holdsTop(base, fixing));
  return {
    fixedLineMm,
    holding: holding.map(({ name }) => name).sort(),
    lackMm: lacks.sort((a, b) => a - b).reduce((sum, mm) => sum + mm, 0),
    longestTravelMm: Math.max(...fixings.map(({ swellMm, shrinkMm }) => swellMm + shrinkMm)),
  };
}

const heldAt = (question: Question, placement: Placement): HeldAt => ({
  ...holdOn(question, placement.base, placement.fixedLineMm),
  placement,
});

/** What one hold has over another, the weightiest first; below 0 where it has less. */
const merits = (a: Hold, b: Hold): readonly number[] => [
  Number(a.holding.length > 0) - Number(b.holding.length > 0),
  b.lackMm - a.lackMm,
  b.longestTravelMm - a.longestTravelMm,
];

const allMerits = (a: HeldAt, b: HeldAt): readonly number[] => [
  a.placement.keptCount - b.placement.keptCount,
  ...merits(a, b),
  (a.placement.spread?.spreadMm ?? 0) - (b.placement.spread?.spreadMm ?? 0),
  (a.placement.leastClearanceMm ?? 0) - (b.placement.leastClearanceMm ?? 0),
  b.fixedLineMm - a.fixedLineMm,
];

const verdict = (differences: readonly number[]): number =>
  differences.find((difference) => Math.abs(difference) > SAME_MM) ?? 0;

const best = (some: readonly HeldAt[]): HeldAt =>
  some.reduce((a, b) => (verdict(allMerits(b, a)) > 0 ? b : a));

type Place = (fixedLineMm: number) => Placement;

/** The same answer to the same question: turns that start apart end in the same places. */
function remembered(place: Place): Place {
  const placed = new Map<number, Placement>();
  return (fixedLineMm) => {
    const placement = placed.get(fixedLineMm) ?? place(fixedLineMm);
    placed.set(fixedLineMm, placement);
    return placement;
  };
}

/**
 * A line on a row that slides across the grain lies where that row ends up, and how far it may slide depends on the line:
 * by turns, until both stay. A season moves holes by hundredths of their distance, so that is soon. Where it never is,
 * the slides that came up are tried as they are.
 */
function holdFrom(question: Question, place: Place, line: Line, from: Placement['base']): HeldAt {
  const turns: Placement[] = [];
  let fixedLineMm = line(from.fixings);
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const placement = place(fixedLineMm);
    const nowMm = line(placement.base.fixings);
    if (Math.abs(nowMm - fixedLineMm) <= SAME_LINE_MM) {
      return heldAt(question, { ...placement, fixedLineMm: nowMm });
    }
    turns.push(placement);
    fixedLineMm = nowMm;
  }
  return best(
    turns.map(({ slidesMm, base, spread }) => {
      const placement = placeAt(withSlides(question, slidesMm), line(base.fixings));
      return heldAt(question, { ...placement, spread: spread && { ...spread, proven: false } });
    }),
  );
}

/** From both ends of the slides: where the holes leave gaps, they may meet at more than one place. */
function hold(question: Question, place: Place, line: Line): HeldAt {
  const [narrow, wide] = endsOf(question);
  const starts = line(narrow.fixings) === line(wide.fixings) ? [wide] : [narrow, wide];
  return best(starts.map((base) => holdFrom(question, place, line, base)));
}

/** Where the top is held, and the other rows where it might be. */
export interface ChosenLine {
  readonly held: HeldAt;
  /** Those that would hold it better first. */
  readonly others: readonly Hold[];
  /** Whether a line goes with a part that slides: then slides and line were found by turns. */
  readonly moving: boolean;
}

/**
 * Where the top is held, and with it where everything goes that depends on the line: most holes first, then a screw that
 * holds the top, slots that are long enough, the shortest travel, the widest base, the most room.
 */
export function chooseLine(question: Question): ChosenLine {
  const { plan } = question;
  if (plan.base.fixedLineMm !== 'choose') {
    return { held: heldAt(question, placeAt(question, plan.base.fixedLineMm)), others: [], moving: false };
  }
  const { fixings } = plan.base;
  const [, wide] = endsOf(question);
  const near = linesOf(question)
    .map((line) => ({ line, before: holdOn(question, wide, line(wide.fixings)) }))
    .sort((a, b) => verdict(merits(b.before, a.before)));
  const moving = fixings.some(({ name }) => openAcross(question, name));
  const place = remembered((fixedLineMm) => placeAt(question, fixedLineMm));
  const tried: HeldAt[] = [];
  for (const { line, before } of near) {
    // Lines are in the order of their hold: where one keeps every hole, none holds better that comes after. What slides
    // may change how far a line's screws travel, but not whether one stands on it.
    const after = (one: HeldAt) => verdict(merits(before, one).slice(0, moving ? 1 : undefined)) < 0;
    if (tried.some((one) => one.placement.keptCount === holeCount(plan) && after(one))) break;
    tried.push(hold(question, place, line));
  }
  const held = best(tried);
  const others = near
    .map(({ line }) => holdOn(question, held.placement.base, line(held.placement.base.fixings)))
    .filter(({ fixedLineMm }) => Math.abs(fixedLineMm - held.fixedLineMm) > SAME_MM)
    .sort((a, b) => verdict(merits(b, a)));
  return { held, others, moving };
}
