import {
  type BestOffset,
  bestOffset,
  type KeepOut,
  layoutHoles,
  type SlidingBase,
  widestBase,
} from '@scantling/grids';
import { type CountedGrid, gridOver, screwId } from '../parts/holes.ts';
import type { Base } from '../plan/base.ts';
import type { Point } from '../plan/place.ts';
import type { Plan } from '../plan/plan.ts';
import type { Swing } from '../season.ts';
import { type Slides, slid } from './slid.ts';

/** Where the sliding parts and the grid go when the top is held at one line. */
export interface Placement {
  readonly fixedLineMm: number;
  /** Of every part, in the order of the plan, mm the way that widens. */
  readonly slidesMm: readonly number[];
  /** The base with its parts there. */
  readonly base: Pick<Base, 'members' | 'fixings'>;
  readonly first: Point;
  readonly keptCount: number;
  /** From the tightest hole to what is nearest, mm; `null` where none is kept. */
  readonly leastClearanceMm: number | null;
  /** Slides that were open, added up, and the most that is possible, mm; `null` where none was open. */
  readonly spread: { readonly spreadMm: number; readonly boundMm: number; readonly proven: boolean } | null;
  /** What the tightest hole has beyond the clearance asked for, and the most possible, mm; `null` where the grid was given. */
  readonly offset: {
    readonly spareMm: number | null;
    readonly boundMm: number | null;
    readonly proven: boolean;
  } | null;
}

/** What is asked: the plan, the year, and what is still open of the slides. */
export interface Question {
  readonly plan: Plan;
  readonly swing: Swing;
}

/** The searches of grids end so near to the best. */
export const GAP_MM = 0.01;

/** So many holes `widestBase` can do without. */
const MOST_DROPPED = 10;

/** So many places of a part are tried where more holes than that are lost whatever one does. */
const TRIES = 40;

const byName = <T extends { readonly name: string }>(things: readonly T[]): T[] =>
  [...things].sort((a, b) => (a.name < b.name ? -1 : 1));

const partsOf = ({ base }: Plan) => base.sliding ?? [];

export const holeCount = ({ holes }: Plan): number => holes.columns * holes.rows;

/** The plan with its parts slid so far. */
export const withSlides = ({ plan, swing }: Question, slidesMm: readonly number[]): Question => {
  const sliding = plan.base.sliding?.map((part, i) => ({ ...part, slideMm: slidesMm[i] as number }));
  return { swing, plan: { ...plan, base: { ...plan.base, sliding } } };
};

/** The base with its open parts as narrow and as wide as they go. */
export const endsOf = ({ plan }: Question): readonly [Placement['base'], Placement['base']] => {
  const at = (end: 'leastSlideMm' | 'mostSlideMm') =>
    slid(
      plan.base,
      partsOf(plan),
      partsOf(plan).map((part) => (part.slideMm === 'choose' ? part[end] : part.slideMm)),
    );
  return [at('leastSlideMm'), at('mostSlideMm')];
};

/** The grid over a base, whatever the order in which things are listed. */
function gridOf({ plan, swing }: Question, base: Placement['base'], fixedLineMm: number): CountedGrid {
  const grid = gridOver({ ...plan, base: { ...plan.base, ...base } }, fixedLineMm, swing);
  return { ...grid, keepOuts: [...grid.keepOuts].sort((a, b) => (a.id < b.id ? -1 : 1)) };
}

/** How many holes a layout keeps, and how near the tightest of them comes to something. */
function layoutAt(grid: CountedGrid, firstHole: Point) {
  const { holes } = layoutHoles({ ...grid, firstHole });
  const leastClearanceMm = holes.length ? Math.min(...holes.map(({ clearanceMm }) => clearanceMm)) : null;
  return { keptCount: holes.length, leastClearanceMm };
}

/** The middle of the top, for a grid that fits nowhere. */
function inTheMiddle({ panel, pitchXMm, pitchYMm, columns, rows }: CountedGrid): Point {
  const start = (sideMm: number, count: number, pitchMm: number) =>
    Math.max(0, (sideMm - (count - 1) * pitchMm) / 2);
  return { xMm: start(panel.lengthMm, columns, pitchXMm), yMm: start(panel.widthMm, rows, pitchYMm) };
}

/** A slide within its limits, as near to where the part is drawn as they let it be. */
const nearestSlideMm = ({ leastSlideMm, mostSlideMm }: { leastSlideMm: number; mostSlideMm: number }) =>
  Math.min(mostSlideMm, Math.max(leastSlideMm, 0));

/** A slide cut down to whole micrometres, rounding apart. */
const wholeMicrometres = (mm: number): number => Math.floor(mm * 1000 + 1e-3) / 1000;

const withinLimits = ({ slidesMm }: Placement, parts: readonly Slides[]): boolean =>
  parts.every(({ leastSlideMm, mostSlideMm }, i) => {
    const mm = slidesMm[i] as number;
    return mm >= leastSlideMm && mm <= mostSlideMm;
  });

/** Slides of the open parts, and how sure it is that they are the widest. */
interface Spread {
  readonly slidesMm: ReadonlyMap<string, number>;
  readonly firstHole: Point;
  readonly keptCount: number;
  readonly spread: NonNullable<Placement['spread']>;
}

/**
 * As wide as the holes allow. A screw goes with its part here, so it counts as the base's: judged over every season,
 * where the top's are judged as they are on building day.
 */
function widest(grid: CountedGrid, question: Question): Spread | null {
  const { plan } = question;
  const open = byName(partsOf(plan).filter(({ slideMm }) => slideMm === 'choose'));
  const loose = new Set(open.flatMap(({ fixings }) => fixings.map(screwId)));
  const { first } = plan.holes;
  const base: SlidingBase = {
    ...grid,
    keepOuts: grid.keepOuts.map((one): KeepOut => (loose.has(one.id) ? { ...one, belongsTo: 'base' } : one)),
    parts: open.map(({ name, members, fixings, widensTowards, leastSlideMm, mostSlideMm }) => ({
      id: name,
      keepOutIds: [...members, ...fixings.map(screwId)],
      ...{ widensTowards, leastSlideMm, mostSlideMm },
    })),
    mostDroppedCount: 0,
    ...(first !== 'choose' && { firstHole: first }),
  };
  for (const mostDroppedCount of [0, MOST_DROPPED]) {
    const { settings, proven } = widestBase({ ...base, mostDroppedCount });
    const [fewest] = settings;
    if (!fewest) continue;
    return {
      slidesMm: new Map(fewest.slides.map(({ id, slideMm }) => [id, slideMm])),
      firstHole: fewest.firstHole,
      keptCount: holeCount(plan) - fewest.droppedCount,
      spread: { spreadMm: fewest.spreadMm, boundMm: fewest.spreadBoundMm, proven },
    };
  }
  return null;
}

/**
 * Where a great many holes are lost: the places of each part in turn, with the grid where it was best, for most holes
 * and then for width.
 */
function tried(question: Question, drawn: Placement['base'], fixedLineMm: number, first: Point): number[] {
  const parts = partsOf(question.plan);
  const slidesMm = parts.map((part) => (part.slideMm === 'choose' ? nearestSlideMm(part) : 0));
  const keptWith = (tryMm: readonly number[]) =>
    layoutAt(gridOf(question, slid(drawn, parts, tryMm), fixedLineMm), first).keptCount;
  const open = parts
    .map((part, i) => ({ ...part, i }))
    .filter(({ slideMm }) => slideMm === 'choose')
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  for (const { i, leastSlideMm, mostSlideMm } of open) {
    let best = keptWith(slidesMm);
    for (let step = 0; step <= TRIES; step++) {
      const tryMm = slidesMm.with(i, leastSlideMm + ((mostSlideMm - leastSlideMm) * step) / TRIES);
      const kept = keptWith(tryMm);
      if (kept < best || (kept === best && (tryMm[i] as number) <= (slidesMm[i] as number))) continue;
      best = kept;
      slidesMm[i] = tryMm[i] as number;
    }
  }
  return slidesMm;
}

/** The same grid, where everything asks for so much more. */
const stricter = (grid: CountedGrid, byMm: number): CountedGrid => ({
  ...grid,
  edgeMarginMm: grid.edgeMarginMm + byMm,
  keepOuts: grid.keepOuts.map((one) => ({ ...one, clearanceMm: one.clearanceMm + byMm })),
});

/**
 * In the middle of the top, along it, or across it, and to the nearest line of a rule, where the holes lose no more by it
 * than the search leaves open: what is tightest one way often leaves the other free.
 */
function readable(grid: CountedGrid, { xMm, yMm }: Point, { spareMm, keptCount }: BestOffset): Point {
  const asked = stricter(grid, Math.max(0, (spareMm ?? 0) - GAP_MM));
  const middle = inTheMiddle(grid);
  const wanted = [middle, { xMm: middle.xMm, yMm }, { xMm, yMm: middle.yMm }, { xMm, yMm }];
  for (const near of wanted.flatMap(onARule)) {
    const onPanel = near.xMm <= grid.panel.lengthMm && near.yMm <= grid.panel.widthMm;
    if (onPanel && layoutAt(asked, near).keptCount >= keptCount) return near;
  }
  return { xMm, yMm };
}

/** Lines of a rule for one millimetre, and for none where a place has to be as it is. */
const LINES_PER_MM = [1, 2, 10, null];

const toLine = (mm: number, perMm: number | null) => (perMm === null ? mm : Math.round(mm * perMm) / perMm);

/** A place to the nearest lines of a rule, the coarsest first. */
const onARule = ({ xMm, yMm }: Point): Point[] =>
  LINES_PER_MM.flatMap((alongPerMm) =>
    LINES_PER_MM.map((acrossPerMm) => ({ xMm: toLine(xMm, alongPerMm), yMm: toLine(yMm, acrossPerMm) })),
  );

/** Where the grid begins over a base that stands: given, or where most holes are kept with most to spare. */
function firstOver({ plan }: Question, grid: CountedGrid, found: Point | null) {
  if (plan.holes.first !== 'choose') {
    return { first: plan.holes.first, offset: null, ...layoutAt(grid, plan.holes.first) };
  }
  const best = bestOffset(grid);
  const { spareMm, proven } = best;
  const roomiest = best.firstHole ? readable(grid, best.firstHole, best) : inTheMiddle(grid);
  const atBest = { first: roomiest, ...layoutAt(grid, roomiest) };
  const atFound =
    found && best.keptCount < grid.columns * grid.rows ? { first: found, ...layoutAt(grid, found) } : null;
  // A grid that fits with less than the gap to spare is found with the slides, and may be missed by itself.
  if (atFound && atFound.keptCount > atBest.keptCount) {
    return { ...atFound, offset: { spareMm: 0, boundMm: GAP_MM, proven } };
  }
  return { ...atBest, offset: { spareMm, boundMm: best.spareBoundMm, proven } };
}

/** Slides and first hole together, for a top that is held at a line. */
export function placeAt(question: Question, fixedLineMm: number): Placement {
  const { plan } = question;
  const parts = partsOf(plan);
  const givenMm = parts.map(({ slideMm }) => (slideMm === 'choose' ? 0 : slideMm));
  const drawn = slid(plan.base, parts, givenMm);
  const standing = (slidesMm: readonly number[], spread: Placement['spread'], found: Point | null) => {
    const base = slid(plan.base, parts, slidesMm);
    const grid = gridOf(question, base, fixedLineMm);
    return { fixedLineMm, slidesMm, base, spread, ...firstOver(question, grid, found) };
  };
  if (parts.every(({ slideMm }) => slideMm !== 'choose')) return standing(givenMm, null, null);
  const found = widest(gridOf(question, drawn, fixedLineMm), question);
  if (found) {
    const slidesWith = (rounded: (mm: number) => number) =>
      parts.map(({ name, slideMm }) =>
        slideMm === 'choose' ? rounded(found.slidesMm.get(name) as number) : slideMm,
      );
    const whole = standing(slidesWith(wholeMicrometres), found.spread, found.firstHole);
    return whole.keptCount >= found.keptCount && withinLimits(whole, parts)
      ? whole
      : standing(
          slidesWith((mm) => mm),
          found.spread,
          found.firstHole,
        );
  }
  const nearMm = parts.map((part) => (part.slideMm === 'choose' ? nearestSlideMm(part) : part.slideMm));
  const { first } = standing(nearMm, null, null);
  const openMm = tried(question, drawn, fixedLineMm, first);
  const slidesMm = parts.map(({ slideMm }, i) => (slideMm === 'choose' ? (openMm[i] as number) : slideMm));
  const spreadMm = slidesMm.reduce((sum, mm, i) => (parts[i]?.slideMm === 'choose' ? sum + mm : sum), 0);
  const boundMm = parts.reduce(
    (sum, { slideMm, mostSlideMm }) => (slideMm === 'choose' ? sum + mostSlideMm : sum),
    0,
  );
  return standing(slidesMm, { spreadMm, boundMm, proven: false }, null);
}
