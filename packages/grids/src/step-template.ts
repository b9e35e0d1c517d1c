import { requireFields, requireInputs, requireThat } from '@scantling/rules';
import { SAME_MM } from './geometry.ts';
import { type ErrorPair, errorTracer, holeErrors } from './step-template-errors.ts';
import { constructedPlans, reachable } from './step-template-plans.ts';
import { lowerBound, shortestPlan } from './step-template-search.ts';
import { cornerOf, inOrder, type Step, type Stepping } from './step-template-windows.ts';

const MOST_HOLES = 1600;

/** A place of the grid, counted from 0 at the front-left corner. */
export interface GridPlace {
  readonly column: number;
  readonly row: number;
}

/** Limits of what goes wrong at one placement, all farthest distances from where a thing should be. */
export interface StepErrors {
  /** Diameter of the template's holes less that of the pins, mm, 0 to 10. */
  readonly playInTemplateMm: number;
  /** Diameter of the bored holes less that of the pins, mm, 0 to 10. */
  readonly playInHoleMm: number;
  /** Farthest that the template stands off a datum edge at each of its three contacts, mm, 0 to 10. */
  readonly datumErrorMm: number;
  /** Farthest that a bored hole lies from the middle of its guide hole, in any direction, mm, 0 to 10. */
  readonly boringErrorMm: number;
  /** By how much the template's pitch may be off, in x and in y, mm for each hole, 0 to 10. */
  readonly templatePitchErrorMm: number;
}

/** A grid of holes, square or rectangular, and a smaller template on the same pitch. */
export interface TemplateSteppingInput extends StepErrors {
  /** Of the grid, 1 to 1600; at most 1600 places in all. */
  readonly columns: number;
  readonly rows: number;
  /** Along the grain, mm, 0.1 to 10 000. */
  readonly pitchXMm: number;
  /** Across the grain, mm, 0.1 to 10 000. */
  readonly pitchYMm: number;
  /** Guide holes of the template: at least two, and no more columns or rows than the grid. */
  readonly template: { readonly columns: number; readonly rows: number };
  /** Places that get no hole, as `layoutHoles` gives them; left out, every place gets one. */
  readonly dropped?: readonly GridPlace[];
  /** Where the template's first hole stands when it is located from the datum edges; left out, in the front-left corner. */
  readonly first?: GridPlace;
  /** Least distance between the two pins of a placement, mm, 0 for any two holes. */
  readonly leastPinSpanMm: number;
}

/** One placement of the template. */
export interface TemplatePlacement extends ErrorPair {
  /** Where the template's first hole stands. */
  readonly column: number;
  readonly row: number;
  /** Finished holes that take the two pins, farthest apart; none for the first placement. */
  readonly pins: readonly GridPlace[];
  /** How far apart the pins are, mm; `null` for the first placement. */
  readonly pinSpanMm: number | null;
  /** Holes to bore. */
  readonly bores: readonly GridPlace[];
}

/** A hole with what its position may be off by. */
export interface SteppedHole extends GridPlace, ErrorPair {
  /** Index of the placement that bores it. */
  readonly placementIndex: number;
}

/** Where to put the template, one placement after the other. */
export interface TemplatePlan {
  /** In order; the errors of each are those of its hole that may be farthest off. */
  readonly placements: readonly TemplatePlacement[];
  /** Proved: no plan that bores these holes has fewer placements. */
  readonly leastPlacementCount: number;
  /** Whether the plan has no more than that. */
  readonly proven: boolean;
  /** Holes that no placement with two pins can reach. */
  readonly unreached: readonly GridPlace[];
  /** Why they are not reached; `null` where all are. */
  readonly why: string | null;
  /** Every bored hole, row by row. */
  readonly holes: readonly SteppedHole[];
  /** The one that may be farthest off in the worst case; `null` where nothing is bored. */
  readonly worstHole: SteppedHole | null;
}

/**
 * Plans how to bore a grid of holes through a smaller template that is stepped along: first located from the front and
 * left datum edges, then by two pins through template holes into finished holes, as far apart as possible. The plan is
 * the shortest found; `leastPlacementCount` is proved, and where the two are the same, so is the plan.
 *
 * Errors build up from placement to placement. The template counts as rigid and turns as small; each pin may be off by
 * half its play in template and hole. The worst case adds all limits up; two pins can seldom use all of their play at
 * once, so it is on the safe side. Root-sum-square takes the errors as independent: if each limit is two standard
 * deviations, so is the result.
 *
 * Clamp the template before boring, leave the pins in while boring, and check the diagonals of the first placement's
 * holes: all later holes follow them (common practice, no source).
 *
 * @param input - Grid, template, and how far off each step may be; lengths in mm.
 * @returns Placements in order, what is proved about their number, and the errors of every hole.
 * @throws RangeError where a field is missing or outside its limits, or the template is larger than the grid.
 * Source: root-sum-square, JCGM 100:2008, Eq. (10), with sensitivity coefficients from rigid-body geometry.
 * @example
 * ```ts
 * import { stepTemplate } from '@scantling/grids';
 * const plan = stepTemplate({
 *   columns: 7, rows: 3, pitchXMm: 96, pitchYMm: 96,
 *   template: { columns: 4, rows: 3 },
 *   leastPinSpanMm: 150,
 *   playInTemplateMm: 0.1, playInHoleMm: 0.1,
 *   datumErrorMm: 0.2, boringErrorMm: 0.1, templatePitchErrorMm: 0.02,
 * });
 * plan.placements.map(({ column, row }) => [column, row]) // => [[0, 0], [3, 0]]
 * plan.placements[1].pins // => [{ column: 3, row: 0 }, { column: 3, row: 2 }]
 * plan.leastPlacementCount // => 2
 * plan.proven // => true
 * ```
 */
export function stepTemplate(input: TemplateSteppingInput): TemplatePlan {
  const stepping = checkStepping(input);
  const { columns } = stepping;
  const toPlace = (place: number): GridPlace => ({
    column: place % columns,
    row: Math.floor(place / columns),
  });
  const toFinish = reachable(stepping);
  const { steps, leastCount } = shortest(stepping, toFinish);
  const trace = errorTracer(stepping, steps, input);
  const holes = steps
    .flatMap(({ bores }, placementIndex) =>
      bores.map((place) => ({
        place,
        hole: { ...toPlace(place), placementIndex, ...holeErrors(trace, place) },
      })),
    )
    .sort((a, b) => a.place - b.place)
    .map(({ hole }) => hole);
  const placements = steps.map(({ placement, pins, bores }, index): TemplatePlacement => {
    const [column, row] = cornerOf(stepping, placement);
    const { worstCase, rootSumSquare } = worstOf(
      holes.filter(({ placementIndex }) => placementIndex === index),
    ) as SteppedHole;
    return {
      column,
      row,
      pins: pins ? [toPlace(pins.from), toPlace(pins.to)] : [],
      pinSpanMm: pins ? pins.spanMm : null,
      bores: bores.map(toPlace),
      worstCase,
      rootSumSquare,
    };
  });
  const reached = new Set(toFinish);
  const unreached = [...stepping.wanted.keys()]
    .filter((place) => stepping.wanted[place] && !reached.has(place))
    .map(toPlace);
  return {
    placements,
    leastPlacementCount: leastCount,
    proven: leastCount === placements.length,
    unreached,
    why: whyUnreached(input, unreached.length, toFinish.length),
    holes,
    worstHole: worstOf(holes),
  };
}

const worstOf = (holes: readonly SteppedHole[]): SteppedHole | null =>
  holes.reduce<SteppedHole | null>(
    (worst, hole) =>
      worst && hole.worstCase.distanceMm <= worst.worstCase.distanceMm + SAME_MM ? worst : hole,
    null,
  );

/** The shortest plan, and among constructed plans of that length the one with the longest shortest pin span. */
function shortest(stepping: Stepping, toFinish: readonly number[]): { steps: Step[]; leastCount: number } {
  if (toFinish.length === 0) return { steps: [], leastCount: 0 };
  const shortestSpanMm = (steps: readonly Step[]) =>
    Math.min(...steps.map(({ pins }) => pins?.spanMm ?? Number.POSITIVE_INFINITY));
  const [best = []] = constructedPlans(stepping, toFinish.length)
    .map((placements) => inOrder(stepping, placements))
    .sort((a, b) => a.length - b.length || shortestSpanMm(b) - shortestSpanMm(a));
  if (best.length === lowerBound(stepping, toFinish)) return { steps: best, leastCount: best.length };
  const known = best.map(({ placement }) => placement);
  const { placements, leastCount } = shortestPlan(stepping, known, toFinish);
  return { steps: inOrder(stepping, placements), leastCount };
}

function whyUnreached(input: TemplateSteppingInput, unreached: number, reached: number): string | null {
  if (unreached === 0) return reached === 0 ? 'Every place of the grid is dropped.' : null;
  const many = unreached === 1 ? '1 hole is' : `${unreached} holes are`;
  if (reached === 0) return `${many} not reached: the first placement bores nothing that could take a pin.`;
  const { columns, rows } = input.template;
  const line = columns === 1 || rows === 1 ? ' A template of one line never leaves its line.' : '';
  const apart = input.leastPinSpanMm > 0 ? ` at least ${input.leastPinSpanMm} mm apart` : '';
  return `${many} not reached: no placement over them stands on two finished holes${apart}.${line} Locate the template there from the datum edges, or take a larger one.`;
}

type Checked = Omit<TemplateSteppingInput, 'leastPinSpanMm'>;

/** Throws where the question makes no sense. */
function checkStepping(input: TemplateSteppingInput): Stepping {
  const caller = 'stepTemplate';
  const error = { min: 0, max: 10 };
  const pitch = { min: 0.1, max: 10_000 };
  const count = (max: number) => ({ min: 1, max, integer: true }) as const;
  requireInputs<Checked>(caller, input, {
    columns: count(MOST_HOLES),
    rows: count(MOST_HOLES),
    pitchXMm: pitch,
    pitchYMm: pitch,
    playInTemplateMm: error,
    playInHoleMm: error,
    datumErrorMm: error,
    boringErrorMm: error,
    templatePitchErrorMm: error,
  });
  const { columns, rows, pitchXMm, pitchYMm, template, dropped = [], leastPinSpanMm } = input;
  const places = columns * rows;
  requireThat(caller, places <= MOST_HOLES, `at most ${MOST_HOLES} places in the grid, got ${places}`);
  requireFields(caller, 'template', template, { columns: count(columns), rows: count(rows) });
  const [width, height] = [template.columns, template.rows];
  requireThat(caller, width * height >= 2, 'a template of at least two holes, got 1');
  const diagonalMm = Math.hypot((width - 1) * pitchXMm, (height - 1) * pitchYMm);
  requireInputs(caller, { leastPinSpanMm }, { leastPinSpanMm: { min: 0, max: diagonalMm } });
  requireThat(caller, Array.isArray(dropped), `dropped to be a list, got ${typeof dropped}`);
  const wanted = new Uint8Array(places).fill(1);
  for (const [i, place] of dropped.entries()) {
    const within = { min: 0, integer: true } as const;
    requireFields(caller, `dropped[${i}]`, place, {
      column: { ...within, max: columns - 1 },
      row: { ...within, max: rows - 1 },
    });
    wanted[place.row * columns + place.column] = 0;
  }
  const { first = { column: 0, row: 0 } } = input;
  requireFields(caller, 'first', first, {
    column: { min: 0, max: columns - width, integer: true },
    row: { min: 0, max: rows - height, integer: true },
  });
  return {
    columns,
    rows,
    width,
    height,
    pitchXMm,
    pitchYMm,
    leastPinSpanMm,
    wanted,
    first: first.row * (columns - width + 1) + first.column,
  };
}
