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

const member = (name: string, xMm: number, yMm: number, lengthMm: number, widthMm: number) => ({
  ...{ name, xMm, yMm, lengthMm, widthMm },
  clearanceMm: 6,
});

const fixing = (name: string, xMm: number, yMm: number, slotMm: number) => ({ name, xMm, yMm, slotMm });

/** A bindery bench glued up from maple boards, its brass guide let in with screws, finished on a mild day. */
export const builtBench = (): Plan => ({
  version: 2,
  name: 'Bindery bench',
  top: {
    ...{ lengthMm: 1479.55, widthMm: 640, thicknessMm: 44.45 },
    ...{ species: 'Maple, sugar', cut: 'flatsawn', moisturePct: 8 },
    inlays: [
      { name: 'brass cutting guide', xMm: 40, yMm: 28, lengthMm: 1400, widthMm: 25.4, clearanceMm: 12 },
    ],
  },
  glueUp,
  seasons: {
    driest: { temperatureC: 21, relativeHumidityPct: 32 },
    wettest: { temperatureC: 24, relativeHumidityPct: 62 },
  },
  base: {
    members: [
      member('left leg frame', 230, 40, 40, 560),
      member('right leg frame', 1210, 40, 40, 560),
      member('front rail', 230, 95, 1020, 40),
      member('back rail', 230, 505, 1020, 40),
    ],
    ...{ fixedLineMm: 320, shankDiameterMm: 6, slotClearanceMm: 0.5, screwClearanceMm: 10 },
    fixings: [
      fixing('left front', 250, 70, 14),
      fixing('left middle', 250, 320, 7),
      fixing('left back', 250, 570, 14),
      fixing('right front', 1230, 70, 14),
      fixing('right middle', 1230, 320, 7),
      fixing('right back', 1230, 570, 14),
    ],
  },
  screws,
  strip,
  holes: {
    ...{ diameterMm: 15.875, pitchXMm: 112, pitchYMm: 104, first: { xMm: 68, yMm: 160 } },
    ...{ columns: 13, rows: 5, edgeMarginMm: 40, blocked: 'fail' },
  },
  finish: {
    ...{ coats: 3, dryFilmUm: 12, lossPct: 15 },
    product: { name: 'varnish', parts: 1, volumeSolidsPct: 44, onHandMl: 500 },
    thinner: { name: 'mineral spirits', parts: 1, onHandMl: 500 },
  },
  shop,
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
