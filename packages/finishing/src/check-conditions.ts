import { type Citation, plusZero, requireFields, requireInputs, requireThat } from '@scantling/rules';
import {
  ambientConditionsNote,
  dewPointChart,
  furnitureFinishing1959,
  iso85024,
} from '@scantling/rules/sources';
import { productSheet, warmSafely } from './cautions.ts';
import { magnusExponent } from './magnus.ts';
import { dewPoint } from './rules/dew-point.ts';
import { one, safeSide, toldApart } from './told-figures.ts';

/** What a product's data sheet asks for. */
export interface ProductWindow {
  /** Air and surface, °C, −20 to 60. */
  readonly leastTemperatureC: number;
  readonly mostTemperatureC: number;
  /** Relative humidity of the air, %, 0 to 100. */
  readonly leastHumidityPct: number;
  readonly mostHumidityPct: number;
  /** Moisture content that the wood may have, % of ovendry mass, 1 to 30. */
  readonly mostMoisturePct: number;
}

export interface ConditionsInput {
  readonly product: ProductWindow;
  /** The air where the work stands. */
  readonly air: {
    /** °C, −20 to 60. */
    readonly temperatureC: number;
    /** %, 1 to 100. */
    readonly relativeHumidityPct: number;
  };
  readonly wood: {
    /** Temperature of its surface, °C, −20 to 60. */
    readonly surfaceC: number;
    /** Moisture content now, % of ovendry mass, 0 to 200. */
    readonly moisturePct: number;
    /** Mean moisture content that it will have in use, % of ovendry mass, 0 to 30. */
    readonly serviceMoisturePct: number;
    /** How far above that it may be, points of moisture content, 0 to 10: the error of a meter, say. */
    readonly allowedAbovePct: number;
    /** How far below that it may be, points of moisture content, 0 to 10: wood that is too dry swells. */
    readonly allowedBelowPct: number;
  };
  /** How far the surface must stay above the dew point, K, 0 to 20; 3 K is the usual rule. */
  readonly dewPointMarginK: number;
}

/** What a finding is about. */
export type Condition =
  | 'dew point'
  | 'air temperature'
  | 'surface temperature'
  | 'humidity'
  | 'wood for product'
  | 'wood for use';

/** Something that is not as it ought to be, with its figures. */
export interface ConditionFinding {
  readonly condition: Condition;
  /** What is wrong, with the figures. */
  readonly says: string;
  /**
   * What would mend it with all else as it is, rounded to the safe side; `null` where nothing does inside the product’s
   * window.
   */
  readonly mend: string | null;
  /** The published rule behind it; none where the product's own sheet sets the limit. */
  readonly citations: readonly Citation[];
}

export interface ConditionsCheck {
  readonly ready: boolean;
  /** Dew point of the air, °C. */
  readonly dewPointC: number;
  /** How far the surface is above it, K; negative where it is below and wet. */
  readonly aboveDewPointK: number;
  /** The coldest that the surface may be for the margin asked for, °C. */
  readonly leastSurfaceC: number;
  /** How much warmer the surface must get for that, K; 0 where it is warm enough. */
  readonly warmSurfaceByK: number;
  /** The dampest that the air may be for the surface as it is, %; at most 100. */
  readonly mostHumidityForSurfacePct: number;
  readonly findings: readonly ConditionFinding[];
  readonly cautions: readonly string[];
}

/** Least and most. */
type Span = readonly [number, number];

const temperature = { min: -20, max: 60 };
const percent = { min: 0, max: 100 };
const moisture = { min: 0, max: 30 };
const limits = {
  dewPointMarginK: { min: 0, max: 20 },
  product: {
    leastTemperatureC: temperature,
    mostTemperatureC: temperature,
    leastHumidityPct: percent,
    mostHumidityPct: percent,
    mostMoisturePct: { min: 1, max: 30 },
  },
  air: { temperatureC: temperature, relativeHumidityPct: { min: 1, max: 100 } },
  wood: {
    surfaceC: temperature,
    moisturePct: { min: 0, max: 200 },
    serviceMoisturePct: moisture,
    allowedAbovePct: { min: 0, max: 10 },
    allowedBelowPct: { min: 0, max: 10 },
  },
} as const;

/** The margin of 3 °C, in °F of 5. */
const dewPointRules = (): Citation[] => [
  {
    source: iso85024,
    at: 'surface at least 3 °C above the dew point, unless otherwise agreed',
    confirmed: 'memory',
  },
  { source: ambientConditionsNote, at: 'purpose: at least 3 °C above', confirmed: 'text', tier: 'reprint' },
  { source: dewPointChart, at: 'note: a minimum of 5 °F above', confirmed: 'text', tier: 'reprint' },
];

const woodRule = (): Citation[] => [
  {
    source: furnitureFinishing1959,
    at: 'first paragraph: slightly below, and not much above, the average in use',
    confirmed: 'text',
    tier: 'reprint',
  },
];

/** A finding where a value lies outside its window; the mend leads into a part of it where nothing else is amiss. */
function window(
  condition: Condition,
  what: string,
  unit: string,
  value: number,
  [least, most]: Span,
  part: Span,
): ConditionFinding[] {
  if (value >= least && value <= most) return [];
  const low = value < least;
  const [is, limit] = toldApart(value, low ? least : most);
  const asked = low ? `${limit} to ${one(most)}` : `${one(least)} to ${limit}`;
  const to = low ? safeSide(part[0], 'least', part, 1) : safeSide(part[1], 'most', part, 1);
  return [
    {
      condition,
      says: `${what} is ${is} ${unit}; the product asks for ${asked} ${unit}.`,
      mend: to === null ? null : `${low ? 'Raise' : 'Lower'} it to ${to} ${unit}.`,
      citations: [],
    },
  ];
}

/**
 * Whether air, surface and wood are as the finish needs them: the surface warm enough above the dew point, everything
 * inside the window of the product's own sheet, and the wood about as dry as it will be in use. Says of each fault, with
 * its figures, what would mend it. Each mend is reckoned with all else as it is: warmer air, say, is drier as well, so
 * measure again after it.
 *
 * @returns The dew point, what is wrong, and what would mend it.
 * @throws RangeError where a figure is outside its limits, or a window is upside down.
 * @example
 * ```ts
 * import { checkConditions } from '@scantling/finishing';
 * const product = { leastTemperatureC: 10, mostTemperatureC: 30, leastHumidityPct: 0, mostHumidityPct: 75, mostMoisturePct: 12 };
 * const wood = { surfaceC: 15, moisturePct: 8, serviceMoisturePct: 8, allowedAbovePct: 1, allowedBelowPct: 2 };
 * const morning = checkConditions({ product, wood, air: { temperatureC: 20, relativeHumidityPct: 65 }, dewPointMarginK: 3 });
 * morning.ready // => false
 * morning.dewPointC // => 13.22
 * morning.warmSurfaceByK // => 1.217
 * morning.findings.map(({ mend }) => mend) // => ['Warm the surface to 16.3 °C, or dry the air to 60 %.']
 * ```
 */
export function checkConditions(input: ConditionsInput): ConditionsCheck {
  const caller = 'checkConditions';
  const { product, air, wood, dewPointMarginK } = input ?? {};
  requireInputs(caller, { dewPointMarginK }, { dewPointMarginK: limits.dewPointMarginK });
  requireFields(caller, 'product', product, limits.product);
  requireFields(caller, 'air', air, limits.air);
  requireFields(caller, 'wood', wood, limits.wood);
  const temperatures = [product.leastTemperatureC, product.mostTemperatureC] as const;
  const humidities = [product.leastHumidityPct, product.mostHumidityPct] as const;
  for (const [name, [least, most]] of Object.entries({
    TemperatureC: temperatures,
    HumidityPct: humidities,
  })) {
    requireThat(
      caller,
      least <= most,
      `product.most${name} of at least product.least${name}, got ${most} and ${least}`,
    );
  }
  const { dewPointC } = dewPoint(air);
  const leastSurfaceC = dewPointC + dewPointMarginK;
  const warmSurfaceByK = Math.max(0, leastSurfaceC - wood.surfaceC);
  const mostHumidityForSurfacePct = dampest(air.temperatureC, wood.surfaceC - dewPointMarginK);
  const warmEnough: Span = [Math.max(product.leastTemperatureC, leastSurfaceC), product.mostTemperatureC];
  const dryEnough: Span = [
    Math.max(product.leastHumidityPct, limits.air.relativeHumidityPct.min),
    Math.min(product.mostHumidityPct, mostHumidityForSurfacePct),
  ];
  const findings = [
    ...(warmSurfaceByK > 0
      ? [
          {
            condition: 'dew point' as const,
            says: tooNear(wood.surfaceC, dewPointC, dewPointMarginK),
            mend: dewMend(warmEnough, dryEnough),
            citations: dewPointRules(),
          },
        ]
      : []),
    ...window('air temperature', 'The air', '°C', air.temperatureC, temperatures, temperatures),
    ...window('surface temperature', 'The surface', '°C', wood.surfaceC, temperatures, warmEnough),
    ...window('humidity', 'The humidity', '%', air.relativeHumidityPct, humidities, dryEnough),
    ...woodFindings(wood, product),
  ];
  return {
    ready: findings.length === 0,
    dewPointC,
    aboveDewPointK: plusZero(wood.surfaceC - dewPointC),
    leastSurfaceC: plusZero(leastSurfaceC),
    warmSurfaceByK,
    mostHumidityForSurfacePct,
    findings,
    cautions: [warmSafely, productSheet],
  };
}

/** Relative humidity, %, of air whose dew point is the one given; air holds no more than 100 %. */
function dampest(airC: number, dewPointC: number): number {
  return Math.min(100, 100 * Math.exp(magnusExponent(dewPointC) - magnusExponent(airC)));
}

function tooNear(surfaceC: number, dewPointC: number, marginK: number): string {
  const [above, asked] = toldApart(surfaceC - dewPointC, marginK);
  const state = surfaceC <= dewPointC ? 'and so wet' : `only ${above} K above it`;
  return `The surface is ${one(surfaceC)} °C with the dew point at ${one(dewPointC)} °C, ${state}; ${asked} K are asked for.`;
}

/** A warmer surface or drier air, as far as the product’s window allows either. */
function dewMend(warmEnough: Span, dryEnough: Span): string | null {
  const warm = safeSide(warmEnough[0], 'least', warmEnough, 1);
  const dry = safeSide(dryEnough[1], 'most', dryEnough, 0);
  const ways = [warm !== null && `warm the surface to ${warm} °C`, dry !== null && `dry the air to ${dry} %`];
  const mend = ways.filter(Boolean).join(', or ');
  return mend === '' ? null : `${mend[0]?.toUpperCase()}${mend.slice(1)}.`;
}

function woodFindings(wood: ConditionsInput['wood'], { mostMoisturePct }: ProductWindow): ConditionFinding[] {
  const { moisturePct, serviceMoisturePct } = wood;
  const least = Math.max(0, serviceMoisturePct - wood.allowedBelowPct);
  const mostInUse = serviceMoisturePct + wood.allowedAbovePct;
  // One figure mends both: fit for the product, and for use.
  const span: Span = [least, Math.min(mostMoisturePct, mostInUse)];
  const mend = (side: 'least' | 'most') => {
    const to = safeSide(side === 'least' ? span[0] : span[1], side, span, 1);
    if (to === null) return null;
    return side === 'least' ? `Let the wood take up moisture to ${to} %.` : `Let the wood dry to ${to} %.`;
  };
  const findings: ConditionFinding[] = [];
  if (moisturePct > mostMoisturePct) {
    const [is, most] = toldApart(moisturePct, mostMoisturePct);
    findings.push({
      condition: 'wood for product',
      says: `The wood has ${is} % moisture; the product allows ${most} %.`,
      mend: mend('most'),
      citations: [],
    });
  }
  const wet = moisturePct > mostInUse;
  if (wet || moisturePct < least) {
    const [is, limit] = toldApart(moisturePct, wet ? mostInUse : least);
    findings.push({
      condition: 'wood for use',
      says: `The wood has ${is} % moisture and will have ${one(serviceMoisturePct)} % in use, which allows ${wet ? 'at most' : 'at least'} ${limit} %: it would ${wet ? 'shrink' : 'swell'} under the finish.`,
      mend: mend(wet ? 'most' : 'least'),
      citations: woodRule(),
    });
  }
  return findings;
}
