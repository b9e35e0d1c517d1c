import { type Citation, plusZero, requireFields, requireInputs, requireThat } from '@scantling/rules';
import {
  ambientConditionsNote,
  dewPointChart,
  furnitureFinishing1959,
  iso85024,
} from '@scantling/rules/sources';
import { magnusExponent } from './magnus.ts';
import { dewPoint } from './rules/dew-point.ts';

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
    /** Moisture content now, % of ovendry mass, 0 to 30. */
    readonly moisturePct: number;
    /** Mean moisture content that it will have in use, % of ovendry mass, 0 to 30. */
    readonly serviceMoisturePct: number;
    /** How far above that it may be, points of moisture content, 0 to 10: the error of a meter, say. */
    readonly allowedAbovePct: number;
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
  /** What would mend it. */
  readonly mend: string;
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
}

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
    moisturePct: moisture,
    serviceMoisturePct: moisture,
    allowedAbovePct: { min: 0, max: 10 },
  },
} as const;

/** The margin of 3 °C, in °F of 5. */
const dewPointRules = (): Citation[] => [
  {
    source: iso85024,
    at: 'surface at least 3 °C above the dew point, unless otherwise agreed',
    confirmed: 'memory',
  },
  { source: ambientConditionsNote, at: 'purpose: at least 3 °C above', confirmed: 'text' },
  { source: dewPointChart, at: 'note: a minimum of 5 °F above', confirmed: 'text' },
];

const woodRule = (): Citation[] => [
  {
    source: furnitureFinishing1959,
    at: 'first paragraph: slightly below, and not much above, the average in use',
    confirmed: 'text',
    tier: 'reprint',
  },
];

const one = (value: number) => `${Number(value.toFixed(1)) + 0}`;

/** A finding where a value lies outside its window. */
function window(
  condition: Condition,
  what: string,
  unit: string,
  value: number,
  [least, most]: readonly [number, number],
): ConditionFinding[] {
  if (value >= least && value <= most) return [];
  const [word, to] = value < least ? ['Raise', least] : ['Lower', most];
  return [
    {
      condition,
      says: `${what} is ${one(value)} ${unit}; the product asks for ${one(least)} to ${one(most)} ${unit}.`,
      mend: `${word} it by ${one(Math.abs(to - value))} ${unit === '°C' ? 'K' : 'points'} to ${one(to)} ${unit}.`,
      citations: [],
    },
  ];
}

/**
 * Whether air, surface and wood are as the finish needs them: the surface warm enough above the dew point, everything
 * inside the window of the product's own sheet, and the wood as dry as it will be in use. Says of each fault, with its
 * figures, what would mend it.
 *
 * @returns The dew point, what is wrong, and what would mend it.
 * @throws RangeError where a figure is outside its limits, or a window is upside down.
 * @example
 * ```ts
 * import { checkConditions } from '@scantling/finishing';
 * const product = { leastTemperatureC: 10, mostTemperatureC: 30, leastHumidityPct: 0, mostHumidityPct: 75, mostMoisturePct: 12 };
 * const wood = { surfaceC: 15, moisturePct: 8, serviceMoisturePct: 8, allowedAbovePct: 1 };
 * const morning = checkConditions({ product, wood, air: { temperatureC: 20, relativeHumidityPct: 65 }, dewPointMarginK: 3 });
 * morning.ready // => false
 * morning.dewPointC // => 13.22
 * morning.warmSurfaceByK // => 1.217
 * morning.findings.map(({ mend }) => mend) // => ['Warm the surface by 1.3 K to 16.3 °C, or dry the air to 60 %.']
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
  const findings = [
    ...(warmSurfaceByK > 0
      ? [dewFinding(wood.surfaceC, dewPointC, dewPointMarginK, warmSurfaceByK, mostHumidityForSurfacePct)]
      : []),
    ...window('air temperature', 'The air', '°C', air.temperatureC, temperatures),
    ...window('surface temperature', 'The surface', '°C', wood.surfaceC, temperatures),
    ...window('humidity', 'The humidity', '%', air.relativeHumidityPct, humidities),
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
  };
}

/** Relative humidity, %, of air whose dew point is the one given; air holds no more than 100 %. */
function dampest(airC: number, dewPointC: number): number {
  return Math.min(100, 100 * Math.exp(magnusExponent(dewPointC) - magnusExponent(airC)));
}

function dewFinding(
  surfaceC: number,
  dewPointC: number,
  marginK: number,
  byK: number,
  humidityPct: number,
): ConditionFinding {
  // What is said is rounded to the safe side.
  const warmer = Math.ceil(byK * 10 - 1e-9) / 10;
  const above = surfaceC - dewPointC;
  const drier = Math.floor(humidityPct);
  const state = above <= 0 ? 'and so wet' : `only ${one(above)} K above it`;
  return {
    condition: 'dew point',
    says: `The surface is ${one(surfaceC)} °C with the dew point at ${one(dewPointC)} °C, ${state}; ${one(marginK)} K are asked for.`,
    mend: `Warm the surface by ${one(warmer)} K to ${one(surfaceC + warmer)} °C${drier < 1 ? '' : `, or dry the air to ${drier} %`}.`,
    citations: dewPointRules(),
  };
}

function woodFindings(
  { moisturePct, serviceMoisturePct, allowedAbovePct }: ConditionsInput['wood'],
  { mostMoisturePct }: ProductWindow,
): ConditionFinding[] {
  const tooWet = (most: number) => `Let the wood dry by ${one(moisturePct - most)} points to ${one(most)} %.`;
  return [
    ...(moisturePct > mostMoisturePct
      ? [
          {
            condition: 'wood for product' as const,
            says: `The wood has ${one(moisturePct)} % moisture; the product allows ${one(mostMoisturePct)} %.`,
            mend: tooWet(mostMoisturePct),
            citations: [],
          },
        ]
      : []),
    ...(moisturePct > serviceMoisturePct + allowedAbovePct
      ? [
          {
            condition: 'wood for use' as const,
            says: `The wood has ${one(moisturePct)} % moisture and will have ${one(serviceMoisturePct)} % in use: it would shrink under the finish.`,
            mend: tooWet(serviceMoisturePct + allowedAbovePct),
            citations: woodRule(),
          },
        ]
      : []),
  ];
}
