import { needed, thereIs } from '../lengths.ts';
import type { Obstacle } from '../plan/place.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Check, Computed } from '../result.ts';
import type { Swing } from '../season.ts';
import { figure, least } from './check.ts';

/** How far the top reaches past a member at its least, over the year; negative where the member shows. */
function overhangMm({ top, base }: SettledPlan, { shrinkPct, swellPct }: Swing) {
  const edge = (yMm: number, changePct: number) =>
    base.fixedLineMm + (yMm - base.fixedLineMm) * (1 + changePct / 100);
  const front = Math.max(edge(0, -shrinkPct), edge(0, swellPct));
  const back = Math.min(edge(top.widthMm, -shrinkPct), edge(top.widthMm, swellPct));
  return ({ xMm, yMm, lengthMm, widthMm }: Obstacle) =>
    Math.min(xMm, top.lengthMm - (xMm + lengthMm), yMm - front, back - (yMm + widthMm));
}

export function checkCover({ plan, swing }: Computed): Check {
  const overhang = overhangMm(plan, swing);
  const proud = plan.base.members.filter((member) => overhang(member) < 0);
  const nearest = least(plan.base.members, overhang);
  const says = proud.length
    ? proud.map(
        (member) => `base.members, ${member.name}: stands ${needed(-overhang(member))} proud of the top`,
      )
    : nearest
      ? [`The least overhang is ${thereIs(overhang(nearest))}, past ${nearest.name}.`]
      : [];
  return {
    id: 'cover',
    title: 'The top covers its base all year',
    status: proud.length ? 'warn' : 'pass',
    says: says.join('\n'),
    figures: nearest ? [figure('least overhang', overhang(nearest), 'mm')] : [],
    ...(nearest && { margin: { given: overhang(nearest), min: 0, unit: 'mm' } }),
    rules: ['movement/width-change'],
  };
}
