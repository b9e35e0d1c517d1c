import { woods } from '@scantling/species';
import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds } from './finding.ts';

/** The constants of one equation for °C and for °F agree no better, % of moisture content. */
const EITHER_SCALE_PCT = 0.02;

/** Equilibrium moisture content by the constants for °F of the equation that plans use for °C (Wood Handbook, Eq. 4-5). */
function equilibriumPct(temperatureC: number, relativeHumidityPct: number): number {
  const t = 32 + (9 / 5) * temperatureC;
  const h = relativeHumidityPct / 100;
  const w = 330 + 0.452 * t + 0.00415 * t * t;
  const k = 0.791 + 0.000463 * t - 0.000000844 * t * t;
  const k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t;
  const k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t;
  const bound = k1 * k * h + 2 * k1 * k2 * (k * h) ** 2;
  return (1800 / w) * ((k * h) / (1 - k * h) + bound / (1 + bound - k1 * k2 * (k * h) ** 2));
}

/** Moisture over the year, and what it does to the width. */
export function recheckMovement({ plan, movement, swing }: WorktopPlan): Finding[] {
  const { top, seasons } = plan;
  const { species, coefficientPerPct: c, driestMoisturePct: driest, wettestMoisturePct: wettest } = movement;
  const wood = woods.find(({ commonName }) => commonName === species);
  const printed = wood?.movement[top.cut === 'flatsawn' ? 'tangentialPerPct' : 'radialPerPct'];
  const change = (toPct: number) => (toPct - top.moisturePct) * c * top.widthMm;
  const air = ({ temperatureC, relativeHumidityPct }: typeof seasons.driest) =>
    equilibriumPct(temperatureC, relativeHumidityPct);
  return [
    ...holds('movement.species', wood !== undefined, `no table has a wood called "${species}"`),
    ...agree('movement.coefficientPerPct', c, printed?.value ?? Number.NaN, 0),
    ...agree('movement.driestMoisturePct', driest, air(seasons.driest), EITHER_SCALE_PCT),
    ...agree('movement.wettestMoisturePct', wettest, air(seasons.wettest), EITHER_SCALE_PCT),
    ...agree('movement.driestChangeMm', movement.driestChangeMm, change(driest)),
    ...agree('movement.wettestChangeMm', movement.wettestChangeMm, change(wettest)),
    ...agree('swing.shrinkPct', swing.shrinkPct, 100 * c * Math.max(0, top.moisturePct - driest)),
    ...agree('swing.swellPct', swing.swellPct, 100 * c * Math.max(0, wettest - top.moisturePct)),
  ];
}
