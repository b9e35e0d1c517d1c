import { requireInputs, type Unit } from '@scantling/rules';
import type { Plan } from './plan/plan.ts';
import { planWorktop } from './plan-worktop.ts';
import type { Check, Margin, Status, WorktopPlan } from './result.ts';

/** How much is changed at a time. */
export interface WhatIfSteps {
  /** Moisture content on building day, points of moisture content, 0.01 to 10. */
  readonly moisturePct: number;
  /** Both pitches of the holes, mm, 0.01 to 100. */
  readonly pitchMm: number;
  /** How far each sliding part of the base is slid, mm, 0.01 to 1000. */
  readonly spreadMm: number;
}

/** A check as it stands, by what its verdict turns on. */
export interface Tightness {
  readonly id: string;
  readonly title: string;
  readonly status: Status;
  readonly margin: Margin;
  /**
   * What there is beyond what is needed, or what is left of what is allowed, % of that; negative where it is broken.
   * `null` where not even a limit of 0 is kept, of which there are no percents.
   */
  readonly sparePct: number | null;
}

/** A check after a change. */
export interface ChangedCheck {
  readonly id: string;
  readonly status: Status;
  /** Beyond what is needed, or left of what is allowed; `null` where it has no margin. */
  readonly spare: Amount | null;
  /** How much that is more than it was; `null` where it has no margin, or had none. */
  readonly gain: Amount | null;
}

/** So much, in a unit. */
export interface Amount {
  readonly value: number;
  readonly unit: Unit;
}

/** The plan with one thing changed and all else as it was chosen. */
export interface Change {
  readonly what: 'moisture on building day' | 'pitch' | 'base spread';
  /** Points of moisture content, or mm; negative is less. */
  readonly by: Amount;
  readonly status: Status;
  /** Every check that has a margin or whose verdict changes. */
  readonly checks: readonly ChangedCheck[];
}

export interface WhatIf {
  /** The three checks with least to spare, the tightest first. */
  readonly tightest: readonly Tightness[];
  readonly changes: readonly Change[];
  /** Changes that can't be tried, and why. */
  readonly notTried: readonly string[];
}

/** Lengths, forces and hours that differ by no more are the same. */
const ROUNDING = 1e-6;

/** What a margin leaves: 0 or more where it is kept. */
export const spareOf = ({ given, min, max }: Margin): number =>
  min === undefined ? (max as number) - given : given - min;

/** Of what needs nothing, anything is more than enough; less than that is a limit broken like any other. */
function tightness({ id, title, status, margin }: Check): Tightness[] {
  if (!margin) return [];
  const limit = Math.abs(margin.min ?? (margin.max as number));
  const spare = spareOf(margin);
  if (limit === 0 && spare >= -ROUNDING) return [];
  return [{ id, title, status, margin, sparePct: limit > 0 ? (100 * spare) / limit : null }];
}

/** The tightest first; what is broken by any share of nothing, before all. */
const byTightness = (a: Tightness, b: Tightness) =>
  a.sparePct === null || b.sparePct === null
    ? Number(b.sparePct === null) - Number(a.sparePct === null)
    : a.sparePct - b.sparePct;

/** The plan as asked, with every choice as it was made: what is changed then is not chosen anew. */
function asChosen({ asked, plan }: WorktopPlan): Plan {
  const { base, holes, screws, glueUp } = asked;
  const slide = (i: number) => plan.base.sliding?.[i]?.slideMm ?? 0;
  return {
    ...asked,
    base: {
      ...base,
      fixedLineMm: plan.base.fixedLineMm,
      ...(base.sliding && { sliding: base.sliding.map((part, i) => ({ ...part, slideMm: slide(i) })) }),
    },
    holes: { ...holes, first: plan.holes.first },
    ...(screws && { screws: { ...screws, lengthMm: plan.screws?.lengthMm ?? screws.lengthMm } }),
    ...(glueUp && { glueUp: { ...glueUp, boardCount: plan.glueUp?.boardCount ?? glueUp.boardCount } }),
  };
}

const wetter = (plan: Plan, byPct: number): Plan => ({
  ...plan,
  top: { ...plan.top, moisturePct: plan.top.moisturePct + byPct },
});

const withPitch = (plan: Plan, byMm: number): Plan => ({
  ...plan,
  holes: { ...plan.holes, pitchXMm: plan.holes.pitchXMm + byMm, pitchYMm: plan.holes.pitchYMm + byMm },
});

/** Each part slid further than it may be: its own limits are no matter here. */
const spread = (plan: Plan, byMm: number): Plan => ({
  ...plan,
  base: {
    ...plan.base,
    sliding: (plan.base.sliding ?? []).map((part) => {
      const slideMm = (part.slideMm as number) + byMm;
      const { leastSlideMm, mostSlideMm } = part;
      return {
        ...part,
        slideMm,
        leastSlideMm: Math.min(leastSlideMm, slideMm),
        mostSlideMm: Math.max(mostSlideMm, slideMm),
      };
    }),
  },
});

function changedChecks(before: WorktopPlan, after: WorktopPlan): ChangedCheck[] {
  const were = new Map(before.checks.map((check) => [check.id, check]));
  return after.checks.flatMap(({ id, status, margin }): ChangedCheck[] => {
    const was = were.get(id);
    if (!margin && was?.status === status) return [];
    if (!margin) return [{ id, status, spare: null, gain: null }];
    const { unit } = margin;
    const spare = { value: spareOf(margin), unit };
    const gain = was?.margin ? { value: spare.value - spareOf(was.margin), unit } : null;
    return [{ id, status, spare, gain }];
  });
}

/**
 * What happens to each check where the wood is a little wetter or drier on building day, the holes a little closer or
 * wider apart, the base a little wider or narrower, and which three checks are tightest as things stand. Everything else
 * stays as it was chosen.
 *
 * @param result - A computed plan.
 * @param steps - How much to change at a time, each way.
 * @returns The three tightest checks, and every change with what it does to each check.
 * @throws RangeError where a step is outside its limits.
 * @example
 * ```ts
 * import { planWorktop, whatIf } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const result = planWorktop(parsePlan(binderyBench));
 * const { tightest, changes } = whatIf(result, { moisturePct: 1, pitchMm: 1, spreadMm: 5 });
 * tightest.length // => 3
 * changes.slice(0, 2).map(({ what, by }) => [what, by.value]) // => [['moisture on building day', -1], ['moisture on building day', 1]]
 * ```
 */
export function whatIf(result: WorktopPlan, steps: WhatIfSteps): WhatIf {
  requireInputs('whatIf', steps, {
    moisturePct: { min: 0.01, max: 10 },
    pitchMm: { min: 0.01, max: 100 },
    spreadMm: { min: 0.01, max: 1000 },
  });
  const plan = asChosen(result);
  const notTried: string[] = [];
  const attempt = (what: Change['what'], by: Amount, changed: Plan): Change[] => {
    try {
      const after = planWorktop(changed);
      return [{ what, by, status: after.status, checks: changedChecks(result, after) }];
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      notTried.push(`${what} by ${by.value} ${by.unit}: ${error.message}`);
      return [];
    }
  };
  const bothWays = (what: Change['what'], step: number, unit: Unit, to: typeof wetter) =>
    [-step, step].flatMap((value) => attempt(what, { value, unit }, to(plan, value)));
  const slides = (plan.base.sliding ?? []).length > 0;
  if (!slides) notTried.push('base spread: no part of this base slides');
  const changes = [
    ...bothWays('moisture on building day', steps.moisturePct, '%', wetter),
    ...bothWays('pitch', steps.pitchMm, 'mm', withPitch),
    ...(slides ? bothWays('base spread', steps.spreadMm, 'mm', spread) : []),
  ];
  const tightest = result.checks.flatMap(tightness).sort(byTightness).slice(0, 3);
  return { tightest, changes, notTried };
}
