import { layoutHoles } from '@scantling/grids';
import { least } from '../checks/check.ts';
import type { CableKind } from '../plan/load.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { PlannedHole } from '../result.ts';
import { bundleDiameter } from '../rules/bundle-diameter.ts';
import { cableHole } from '../rules/cable-hole.ts';
import { cableLength } from '../rules/cable-length.ts';
import { holeFill } from '../rules/hole-fill.ts';
import type { Swing } from '../season.ts';
import { keepOutsOf } from './holes.ts';

/** The hole for cables, what goes through it, and how long the cables have to be. */
export interface PlannedCables {
  readonly cableCount: number;
  /** Share of the hole that they take up, %. */
  readonly fillPct: number;
  /** Smallest hole that up to 20 cables, all alike, fit in side by side, mm; `null` of any others. */
  readonly bundleDiameterMm: number | null;
  /** Least diameter that the hole needs, mm. */
  readonly neededHoleMm: number;
  /** Least distance from its rim to anything it must miss, over the whole year, mm; `null` where it is not on the top. */
  readonly clearanceMm: number | null;
  readonly nearest: string;
  /** Why it can't be there; `null` where it can. */
  readonly why: string | null;
  /** From the hole to where the cables are held, with the base raised, mm. */
  readonly farthestMm: number;
  readonly neededLengthMm: number;
}

const MOST_PACKED = 20;

/** Of cables that are all alike, as closely as they are known to go. */
function bundleOf(bundle: readonly CableKind[], cableCount: number): number | null {
  const [{ diameterMm: cableDiameterMm }] = bundle as readonly [CableKind];
  const alike = bundle.every(({ diameterMm }) => diameterMm === cableDiameterMm);
  return alike && cableCount <= MOST_PACKED
    ? bundleDiameter({ cableDiameterMm, cableCount }).bundleDiameterMm
    : null;
}

/** The hole as a grid of one, so that it misses what holes have to miss; and the holes themselves. */
function siteOf(plan: SettledPlan, swing: Swing, holes: readonly PlannedHole[]) {
  const { top, base, holes: grid } = plan;
  const { xMm, yMm, holeDiameterMm } = plan.cables as NonNullable<SettledPlan['cables']>;
  if (!(xMm >= 0 && xMm <= top.lengthMm && yMm >= 0 && yMm <= top.widthMm)) {
    return { clearanceMm: null, nearest: '', why: 'is not on the top' };
  }
  const { holes: kept, dropped } = layoutHoles({
    panel: { lengthMm: top.lengthMm, widthMm: top.widthMm },
    firstHole: { xMm, yMm },
    holeDiameterMm,
    pitchXMm: holeDiameterMm,
    pitchYMm: holeDiameterMm,
    columns: 1,
    rows: 1,
    edgeMarginMm: grid.edgeMarginMm,
    keepOuts: keepOutsOf(plan),
    movement: { fixedLineYMm: base.fixedLineMm, ...swing },
  });
  const [blocked] = dropped;
  const site = (blocked ?? kept[0]) as PlannedHole;
  const toHole = (hole: PlannedHole) =>
    Math.hypot(hole.xMm - xMm, hole.yMm - yMm) - (grid.diameterMm + holeDiameterMm) / 2;
  const beside = least(holes, toHole);
  const besideMm = beside ? toHole(beside) : Number.POSITIVE_INFINITY;
  const name = `the hole in row ${beside?.row}, column ${beside?.column}`;
  const runsInto = besideMm > 0 ? null : `runs into ${name}`;
  return {
    clearanceMm: Math.min(site.clearanceMm, besideMm),
    nearest: besideMm < site.clearanceMm ? name : site.nearest,
    why: blocked?.why ?? runsInto,
  };
}

export function plannedCables(
  plan: SettledPlan,
  swing: Swing,
  holes: readonly PlannedHole[],
): PlannedCables | null {
  const { cables, base } = plan;
  if (!cables) return null;
  const { bundle, holeDiameterMm, mostFillPct, heldBelowMm, slackPct } = cables;
  const cableDiametersMm = bundle.flatMap(({ diameterMm, count }) => Array<number>(count).fill(diameterMm));
  const cableCount = cableDiametersMm.length;
  const bundleDiameterMm = bundleOf(bundle, cableCount);
  const byShareMm = cableHole({ cableDiametersMm, mostFillPct }).holeDiameterMm;
  const riseMm = base.lift ? base.lift.mostHeightMm - base.lift.leastHeightMm : 0;
  // Held right below the hole, they need the most.
  const length = cableLength({ heldBelowMm, asideMm: 0, riseMm, slackPct });
  return {
    cableCount,
    fillPct: holeFill({ holeDiameterMm, cableDiametersMm }).fillPct,
    bundleDiameterMm,
    neededHoleMm: Math.max(byShareMm, bundleDiameterMm ?? 0),
    ...siteOf(plan, swing, holes),
    farthestMm: length.farthestMm,
    neededLengthMm: length.lengthMm,
  };
}
