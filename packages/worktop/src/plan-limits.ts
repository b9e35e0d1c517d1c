import type { Limits } from '@scantling/rules';
import type { Air, Fixing, Liquid, Obstacle, Plan, Point } from './plan.ts';

type NumericKeys<T> = { [K in keyof T]: T[K] extends number ? K : never }[keyof T];
type LimitsOf<T> = { readonly [K in NumericKeys<T>]: Limits };

const side: Limits = { min: 1, max: 10_000 };
const place: Limits = { min: -10_000, max: 10_000 };
const gap: Limits = { min: 0, max: 1000 };

const point: LimitsOf<Point> = { xMm: place, yMm: place };

const liquid: LimitsOf<Liquid> = { parts: { min: 0.01, max: 1000 }, onHandMl: { min: 0, max: 100_000 } };

/** What each figure of a plan may be: outside, it is a slip of the pen or another unit. */
export const planLimits = {
  top: {
    lengthMm: side,
    widthMm: side,
    thicknessMm: { min: 5, max: 300 },
    moisturePct: { min: 0, max: 30 },
  } satisfies LimitsOf<Plan['top']>,
  obstacle: { ...point, lengthMm: side, widthMm: side, clearanceMm: gap } satisfies LimitsOf<Obstacle>,
  air: {
    temperatureC: { min: -10, max: 60 },
    relativeHumidityPct: { min: 0, max: 99 },
  } satisfies LimitsOf<Air>,
  base: {
    fixedLineMm: place,
    shankDiameterMm: { min: 1, max: 20 },
    slotClearanceMm: gap,
    screwClearanceMm: gap,
  } satisfies LimitsOf<Plan['base']>,
  fixing: { ...point, slotMm: { min: 1, max: 200 } } satisfies LimitsOf<Fixing>,
  holes: {
    diameterMm: { min: 1, max: 200 },
    pitchXMm: { min: 1, max: 2000 },
    pitchYMm: { min: 1, max: 2000 },
    columns: { min: 1, max: 500, integer: true },
    rows: { min: 1, max: 500, integer: true },
    edgeMarginMm: gap,
  } satisfies LimitsOf<Plan['holes']>,
  firstHole: point,
  finish: {
    coats: { min: 1, max: 20, integer: true },
    dryFilmUm: { min: 1, max: 500 },
    lossPct: { min: 0, max: 90 },
  } satisfies LimitsOf<Plan['finish']>,
  product: { ...liquid, volumeSolidsPct: { min: 1, max: 100 } } satisfies LimitsOf<Plan['finish']['product']>,
  thinner: liquid,
} as const;

/** The names that a plan chooses from. */
export const planChoices = {
  cut: ['flatsawn', 'quartersawn'],
  blocked: ['fail', 'leave out'],
} as const satisfies { cut: readonly Plan['top']['cut'][]; blocked: readonly Plan['holes']['blocked'][] };

/** How many of each a plan may have. */
export const planCounts = { members: [1, 100], inlays: [0, 20], fixings: [1, 100] } as const;

export const MOST_HOLES = 20_000;
