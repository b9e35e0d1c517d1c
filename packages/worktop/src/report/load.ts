import { millimetres, needed, thereIs } from '../lengths.ts';
import type { WorktopPlan } from '../result.ts';
import { columns, section } from './text.ts';

/** `null` where the plan does not say what the top carries. */
export function loadSection({ sag, plan }: WorktopPlan): string | null {
  if (!sag || !plan.load) return null;
  if (!sag.sag) return section('Load', [sag.why ?? 'How far it sags is not known.']);
  const { atMm, afterYearsMm, atOnceMm, under, left, right } = sag.sag;
  return section('Load', [
    `sags by ${needed(afterYearsMm, 2)} after years, at once by at most ${needed(atOnceMm, 2)}, at x ${millimetres(atMm)}${under.length ? `, under ${under.join(', ')}` : ''}; ${thereIs(plan.load.mostSagMm, 2)} is allowed`,
    ...columns(
      [left, right].map(({ name, leastReactionN, mostReactionN }) => [
        `${name} carries`,
        `${Math.floor(leastReactionN)} N to ${Math.ceil(mostReactionN)} N`,
      ]),
    ),
  ]);
}

/** What has to be lifted, never written lighter than it is. */
const kilograms = (kg: number) => `${(Math.ceil(kg * 10 - 1e-6) / 10).toFixed(1)} kg`;

/** `null` where the base does not rise and fall. */
export function liftSection({ lift, plan: { base } }: WorktopPlan): string | null {
  if (!lift || !base.lift) return null;
  return section('Lift', [
    `${kilograms(lift.liftedKg)} go up, ${lift.usedPct.toFixed(0)} % of ${base.lift.capacityKg} kg${lift.topIsWeighed ? '' : '; the top is not among it, its density is not known'}`,
    `the face stands ${needed(lift.lowestFaceMm)} to ${thereIs(lift.highestFaceMm)} above the floor; ${millimetres(base.lift.lowestWorkMm)} to ${millimetres(base.lift.highestWorkMm)} is wanted`,
    ...columns(lift.heaviestFirst.map(({ name, massKg }) => [name, kilograms(massKg)])),
  ]);
}
