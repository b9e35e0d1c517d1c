import type { SettledPlan } from '../plan/plan.ts';
import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';
import { woodKg, woodOf } from './wood.ts';

const N_PER_KG = 9.80665;

/** What stays counts half as much again after years (National Design Specification, 3.5.2). */
const AFTER_YEARS = 1.5;

/** Stretches that the top is cut into between two places where something changes. */
const STRETCHES = 8;

/** Share that two ways of integrating may differ by. */
const SHARE = 0.002;

interface Beam {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly lengthMm: number;
  /** Where forces stand or the section changes, in order. */
  readonly breaksMm: readonly number[];
  /** Bending and shear stiffness at a place, N mm² and N. */
  readonly stiffnessAt: (xMm: number) => readonly [bendingNmm2: number, shearN: number];
}

interface Force {
  readonly atMm: number;
  readonly forceN: number;
}

/** What bears on the top, downwards. */
interface Loading {
  readonly spreadN: number;
  readonly forces: readonly Force[];
}

/** A load spread over the whole top turns it like a force in its middle. */
function reactions({ leftMm, rightMm, lengthMm }: Beam, { spreadN, forces }: Loading) {
  const all = [...forces, { atMm: lengthMm / 2, forceN: spreadN }];
  const right = all.reduce((sum, { atMm, forceN }) => sum + forceN * (atMm - leftMm), 0) / (rightMm - leftMm);
  return { left: all.reduce((sum, { forceN }) => sum + forceN, 0) - right, right };
}

/** Bending moment and shear at any place, by what lies to its left. */
function innerForces(
  beam: Beam,
  loading: Loading,
): (xMm: number) => readonly [momentNmm: number, shearN: number] {
  const { left, right } = reactions(beam, loading);
  const upwards = [
    { atMm: beam.leftMm, forceN: left },
    { atMm: beam.rightMm, forceN: right },
    ...loading.forces.map(({ atMm, forceN }) => ({ atMm, forceN: -forceN })),
  ];
  return (xMm) => {
    const spreadN = (loading.spreadN * xMm) / beam.lengthMm;
    let moment = (-spreadN * xMm) / 2;
    let shear = -spreadN;
    for (const { atMm, forceN } of upwards) {
      if (atMm >= xMm) continue;
      moment += forceN * (xMm - atMm);
      shear += forceN;
    }
    return [moment, shear];
  };
}

/** Sag at a place, by the work that a load does on a unit force there (Maxwell and Mohr). */
function sagAt(beam: Beam, loading: Loading, atMm: number): number {
  const real = innerForces(beam, loading);
  const virtual = innerForces(beam, { spreadN: 0, forces: [{ atMm, forceN: 1 }] });
  const breaks = [...new Set([...beam.breaksMm, atMm])].sort((a, b) => a - b);
  let sag = 0;
  for (const [i, from] of breaks.slice(0, -1).entries()) {
    const width = ((breaks[i + 1] as number) - from) / STRETCHES;
    for (let j = 0; j < STRETCHES; j++) {
      const x = from + (j + 0.5) * width;
      const [bending, shearing] = beam.stiffnessAt(x);
      const [moment, shear] = real(x);
      const [unitMoment, unitShear] = virtual(x);
      sag += ((moment * unitMoment) / bending + (shear * unitShear) / shearing) * width;
    }
  }
  return sag;
}

function beamOf({ plan, holes }: WorktopPlan, modulusMPa: number, leftMm: number, rightMm: number): Beam {
  const { top, cables, load } = plan;
  const bored = [
    ...holes.map(({ xMm }) => ({ xMm, diameterMm: plan.holes.diameterMm })),
    ...(cables ? [{ xMm: cables.xMm, diameterMm: cables.holeDiameterMm }] : []),
  ].filter(({ xMm }) => xMm >= 0 && xMm <= top.lengthMm);
  const ends = bored.flatMap(({ xMm, diameterMm }) => [xMm - diameterMm / 2, xMm + diameterMm / 2]);
  const places = (load?.heavyThings ?? []).map(({ xMm }) => xMm);
  const breaksMm = [...new Set([0, leftMm, rightMm, top.lengthMm, ...ends, ...places])]
    .filter((x) => x >= 0 && x <= top.lengthMm)
    .sort((a, b) => a - b);
  return {
    ...{ leftMm, rightMm, lengthMm: top.lengthMm, breaksMm },
    stiffnessAt: (x) => {
      const taken = bored.reduce(
        (sum, { xMm, diameterMm }) => sum + (Math.abs(x - xMm) < diameterMm / 2 ? diameterMm : 0),
        0,
      );
      const widthMm = top.widthMm - taken;
      const bending = (modulusMPa * widthMm * top.thicknessMm ** 3) / 12;
      // Shear of a rectangle acts on five sixths of it.
      return [bending, (modulusMPa / 16) * widthMm * top.thicknessMm * (5 / 6)];
    },
  };
}

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
    const each = things.map(({ name, force }) => ({ name, sag: sagAt(beam, force, x) }));
    const worse = each.filter((one) => one.sag > 0);
    return {
      lasting: sagAt(beam, staying, x),
      passing: worse.reduce((sum, one) => sum + one.sag, 0),
      names: worse.map(({ name }) => name),
    };
  };
  const there = worstAt(atMm);
  const within = SHARE * Math.max(0.01, Math.abs(afterYearsMm));
  const elsewhere = Array.from({ length: 11 }, (_, i) => worstAt((i * top.lengthMm) / 10));
  const most = Math.max(...elsewhere.map(({ lasting, passing }) => AFTER_YEARS * lasting + passing));
  const named = things
    .filter(({ name }) => under.includes(name))
    .reduce((sum, { force }) => sum + sagAt(beam, force, atMm), 0);
  // A sag is so flat where it is most that a coarse row of places finds it.
  const atOnce = Array.from({ length: 61 }, (_, i) => worstAt((i * top.lengthMm) / 60));
  const mostAtOnce = Math.max(...atOnce.map(({ lasting, passing }) => lasting + passing));
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
