import type { Plan } from '../src/index.ts';
import { bench } from './bindery-bench.ts';

const board = (name: string, lengthMm: number, widthMm: number, thicknessMm: number, eachPrice: number) => ({
  ...{ name, lengthMm, widthMm, thicknessMm, eachPrice },
  defects: [],
});

/** The bindery bench with every section filled in. Prices are made up. */
export const wholeBench = (): Plan => {
  const plan = bench();
  return {
    ...plan,
    glueUp: {
      ...{ boardCount: 5, leastWidthMm: 100, mostWidthMm: 180, planingMm: 4, jointingMm: 6, flatteningMm: 2 },
      ...{ trimWidthMm: 10, trimLengthMm: 50, order: 'alternate', clampForceN: 5000 },
      glue: {
        ...{ name: 'PVA glue', pressureMPa: 0.7, spreadGPerM2: 200, lossPct: 10 },
        ...{ leastMoisturePct: 6, mostMoisturePct: 12 },
      },
    },
    screws: {
      ...{ lengthMm: 45, stockLengthsMm: [40, 45, 50, 60], layersMm: [2, 5], washerDiameterMm: 20 },
      ...{ threadShare: 0.6, tipLengthMm: 6, leastThreadMm: 18, leastStockMm: 5, leadHoleShare: 1 },
      ...{ leadBitTipLengthMm: 1.5, shankBitTipLengthMm: 2.5, stopLengthMm: 12 },
    },
    strip: {
      ...{ inlay: 'brass cutting guide', thicknessMm: 6, rabbetWidthMm: 26.4, rabbetDepthMm: 6.2 },
      ...{ expansionUmPerMK: 19, densityKgPerM3: 8500, buildingDayC: 20, toleranceMm: 0.5 },
      ...{ endDistanceMm: 40, mostPitchMm: 250, fixedScrew: 'middle', shankDiameterMm: 4 },
      ...{ headDiameterMm: 8, headHeightMm: 2.3, headBelowFaceMm: 0.3, screwLengthMm: 25 },
      ...{ slotClearanceMm: 0.3, endClearanceMm: 0.5 },
    },
    template: {
      ...{ columns: 5, rows: 3, leastPinSpanMm: 200, playInTemplateMm: 0.05, playInHoleMm: 0.1 },
      ...{ datumErrorMm: 0.1, boringErrorMm: 0.1, templatePitchErrorMm: 0.02 },
    },
    accessories: [
      {
        ...{ name: 'sewing frame', leastPinMm: 15.7, mostPinMm: 15.75, leastHoleMm: 16.6, mostHoleMm: 16.7 },
        pins: [
          { xMm: 0, yMm: 0 },
          { xMm: 448, yMm: 0 },
        ],
        ...{ pinPositionErrorMm: 0.05, holePositionErrorMm: 0.2 },
      },
    ],
    base: {
      ...plan.base,
      lift: {
        ...{ leastHeightMm: 700, mostHeightMm: 1100, lowestWorkMm: 760, highestWorkMm: 1050 },
        ...{ capacityKg: 150, frameMassKg: 18, leastMarginPct: 20 },
      },
    },
    load: {
      ...{ leftSupport: 'left leg frame', rightSupport: 'right leg frame', spreadKg: 20, mostSagMm: 1.5 },
      heavyThings: [{ name: 'standing press', xMm: 740, massKg: 30 }],
    },
    calendar: {
      ...{ turned: 'after each coat', layHours: 1, recoatHours: 12, recoatWithinHours: 72, turnHours: 8 },
      ...{ dryingDays: 5, opensHours: 8, closesHours: 18, startsHours: 8, readyByDays: 14 },
    },
    shop: {
      ...{ air: { temperatureC: 20, relativeHumidityPct: 50 }, surfaceC: 19, dewPointMarginK: 3 },
      ...{ allowedAbovePct: 2, allowedBelowPct: 2, leastTemperatureC: 15, mostTemperatureC: 30 },
      ...{ leastHumidityPct: 30, mostHumidityPct: 70, mostMoisturePct: 12 },
    },
    drilling: {
      ...{ safeHeightMm: 25, retractPlaneMm: 3, betweenHolesAt: 'safe height', belowUndersideMm: 3 },
      ...{ peckMm: 15, feedMmPerMin: 300, speedRpm: 1500, spindleStartMs: 3000 },
    },
    finish: { ...plan.finish, product: { ...plan.finish.product, onHandMl: 40 } },
    stock: {
      boards: [
        board('A', 3200, 170, 52, 78),
        board('B', 3300, 150, 54, 66),
        board('C', 1700, 160, 51, 41),
        board('D', 1600, 150, 45, 30),
        {
          ...board('E', 3300, 145, 52, 55),
          defects: [{ xMm: 300, yMm: 40, lengthMm: 80, widthMm: 40 }],
        },
      ],
      ...{ boardKerfMm: 3, boardEndTrimMm: 20, boardEdgeTrimMm: 2 },
      bars: {
        ...{ kerfMm: 2, endTrimMm: 5, longestCarriedMm: 3000 },
        parts: [
          { name: 'leg', section: 'tube 40 × 40 × 3', lengthMm: 640, count: 4 },
          { name: 'rail', section: 'tube 40 × 40 × 3', lengthMm: 1020, count: 2 },
          { name: 'foot', section: 'tube 40 × 40 × 3', lengthMm: 560, count: 4 },
          { name: 'brass cutting guide', section: 'brass 25 × 6', lengthMm: 1400, count: 1 },
        ],
        bars: [
          { name: 'tube of 6 m', section: 'tube 40 × 40 × 3', lengthMm: 6000, eachPrice: 48 },
          { name: 'tube of 3 m', section: 'tube 40 × 40 × 3', lengthMm: 3000, eachPrice: 27.5 },
          { name: 'brass of 2 m', section: 'brass 25 × 6', lengthMm: 2000, eachPrice: 39 },
        ],
      },
      containers: [
        { liquid: 'varnish', volumeMl: 250, eachPrice: 11.5 },
        { liquid: 'varnish', volumeMl: 1000, eachPrice: 29 },
        { liquid: 'mineral spirits', volumeMl: 1000, eachPrice: 8 },
      ],
    },
  };
};

export type Stock = NonNullable<Plan['stock']>;

/** The same with something else on offer. */
export const withStock = (changes: Partial<Stock>): Plan => {
  const plan = wholeBench();
  return { ...plan, stock: { ...(plan.stock as Stock), ...changes } };
};
