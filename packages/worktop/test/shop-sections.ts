import {
  type Check,
  type GlueUp,
  type Plan,
  type PlannedStrip,
  planWorktop,
  type Screws,
  type SettledPlan,
  type Shop,
  type Strip,
} from '../src/index.ts';
import { plannedStrip } from '../src/parts/strip.ts';
import type { Obstacle } from '../src/plan/place.ts';
import { basisOf } from '../src/season.ts';
import { plainBench } from './plain-bench.ts';

export const glueUp: GlueUp = {
  boardCount: 5,
  leastWidthMm: 100,
  mostWidthMm: 180,
  planingMm: 4,
  jointingMm: 6,
  flatteningMm: 2.55,
  trimWidthMm: 10,
  trimLengthMm: 40.45,
  order: 'alternate',
  glue: {
    name: 'white glue',
    pressureMPa: 1,
    spreadGPerM2: 200,
    lossPct: 20,
    leastMoisturePct: 6,
    mostMoisturePct: 12,
  },
  clampForceN: 5000,
};

export const screws: Screws = {
  lengthMm: 40,
  stockLengthsMm: [30, 35, 40, 45, 50],
  layersMm: [1.5, 4],
  washerDiameterMm: 30,
  threadShare: 0.65,
  tipLengthMm: 6,
  leastThreadMm: 15,
  leastStockMm: 6,
  leadHoleShare: 0.9,
  leadBitTipLengthMm: 1.5,
  shankBitTipLengthMm: 2,
  stopLengthMm: 12,
};

export const strip: Strip = {
  inlay: 'brass cutting guide',
  thicknessMm: 5,
  rabbetWidthMm: 25.8,
  rabbetDepthMm: 5,
  expansionUmPerMK: 19,
  densityKgPerM3: 8500,
  buildingDayC: 20,
  toleranceMm: 0.1,
  endDistanceMm: 30,
  mostPitchMm: 250,
  fixedScrew: 'first',
  shankDiameterMm: 4,
  headDiameterMm: 8,
  headHeightMm: 2,
  headBelowFaceMm: 0.2,
  screwLengthMm: 20,
  slotClearanceMm: 0.2,
  endClearanceMm: 0.1,
};

export const shop: Shop = {
  air: { temperatureC: 20, relativeHumidityPct: 50 },
  surfaceC: 19,
  allowedAbovePct: 1,
  allowedBelowPct: 2,
  dewPointMarginK: 3,
  leastTemperatureC: 10,
  mostTemperatureC: 30,
  leastHumidityPct: 0,
  mostHumidityPct: 75,
  mostMoisturePct: 12,
};

/** The check of that name, and an error where there is none. */
export function checkOf(plan: Plan, id: string): Check {
  const found = planWorktop(plan).checks.find((check) => check.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
}

/** The plain bench glued up from maple boards, its brass guide let in with screws, finished on a mild day. */
export const builtBench = (): Plan => ({
  ...plainBench,
  ...{ glueUp, screws, strip, shop },
  finish: { ...plainBench.finish, thinner: { name: 'mineral spirits', parts: 1, onHandMl: 500 } },
});

/** The bench with its strip, or the inlay that it is, changed. */
export const letIn = (
  changes: Partial<Strip> = {},
  inlay: Partial<Obstacle> = {},
  plan = builtBench(),
): Plan => ({
  ...plan,
  top: { ...plan.top, inlays: plan.top.inlays.map((one) => ({ ...one, ...inlay })) },
  strip: { ...strip, ...changes },
});

export const stripOf = (plan: Plan): PlannedStrip => {
  const part = plannedStrip(plan as SettledPlan, basisOf(plan));
  if (!part) throw new Error('no strip');
  return part;
};
