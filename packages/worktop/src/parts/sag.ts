import type { Citation } from '@scantling/rules';
import type { WoodInBrief } from '@scantling/species';
import { type HoleRow, longTermSag, type TopSag, topSag } from '@scantling/stock';
import type { HeavyThing } from '../plan/load.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { PlannedHole } from '../result.ts';

/** Standard acceleration of free fall, m/s²: exact by definition (CGPM 1901). */
const N_PER_KG = 9.80665;

/** One support of the top, over all that may stand on the top or not. */
export interface PlannedSupport {
  readonly name: string;
  /** Middle of the member, from the left end, mm. */
  readonly xMm: number;
  /** Upwards, N: under what stays, and at the least and the most. Negative where the top has to be held down. */
  readonly lastingReactionN: number;
  readonly leastReactionN: number;
  readonly mostReactionN: number;
  /** The heavy things that stand on the top where the reaction is least. */
  readonly leastWith: readonly string[];
}

/** How far the top sags at its worst. */
export interface SagFigures {
  /** From the left end, mm. */
  readonly atMm: number;
  /** After years under what stays, with the worst of what comes and goes on it, mm. */
  readonly afterYearsMm: number;
  /** The heavy things that stand on it then. */
  readonly under: readonly string[];
  /**
   * At once, under the worst of what comes and goes, wherever that is, mm. More than after years where what stays holds
   * down an end that something heavy bends.
   */
  readonly atOnceMm: number;
  readonly left: PlannedSupport;
  readonly right: PlannedSupport;
}

/** The top as a beam on two members of the base. */
export interface PlannedSag {
  /** Along the grain, at 12 % moisture content, and where it stands; `null` where no table gives it. */
  readonly modulusOfElasticityMPa: number | null;
  readonly citation: Citation | null;
  /** `null` where it can't be computed. */
  readonly sag: SagFigures | null;
  /** Why it can't be; `null` where it is. */
  readonly why: string | null;
  /** Whether that lies in the plan, and not in what is known of the wood. */
  readonly isFault: boolean;
}

/** Columns of holes, and the hole for cables. Holes that touch leave a hair of wood between them. */
function holeRowsOf({ holes, cables }: SettledPlan, planned: readonly PlannedHole[]): HoleRow[] {
  const counts = new Map<number, number>();
  for (const { xMm } of planned) counts.set(xMm, (counts.get(xMm) ?? 0) + 1);
  const row = (atMm: number, diameterMm: number, count: number): HoleRow => ({
    atMm,
    diameterMm: diameterMm * (1 - 1e-9),
    count,
  });
  const rows = [...counts].map(([atMm, count]) => row(atMm, holes.diameterMm, count));
  return cables ? [...rows, row(cables.xMm, cables.holeDiameterMm, 1)] : rows;
}

/** Where holes leave no wood across, from the left end; `null` where they do everywhere. */
function cutThroughMm(rows: readonly HoleRow[], widthMm: number): number | null {
  for (const { atMm, diameterMm } of rows) {
    const inside = atMm - (diameterMm / 2) * (1 - 1e-9);
    const taken = rows
      .filter((row) => Math.abs(row.atMm - inside) < row.diameterMm / 2)
      .reduce((sum, row) => sum + row.count * row.diameterMm, 0);
    if (taken >= widthMm) return inside;
  }
  return null;
}

/**
 * What may stand on the top at once and be worst somewhere: what stands between the supports bends it down there, what
 * stands beyond them bends it up there and its ends down.
 */
function casesOf(things: readonly HeavyThing[], leftMm: number, rightMm: number): (readonly HeavyThing[])[] {
  const left = things.filter(({ xMm }) => xMm < leftMm);
  const right = things.filter(({ xMm }) => xMm > rightMm);
  const between = things.filter((thing) => !left.includes(thing) && !right.includes(thing));
  const cases = [
    [],
    between,
    left,
    right,
    [...left, ...right],
    [...left, ...between],
    [...between, ...right],
  ];
  const key = (some: readonly HeavyThing[]) => things.map((thing) => some.includes(thing)).join();
  return [...new Map(cases.map((some) => [key(some), some])).values()];
}

const namesOf = (things: readonly HeavyThing[]) => things.map(({ name }) => name);

/**
 * How far the top sags on the middles of the two members that carry it, as if no other did. Wood goes on sinking under
 * what stays on it, so what stays counts by as much more; what comes and goes is taken wherever it makes things worse.
 */
export function plannedSag(
  plan: SettledPlan,
  wood: WoodInBrief,
  holes: readonly PlannedHole[],
  woodKg: number | null,
): PlannedSag | null {
  const { load, top, base } = plan;
  if (!load) return null;
  const { value: modulusOfElasticityMPa = null, citation = null } = wood.at12Pct.modulusOfElasticityMPa ?? {};
  const known = { modulusOfElasticityMPa, citation };
  const fault = (why: string): PlannedSag => ({ ...known, sag: null, why, isFault: true });
  const middle = (name: string) => {
    const member = base.members.find((one) => one.name === name);
    return member ? member.xMm + member.lengthMm / 2 : Number.NaN;
  };
  const [leftMm, rightMm] = [middle(load.leftSupport), middle(load.rightSupport)];
  if (!(leftMm >= 0 && rightMm <= top.lengthMm && rightMm - leftMm >= 1)) {
    return fault(
      `load: the middle of leftSupport (${load.leftSupport}) is at x ${leftMm}, that of rightSupport (${load.rightSupport}) at x ${rightMm}; both have to lie under the top, the left one left of the right`,
    );
  }
  const holeRows = holeRowsOf(plan, holes).filter(({ atMm }) => atMm >= 0 && atMm <= top.lengthMm);
  const cutMm = cutThroughMm(holeRows, top.widthMm);
  if (cutMm !== null)
    return fault(`holes: they leave no wood across the top at x ${cutMm.toFixed(1)}; take larger pitches`);
  if (modulusOfElasticityMPa === null || woodKg === null) {
    const unknown = `No table gives stiffness and density of ${top.species}: load a board of it, measure how far it sags, and judge by that.`;
    return { ...known, sag: null, why: unknown, isFault: false };
  }
  const stayingNPerMm = ((load.spreadKg + woodKg) * N_PER_KG) / top.lengthMm;
  const grown = longTermSag({ lastingSagMm: 1, passingSagMm: 0, seasoning: 'seasoned' }).sagMm;
  const sagUnder = (things: readonly HeavyThing[], spreadLoadNPerMm: number) =>
    topSag({
      lengthMm: top.lengthMm,
      leftSupportMm: leftMm,
      rightSupportMm: rightMm,
      widthMm: top.widthMm,
      depthMm: top.thicknessMm,
      modulusOfElasticityMPa,
      shearModulusMPa: modulusOfElasticityMPa / 16,
      spreadLoadNPerMm,
      pointLoads: things.map(({ xMm, massKg }) => ({ atMm: xMm, forceN: massKg * N_PER_KG })),
      holeRows,
    });
  const cases = casesOf(load.heavyThings, leftMm, rightMm).map((things) => ({
    things,
    atOnce: sagUnder(things, stayingNPerMm),
    afterYears: sagUnder(things, grown * stayingNPerMm),
  }));
  const worst = cases.reduce((a, b) => (b.afterYears.lowestSagMm > a.afterYears.lowestSagMm ? b : a));
  const support = (name: string, xMm: number, reaction: (sag: TopSag) => number): PlannedSupport => {
    const reactions = cases.map(({ atOnce }) => reaction(atOnce));
    const least = reactions.indexOf(Math.min(...reactions));
    return {
      name,
      xMm,
      lastingReactionN: reactions[0] as number,
      leastReactionN: reactions[least] as number,
      mostReactionN: Math.max(...reactions),
      leastWith: namesOf(cases[least]?.things ?? []),
    };
  };
  return {
    ...known,
    sag: {
      atMm: worst.afterYears.lowestAtMm,
      afterYearsMm: worst.afterYears.lowestSagMm,
      under: namesOf(worst.things),
      atOnceMm: Math.max(...cases.map(({ atOnce }) => atOnce.lowestSagMm)),
      left: support(load.leftSupport, leftMm, ({ leftReactionN }) => leftReactionN),
      right: support(load.rightSupport, rightMm, ({ rightReactionN }) => rightReactionN),
    },
    why: null,
    isFault: false,
  };
}
