import type { SettledPlan } from '../plan/plan.ts';
import type { WorktopPlan } from '../result.ts';
import { beamOf, type Loading, PLACES, reactions, sagAt } from './beam.ts';
import { agree, type Finding, holds, same } from './finding.ts';
import { woodKg, woodOf } from './wood.ts';

const N_PER_KG = 9.80665;

/** What stays counts half as much again after years (National Design Specification, 3.5.2). */
const AFTER_YEARS = 1.5;

/** Share that two ways of integrating may differ by. */
const SHARE = 0.002;

const middleOf = ({ base }: SettledPlan, name: string) => {
  const member = base.members.find((one) => one.name === name);
  return member ? member.xMm + member.lengthMm / 2 : Number.NaN;
};

/** The top as a beam: sag by the work of a unit force, and the worst of all that may stand on it or not. */
export function recheckSag(result: WorktopPlan): Finding[] {
  const { plan, sag } = result;
  const { load, top } = plan;
  if (!sag || !load) return same('sag', sag === null, load == null);
  const modulus = woodOf(result)?.at12Pct.modulusOfElasticityMPa?.value ?? null;
  const kg = woodKg(result);
  const known = same('sag.modulusOfElasticityMPa', sag.modulusOfElasticityMPa, modulus);
  const [leftMm, rightMm] = [middleOf(plan, load.leftSupport), middleOf(plan, load.rightSupport)];
  if (!sag.sag || modulus === null || kg === null) {
    const unknown = modulus === null || kg === null;
    return [
      ...known,
      ...holds('sag.sag', !sag.sag && (unknown || sag.isFault), 'could be computed, or could not'),
    ];
  }
  const beam = beamOf(result, modulus, leftMm, rightMm);
  const staying: Loading = { spreadN: (load.spreadKg + kg) * N_PER_KG, forces: [] };
  const things = load.heavyThings.map(({ name, xMm, massKg }) => ({
    name,
    force: { spreadN: 0, forces: [{ atMm: xMm, forceN: massKg * N_PER_KG }] },
  }));
  const { atMm, afterYearsMm, atOnceMm, under, left, right } = sag.sag;
  /** Under what stays, and what of the rest makes it worse there. */
  const worstAt = (x: number) => {
    const passing = things.reduce((sum, { force }) => sum + Math.max(0, sagAt(beam, force, x)), 0);
    return { lasting: sagAt(beam, staying, x), passing };
  };
  const there = worstAt(atMm);
  const within = SHARE * Math.max(0.01, Math.abs(afterYearsMm));
  // A sag is so flat where it is most that a row of places finds it.
  const along = Array.from({ length: PLACES + 1 }, (_, i) => worstAt((i * top.lengthMm) / PLACES));
  const most = Math.max(...along.map(({ lasting, passing }) => AFTER_YEARS * lasting + passing));
  const mostAtOnce = Math.max(...along.map(({ lasting, passing }) => lasting + passing));
  const named = things
    .filter(({ name }) => under.includes(name))
    .reduce((sum, { force }) => sum + sagAt(beam, force, atMm), 0);
  const supports = [left, right].flatMap((support, i) => {
    const path = `sag.sag.${i === 0 ? 'left' : 'right'}`;
    const side = i === 0 ? 'left' : 'right';
    const of = (loading: Loading) => reactions(beam, loading)[side];
    const lasting = of(staying);
    const each = things.map(({ force }) => of(force));
    const sum = (some: readonly number[]) => some.reduce((total, one) => total + one, 0);
    const leastN = lasting + sum(each.filter((one) => one < 0));
    const withN =
      lasting + sum(each.filter((_, j) => support.leastWith.includes((things[j] as { name: string }).name)));
    return [
      ...same(`${path}.name`, support.name, i === 0 ? load.leftSupport : load.rightSupport),
      ...agree(`${path}.xMm`, support.xMm, i === 0 ? leftMm : rightMm),
      ...agree(`${path}.lastingReactionN`, support.lastingReactionN, lasting),
      ...agree(`${path}.leastReactionN`, support.leastReactionN, leastN),
      ...agree(`${path}.leastWith`, withN, leastN),
      ...holds(
        `${path}.leastWith`,
        support.leastWith.every((name) => things.some((thing) => thing.name === name)),
        'names what is not on the top',
      ),
      ...agree(`${path}.mostReactionN`, support.mostReactionN, lasting + sum(each.filter((one) => one > 0))),
    ];
  });
  return [
    ...known,
    ...same('sag.isFault', sag.isFault, false),
    ...same('sag.why', sag.why, null),
    ...agree('sag.sag.afterYearsMm', afterYearsMm, AFTER_YEARS * there.lasting + there.passing, within),
    ...holds('sag.sag.atMm', most <= afterYearsMm + within, `it sags by ${most} mm elsewhere`),
    ...agree('sag.sag.under', named, there.passing, within),
    ...holds(
      'sag.sag.under',
      under.every((name) => things.some((thing) => thing.name === name)),
      'names what is not on the top',
    ),
    ...agree('sag.sag.atOnceMm', atOnceMm, mostAtOnce, 2 * within),
    ...supports,
  ];
}
