import type { Rectangle } from '../plan/place.ts';
import type { WorktopPlan } from '../result.ts';

/** A stretch across the grain, mm from the front edge. */
export interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
}

/** A recess from the face, and what lies in it. */
export interface CutStrip {
  readonly rabbet: Stretch & { readonly depthMm: number };
  readonly strip: Stretch & { readonly belowFaceMm: number; readonly thicknessMm: number };
  readonly name: string;
}

/** What a plane across the grain goes through. */
export interface Section {
  /** Where it stands, mm from the left end. */
  readonly xMm: number;
  readonly holes: readonly Stretch[];
  /** Base members, those that touch as one. */
  readonly members: readonly Stretch[];
  readonly strip: CutStrip | null;
}

const crosses = ({ xMm, lengthMm }: Rectangle, at: number) => at > xMm && at < xMm + lengthMm;
const across = ({ yMm, widthMm }: Rectangle): Stretch => ({ fromMm: yMm, toMm: yMm + widthMm });

/** Stretches in order, those that touch as one. */
function merged(stretches: readonly Stretch[]): Stretch[] {
  const runs: Stretch[] = [];
  for (const stretch of [...stretches].sort((a, b) => a.fromMm - b.fromMm)) {
    const last = runs.at(-1);
    if (last && stretch.fromMm <= last.toMm) {
      runs[runs.length - 1] = { fromMm: last.fromMm, toMm: Math.max(last.toMm, stretch.toMm) };
    } else runs.push(stretch);
  }
  return runs;
}

/** How wide a round hole is where a plane goes through it; `null` where it misses or only touches it. */
function chord(hole: { xMm: number; yMm: number; diameterMm: number }, at: number): Stretch | null {
  const half = Math.sqrt(Math.max(0, (hole.diameterMm / 2) ** 2 - (at - hole.xMm) ** 2));
  return half > 0 ? { fromMm: hole.yMm - half, toMm: hole.yMm + half } : null;
}

/** What a plane at a place along the grain goes through. */
function sectionAt({ plan, holes, strip }: WorktopPlan, xMm: number): Section {
  const { diameterMm } = plan.holes;
  const { cables, top } = plan;
  const onTop = cables && cables.yMm > 0 && cables.yMm < top.widthMm && xMm > 0 && xMm < top.lengthMm;
  const passage = onTop ? [{ ...cables, diameterMm: cables.holeDiameterMm }] : [];
  const inlay = plan.strip && top.inlays.find(({ name }) => name === plan.strip?.inlay);
  const cutStrip =
    plan.strip && inlay && strip && crosses(strip.rabbet, xMm) && crosses(inlay, xMm)
      ? {
          rabbet: { ...across(strip.rabbet), depthMm: strip.rabbet.depthMm },
          strip: { ...across(inlay), belowFaceMm: strip.belowFaceMm, thicknessMm: plan.strip.thicknessMm },
          name: inlay.name,
        }
      : null;
  return {
    xMm,
    holes: [...holes.map((hole) => ({ ...hole, diameterMm })), ...passage].flatMap(
      (hole) => chord(hole, xMm) ?? [],
    ),
    members: merged(plan.base.members.filter((member) => crosses(member, xMm)).map(across)),
    strip: cutStrip,
  };
}

/** The plane that shows most: holes, members and the strip; of those, the one nearest the middle. */
export function chooseSection(result: WorktopPlan): Section {
  const { top } = result.plan;
  const middle = top.lengthMm / 2;
  const columns = new Set(result.holes.map(({ xMm }) => xMm));
  const shows = ({ holes, members, strip }: Section) =>
    (holes.length > 0 ? 2 : 0) + members.length + (strip ? 2 : 0);
  const [first = sectionAt(result, middle), ...others] = [...columns].map((xMm) => sectionAt(result, xMm));
  return others.reduce((best, one) => {
    const gain = shows(one) - shows(best);
    const nearer = Math.abs(one.xMm - middle) < Math.abs(best.xMm - middle);
    return gain > 0 || (gain === 0 && nearer) ? one : best;
  }, first);
}
