import { type Limits, requireFields, requireInputs, requireThat } from '@scantling/rules';
import { firmNotHard, nothingHolds, notStructuralDesign, slotsInMetal } from './cautions.ts';
import {
  type FixingFit,
  type FixingKind,
  type FixingTerms,
  fitOf,
  requireKind,
  type Side,
} from './fixing-kinds.ts';
import { fixingTravel } from './rules/fixing-travel.ts';
import { type OpeningWork, SAME_MM } from './screw-opening.ts';

const place: Limits = { min: -5000, max: 10_000 };
const percent: Limits = { min: 0, max: 20 };
const MOST_FIXINGS = 500;

/** From front to back across the grain, mm from the datum, −5000 to 10 000. */
export interface AcrossGrain {
  readonly frontYMm: number;
  readonly backYMm: number;
}

/** A place where the base holds the top. */
export interface FixingPoint {
  readonly name: string;
  /** Along the grain, mm from the datum, −5000 to 10 000. */
  readonly xMm: number;
  /** Across the grain, mm from the datum, −5000 to 10 000: of the screw on building day, or of the hole that is there. */
  readonly yMm: number;
  readonly by: FixingKind;
  /** The member or flange that a screw's hole is in, across the grain; left out where it is not asked for. */
  readonly member?: AcrossGrain | undefined;
}

/** Where the top is held: at a row of fixings, midway between the first and the last row, or anywhere. */
export type FixedLine =
  | 'front row'
  | 'middle'
  | 'back row'
  | { readonly fixing: string }
  | { readonly yMm: number };

export interface FixingsInput {
  /** Front and back edge of the top on building day. */
  readonly top: AcrossGrain;
  /** Front and back of the base. */
  readonly base: AcrossGrain;
  readonly fixings: readonly FixingPoint[];
  readonly fixedLine: FixedLine;
  /** Most that the top swells from its width on building day, % of that width, 0 to 20. */
  readonly swellPct: number;
  /** Most that it shrinks from its width on building day, % of that width, 0 to 20. */
  readonly shrinkPct: number;
  /** Diameter of the screws where they pass through the base, mm, 0.5 to 50. */
  readonly shankDiameterMm: number;
  /** Room left at each end of the travel, mm, 0 to 50. */
  readonly clearanceMm: number;
  /** Diameter of the washers, or of the heads where there are none, mm, 0.5 to 200; left out where it is not asked for. */
  readonly washerDiameterMm?: number | undefined;
}

/** How far the top reaches beyond the base, mm; negative where it stays short of it. */
export interface Overhang {
  readonly buildingDayMm: number;
  readonly swollenMm: number;
  readonly shrunkMm: number;
}

/** One fixing, with what the season does to it. */
export interface PlannedFixing {
  readonly name: string;
  readonly xMm: number;
  readonly yMm: number;
  /** From the fixed line, mm. */
  readonly distanceMm: number;
  /** The side of the fixed line that it lies on; `null` on the line. */
  readonly outwards: Side | null;
  /** Travel away from the fixed line when the top swells, mm from building day. */
  readonly swellMm: number;
  /** Travel towards it when the top shrinks, mm from building day. */
  readonly shrinkMm: number;
  /** How it takes that travel. */
  readonly fit: FixingFit;
  /** Whether it lets the top travel as it is: a hole that is still to be made does not. */
  readonly letsTravel: boolean;
  /** Ends of the opening across the grain once its work is done, mm from the datum; `null` for other kinds. */
  readonly opening: AcrossGrain | null;
  /** What the member keeps beyond the nearer end of the opening, mm, negative beyond it; `null` where not asked for. */
  readonly leftInMemberMm: number | null;
  /** Whether the washer covers the opening all year; `null` where not asked for. */
  readonly washerCovers: boolean | null;
}

export interface FixingPlan {
  readonly fixedLineYMm: number;
  readonly fixings: readonly PlannedFixing[];
  /** Screws that hold the top at the fixed line, each in a round hole that fits it; where there is none a caution says so. */
  readonly holding: readonly string[];
  /** Screws whose holes must become slots. */
  readonly becomeSlots: readonly string[];
  /** Screws whose holes may stay as they are. */
  readonly stay: readonly string[];
  /** Most that any fixing travels from one end of the season to the other, mm. */
  readonly longestSwingMm: number;
  readonly overhangs: { readonly front: Overhang; readonly back: Overhang };
  readonly cautions: readonly string[];
}

function requireAcross(caller: string, path: string, given: AcrossGrain): void {
  requireFields(caller, path, given, { frontYMm: place, backYMm: place });
  const { frontYMm, backYMm } = given;
  requireThat(
    caller,
    frontYMm < backYMm,
    `${path}.frontYMm below ${path}.backYMm, got ${frontYMm} and ${backYMm}`,
  );
}

/** What both planners ask of everything but the fixed line. */
export function requireFixings(caller: string, input: Omit<FixingsInput, 'fixedLine'>): void {
  const { top, base, fixings, washerDiameterMm, ...terms } = input ?? {};
  requireAcross(caller, 'top', top);
  requireAcross(caller, 'base', base);
  requireInputs(caller, terms as FixingTerms, {
    swellPct: percent,
    shrinkPct: percent,
    shankDiameterMm: { min: 0.5, max: 50 },
    clearanceMm: { min: 0, max: 50 },
  });
  if (washerDiameterMm !== undefined) {
    requireInputs(caller, { washerDiameterMm }, { washerDiameterMm: { min: 0.5, max: 200 } });
  }
  const count = Array.isArray(fixings) ? fixings.length : 0;
  requireThat(
    caller,
    count >= 1 && count <= MOST_FIXINGS,
    `fixings to be a list of 1 to ${MOST_FIXINGS}, got ${Array.isArray(fixings) ? count : typeof fixings}`,
  );
  const names = new Set<string>();
  for (const [i, fixing] of fixings.entries()) {
    const path = `fixings[${i}]`;
    requireFields(caller, path, fixing, { xMm: place, yMm: place });
    const { name, by, member } = fixing;
    const fresh = typeof name === 'string' && name !== '' && !names.has(name);
    requireThat(caller, fresh, `${path}.name to be a name of its own, got ${JSON.stringify(name)}`);
    names.add(name);
    requireKind(caller, `${path}.by`, by);
    if (member !== undefined) requireAcross(caller, `${path}.member`, member);
  }
}

/** Where the fixed line lies, mm from the datum. */
export function lineY(caller: string, line: FixedLine, fixings: readonly FixingPoint[]): number {
  const ys = fixings.map(({ yMm }) => yMm);
  const [frontMm, backMm] = [Math.min(...ys), Math.max(...ys)];
  switch (line) {
    case 'front row':
      return frontMm;
    case 'middle':
      return (frontMm + backMm) / 2;
    case 'back row':
      return backMm;
  }
  const given = Object(line) as { yMm?: unknown; fixing?: unknown };
  if ('yMm' in given) {
    requireFields(caller, 'fixedLine', given, { yMm: place });
    return given.yMm as number;
  }
  const held = fixings.find(({ name }) => name === given.fixing);
  requireThat(
    caller,
    held !== undefined,
    `fixedLine to be 'front row', 'middle', 'back row', { yMm } or { fixing } with the name of a fixing, got ${JSON.stringify(line)}`,
  );
  return (held as FixingPoint).yMm;
}

/** The ends of an opening across the grain; its inner end is the one towards the fixed line. */
function endsOf(fit: FixingFit, yMm: number, outwards: Side | null): AcrossGrain | null {
  if (fit.kind !== 'opening' && fit.kind !== 'groove') return null;
  const { toInnerEndMm, toOuterEndMm } = fit;
  return outwards === 'front'
    ? { frontYMm: yMm - toOuterEndMm, backYMm: yMm + toInnerEndMm }
    : { frontYMm: yMm - toInnerEndMm, backYMm: yMm + toOuterEndMm };
}

function planned(point: FixingPoint, lineYMm: number, input: Omit<FixingsInput, 'fixedLine'>) {
  const { name, xMm, yMm, by, member } = point;
  const { swellPct, shrinkPct, shankDiameterMm, clearanceMm, washerDiameterMm } = input;
  const distanceMm = Math.abs(yMm - lineYMm);
  const side: Side = yMm < lineYMm ? 'front' : 'back';
  const outwards = distanceMm > SAME_MM ? side : null;
  const swing = { distanceMm, outwards, ...fixingTravel({ distanceMm, swellPct, shrinkPct }) };
  const terms = { swellPct, shrinkPct, shankDiameterMm, clearanceMm };
  const { fit, letsTravel, holds } = fitOf(by, swing, terms);
  const opening = endsOf(fit, yMm, outwards);
  const fixing: PlannedFixing = {
    name,
    xMm,
    yMm,
    ...swing,
    fit,
    letsTravel,
    opening,
    leftInMemberMm:
      opening && member
        ? Math.min(opening.frontYMm - member.frontYMm, member.backYMm - opening.backYMm)
        : null,
    washerCovers:
      fit.kind === 'opening' && washerDiameterMm !== undefined
        ? washerDiameterMm >= fit.coveringWasherMm - SAME_MM
        : null,
  };
  return { fixing, holds };
}

/** The plan for a top held at one line, everything asked for already. */
export function planAbout(lineYMm: number, input: Omit<FixingsInput, 'fixedLine'>): FixingPlan {
  const { top, base, swellPct, shrinkPct } = input;
  const plannedOnes = input.fixings.map((point) => planned(point, lineYMm, input));
  const fixings = plannedOnes.map(({ fixing }) => fixing);
  const named = (some: readonly PlannedFixing[]) => some.map(({ name }) => name);
  const work = (wanted: OpeningWork) =>
    named(fixings.filter(({ fit }) => fit.kind === 'opening' && fit.work === wanted));
  const holding = named(plannedOnes.filter(({ holds }) => holds).map(({ fixing }) => fixing));
  const overhang = (beyondMm: (scale: number) => number): Overhang => ({
    buildingDayMm: beyondMm(1),
    swollenMm: beyondMm(1 + swellPct / 100),
    shrunkMm: beyondMm(1 - shrinkPct / 100),
  });
  const edgeAt = (yMm: number, scale: number) => lineYMm + (yMm - lineYMm) * scale;
  return {
    fixedLineYMm: lineYMm,
    fixings,
    holding,
    becomeSlots: work('make it a slot'),
    stay: work('leave it as it is'),
    longestSwingMm: Math.max(...fixings.map(({ swellMm, shrinkMm }) => swellMm + shrinkMm)),
    overhangs: {
      front: overhang((scale) => base.frontYMm - edgeAt(top.frontYMm, scale)),
      back: overhang((scale) => edgeAt(top.backYMm, scale) - base.backYMm),
    },
    cautions: [
      ...(holding.length === 0 ? [nothingHolds] : []),
      notStructuralDesign,
      firmNotHard,
      slotsInMetal,
    ],
  };
}

/**
 * Every place where a base holds a solid top: how far the season carries the top over it from building day, and how the
 * fixing there takes it. For a screw it says what hole or slot the base needs, which holes that are there must become
 * slots, how far each grows and which way, which may stay, and where in them the screw has to stand; for buttons, tabs and
 * plates that turn, whether they have the travel. A round hole is for the fixed line alone, where the top does not move.
 * Where no screw holds the top there, the first caution says so. x runs along the grain, y across it; the base keeps its
 * size.
 *
 * @param input - Top, base, fixings and the line where the top is held; all lengths in mm on building day.
 * @returns Each fixing, which of them hold the top, and both overhangs over the season.
 * @throws RangeError where a field is missing or outside its limits, naming its path.
 * Source: common practice, no source; the travel is `fixingTravel`, the slot `slotLength`.
 * @example
 * ```ts
 * import { planFixings } from '@scantling/fastening';
 * // A top of 600 mm on a base whose 9 mm holes were meant for 6 mm screws; held at the front row
 * const plan = planFixings({
 *   top: { frontYMm: 0, backYMm: 600 },
 *   base: { frontYMm: 50, backYMm: 550 },
 *   fixings: [
 *     { name: 'front', xMm: 100, yMm: 75, by: { kind: 'screw', holeMm: 9 } },
 *     { name: 'middle', xMm: 100, yMm: 275, by: { kind: 'screw', holeMm: 9 } },
 *     { name: 'back', xMm: 100, yMm: 475, by: { kind: 'screw', holeMm: 9 }, member: { frontYMm: 455, backYMm: 495 } },
 *   ],
 *   fixedLine: 'front row',
 *   swellPct: 1,
 *   shrinkPct: 0.5,
 *   shankDiameterMm: 6,
 *   clearanceMm: 0.5,
 * });
 * plan.becomeSlots // => ['middle', 'back']
 * plan.holding // => []
 * plan.cautions[0].startsWith('Nothing holds the top') // => true
 * plan.fixings[2].swellMm // => 4
 * plan.fixings[2].fit.longerAwayMm // => 3
 * plan.fixings[2].fit.longerTowardsMm // => 1
 * plan.fixings[2].opening // => { frontYMm: 469.5, backYMm: 482.5 }
 * plan.fixings[2].leftInMemberMm // => 12.5
 * plan.overhangs.back // => { buildingDayMm: 50, swollenMm: 55.25, shrunkMm: 47.375 }
 * ```
 */
export function planFixings(input: FixingsInput): FixingPlan {
  requireFixings('planFixings', input);
  return planAbout(lineY('planFixings', input.fixedLine, input.fixings), input);
}
