import { checkLift, type LiftCheck } from '@scantling/stock';
import type { SettledPlan } from '../plan/plan.ts';
import type { TopMass } from './top-mass.ts';

/** What a base that rises and falls has to lift, and how high the top comes. */
export interface PlannedLift extends LiftCheck {
  /** Whether the wood of the top is among the parts: no table gives the density of some woods. */
  readonly topIsWeighed: boolean;
  /** Capacity that would leave the margin asked for, kg. */
  readonly neededCapacityKg: number;
  /** From the floor to the face of the top, mm. */
  readonly lowestFaceMm: number;
  readonly highestFaceMm: number;
}

/** A top in damp air is heavier by the water that it takes up. */
const wettestKg = (woodKg: number, { top }: SettledPlan, wettestMoisturePct: number) =>
  (woodKg * (100 + Math.max(top.moisturePct, wettestMoisturePct))) / (100 + top.moisturePct);

export function plannedLift(
  plan: SettledPlan,
  { woodKg, stripKg }: TopMass,
  wettestMoisturePct: number,
): PlannedLift | null {
  const { top, base, load } = plan;
  const { lift } = base;
  if (!lift) return null;
  const parts = [
    ...(woodKg === null
      ? []
      : [{ name: 'wood of the top', massKg: wettestKg(woodKg, plan, wettestMoisturePct) }]),
    ...(stripKg > 0 ? [{ name: 'strip', massKg: stripKg }] : []),
    { name: 'frame', massKg: lift.frameMassKg },
    ...(load ? [{ name: 'load spread over the top', massKg: load.spreadKg }, ...load.heavyThings] : []),
  ];
  const check = checkLift({ parts, capacityKg: lift.capacityKg });
  return {
    ...check,
    topIsWeighed: woodKg !== null,
    neededCapacityKg: (100 * check.liftedKg) / (100 - lift.leastMarginPct),
    lowestFaceMm: lift.leastHeightMm + top.thicknessMm,
    highestFaceMm: lift.mostHeightMm + top.thicknessMm,
  };
}
