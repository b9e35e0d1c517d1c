import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';
import { stripKg, woodKg } from './wood.ts';

/** Everything that goes up, weighed piece by piece. */
export function recheckLift(result: WorktopPlan): Finding[] {
  const { plan, lift, movement } = result;
  const asked = plan.base.lift;
  if (!lift || !asked) return same('lift', lift === null, asked == null);
  const { top, load } = plan;
  const dryKg = woodKg(result);
  const wettest = Math.max(top.moisturePct, movement.wettestMoisturePct);
  const wetKg = dryKg === null ? 0 : (dryKg / (1 + top.moisturePct / 100)) * (1 + wettest / 100);
  const loads = [load?.spreadKg ?? 0, ...(load?.heavyThings.map(({ massKg }) => massKg) ?? [])];
  const liftedKg = [wetKg, stripKg(result), asked.frameMassKg, ...loads].reduce((sum, kg) => sum + kg);
  const { heaviestFirst } = lift;
  const listedKg = heaviestFirst.reduce((sum, { massKg }) => sum + massKg, 0);
  const byName = new Map<string, number>([
    ['wood of the top', wetKg],
    ['strip', stripKg(result)],
    ['frame', asked.frameMassKg],
    ['load spread over the top', load?.spreadKg ?? 0],
    ...(load?.heavyThings ?? []).map(({ name, massKg }) => [name, massKg] as const),
  ]);
  return [
    ...agree('lift.liftedKg', lift.liftedKg, liftedKg),
    ...agree('lift.heaviestFirst', listedKg, liftedKg),
    ...heaviestFirst.flatMap(({ name, massKg }, i) => [
      ...agree(`lift.heaviestFirst[${i}].massKg`, massKg, byName.get(name) ?? Number.NaN),
      ...holds(
        `lift.heaviestFirst[${i}]`,
        !(massKg > (heaviestFirst[i - 1]?.massKg ?? massKg)),
        'is heavier than the one before',
      ),
    ]),
    ...agree('lift.marginKg', lift.marginKg, asked.capacityKg - liftedKg),
    ...agree('lift.usedPct', lift.usedPct, (liftedKg / asked.capacityKg) * 100),
    ...same('lift.within', lift.within, liftedKg <= asked.capacityKg),
    ...same('lift.topIsWeighed', lift.topIsWeighed, dryKg !== null),
    ...agree('lift.neededCapacityKg', lift.neededCapacityKg, liftedKg / (1 - asked.leastMarginPct / 100)),
    ...agree('lift.lowestFaceMm', lift.lowestFaceMm, top.thicknessMm + asked.leastHeightMm),
    ...agree('lift.highestFaceMm', lift.highestFaceMm, top.thicknessMm + asked.mostHeightMm),
  ];
}
