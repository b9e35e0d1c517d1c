import { type ConditionFinding, checkConditions } from '@scantling/finishing';
import type { SettledPlan } from '../plan/plan.ts';
import type { SeasonalMovement } from '../result.ts';

/** The shop on the day of finishing, and what is not as the finish needs it. */
export interface PlannedShop {
  /** Midway between the driest and the wettest time of the year, % of ovendry mass. */
  readonly serviceMoisturePct: number;
  readonly dewPointC: number;
  /** How far the surface of the wood is above it, K. */
  readonly aboveDewPointK: number;
  readonly leastSurfaceC: number;
  /** The dampest that the air may be for the surface as it is, %. */
  readonly mostHumidityPct: number;
  readonly findings: readonly Pick<ConditionFinding, 'condition' | 'says' | 'mend'>[];
}

/** Whether air, surface and wood are as the finish needs them on the day. */
export function plannedShop({ top, shop }: SettledPlan, movement: SeasonalMovement): PlannedShop | null {
  if (!shop) return null;
  const { air, surfaceC, allowedAbovePct, allowedBelowPct, dewPointMarginK, ...product } = shop;
  const serviceMoisturePct = (movement.driestMoisturePct + movement.wettestMoisturePct) / 2;
  const { moisturePct } = top;
  const conditions = checkConditions({
    product,
    air,
    wood: { surfaceC, moisturePct, serviceMoisturePct, allowedAbovePct, allowedBelowPct },
    dewPointMarginK,
  });
  const { dewPointC, aboveDewPointK, leastSurfaceC, findings } = conditions;
  return {
    serviceMoisturePct,
    ...{ dewPointC, aboveDewPointK, leastSurfaceC },
    mostHumidityPct: conditions.mostHumidityForSurfacePct,
    findings: findings.map(({ condition, says, mend }) => ({ condition, says, mend })),
  };
}
