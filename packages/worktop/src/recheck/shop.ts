import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, same } from './finding.ts';

/** Saturation vapour pressure over water, hPa, by another formula of meteorology (Buck 1981), good to 0.1 % indoors. */
const saturationHPa = (c: number) => 6.1121 * Math.exp(((18.678 - c / 234.5) * c) / (257.14 + c));

/** Two formulas agree no better, K and percent of humidity. */
const WITHIN_K = 0.1;
const WITHIN_PCT = 0.5;

/** The temperature at which air of this vapour pressure is saturated, by halving. */
function saturatedAt(vapourHPa: number): number {
  let [low, high] = [-80, 100];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (saturationHPa(middle) < vapourHPa) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Dew point and what follows from it; each condition looked at again. */
export function recheckShop({ plan, shop, movement }: WorktopPlan): Finding[] {
  const asked = plan.shop;
  if (!shop || !asked) return same('shop', shop === null, asked == null);
  const { air, surfaceC, dewPointMarginK } = asked;
  const { moisturePct } = plan.top;
  const vapourHPa = (air.relativeHumidityPct / 100) * saturationHPa(air.temperatureC);
  const dewPointC = saturatedAt(vapourHPa);
  const service = (movement.driestMoisturePct + movement.wettestMoisturePct) / 2;
  const dampestPct = (100 * saturationHPa(surfaceC - dewPointMarginK)) / saturationHPa(air.temperatureC);
  const outside = (value: number, least: number, most: number) => value < least || value > most;
  const wrong = {
    'dew point': shop.aboveDewPointK < dewPointMarginK,
    'air temperature': outside(air.temperatureC, asked.leastTemperatureC, asked.mostTemperatureC),
    'surface temperature': outside(surfaceC, asked.leastTemperatureC, asked.mostTemperatureC),
    humidity: outside(air.relativeHumidityPct, asked.leastHumidityPct, asked.mostHumidityPct),
    'wood for product': moisturePct > asked.mostMoisturePct,
    'wood for use': outside(moisturePct, service - asked.allowedBelowPct, service + asked.allowedAbovePct),
  };
  const found = shop.findings.map(({ condition }) => condition).sort();
  const expected = Object.keys(wrong)
    .filter((condition) => wrong[condition as keyof typeof wrong])
    .sort();
  return [
    ...agree('shop.serviceMoisturePct', shop.serviceMoisturePct, service),
    ...agree('shop.dewPointC', shop.dewPointC, dewPointC, WITHIN_K),
    ...agree('shop.aboveDewPointK', shop.aboveDewPointK, surfaceC - shop.dewPointC),
    ...agree('shop.leastSurfaceC', shop.leastSurfaceC, shop.dewPointC + dewPointMarginK),
    ...agree('shop.mostHumidityPct', shop.mostHumidityPct, Math.min(100, dampestPct), WITHIN_PCT),
    ...same('shop.findings', found.join(), expected.join()),
  ];
}
