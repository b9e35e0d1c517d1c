import { choice, figure, optional, section } from './field.ts';
import { named, share } from './limits.ts';

export interface Air {
  readonly temperatureC: number;
  readonly relativeHumidityPct: number;
}

/** A liquid of the mix: how many parts of it, and how much there is. */
export interface Liquid {
  readonly name: string;
  readonly parts: number;
  readonly onHandMl: number;
}

export interface Finish {
  readonly coats: number;
  /** The finish as it is sold, with its solids by volume, %. */
  readonly product: Liquid & { readonly volumeSolidsPct: number };
  /** Left out where the product is used as it is sold. */
  readonly thinner?: Liquid | undefined;
  /** Dry film that one coat is to leave, µm. */
  readonly dryFilmUm: number;
  /** Share of the mix that stays in rags, pads and jars, %. */
  readonly lossPct: number;
}

/** When coats may be laid: hours of the product's sheet and of the shop. */
export interface Calendar {
  readonly turned: 'once' | 'after each coat';
  readonly layHours: number;
  readonly recoatHours: number;
  readonly recoatWithinHours: number;
  readonly turnHours: number;
  readonly dryingDays: number;
  readonly opensHours: number;
  readonly closesHours: number;
  readonly startsHours: number;
  /** The day by which it has to be ready, counted from 1. */
  readonly readyByDays: number;
}

/** The shop on the day of finishing, and what the product's sheet asks for. */
export interface Shop {
  readonly air: Air;
  /** Temperature of the wood's surface, °C. */
  readonly surfaceC: number;
  /** How far the wood may be above and below its mean moisture in use, points of moisture content. */
  readonly allowedAbovePct: number;
  readonly allowedBelowPct: number;
  /** How far the surface must stay above the dew point, K. */
  readonly dewPointMarginK: number;
  readonly leastTemperatureC: number;
  readonly mostTemperatureC: number;
  readonly leastHumidityPct: number;
  readonly mostHumidityPct: number;
  readonly mostMoisturePct: number;
}

const hours = { min: 0, max: 1000 };
const clock = { min: 0, max: 24 };
const temperature = { min: -10, max: 60 };
const points = { min: 0, max: 10 };

export const airField = section<Air>('Air in the room.', {
  temperatureC: figure('Temperature.', temperature),
  relativeHumidityPct: figure('Relative humidity.', { min: 0, max: 99 }),
});

const liquid = {
  ...named,
  parts: figure('Its parts in the mix.', { min: 0.01, max: 1000 }),
  onHandMl: figure('How much there is.', { min: 0, max: 100_000 }),
};

export const finishField = section<Finish>('The finish.', {
  coats: figure('How many.', { min: 1, max: 20, integer: true }),
  product: section<Finish['product']>('The finish as it is sold.', {
    ...liquid,
    volumeSolidsPct: figure('Solids by volume.', { min: 1, max: 100 }),
  }),
  thinner: optional(section<Liquid>('What it is thinned with.', liquid)),
  dryFilmUm: figure('Dry film that one coat is to leave.', { min: 1, max: 500 }),
  lossPct: figure('Share of the mix that stays in rags and jars.', share),
});

export const calendarField = section<Calendar>('When coats may be laid.', {
  turned: choice('When the panel is turned over.', ['once', 'after each coat']),
  layHours: figure('To lay one coat.', { min: 0.05, max: 24 }),
  recoatHours: figure('From a coat to the next on the same face.', hours),
  recoatWithinHours: figure('Later than this it has to be sanded first.', { min: 0, max: 10_000 }),
  turnHours: figure('Until it can be turned and lie on a coat.', hours),
  dryingDays: figure('From the last coat until it may be used.', { min: 0, max: 365 }),
  opensHours: figure('Hour of the day when work may begin.', clock),
  closesHours: figure('Hour of the day when a coat has to be done.', clock),
  startsHours: figure('Hour of the first day when the first coat may begin.', clock),
  readyByDays: figure('The day by which it has to be ready.', { min: 1, max: 1000, integer: true }),
});

export const shopField = section<Shop>('The shop on the day of finishing.', {
  air: airField,
  surfaceC: figure('Temperature of the wood’s surface.', temperature),
  allowedAbovePct: figure('How far the wood may be above its mean moisture in use.', points),
  allowedBelowPct: figure('How far it may be below.', points),
  dewPointMarginK: figure('How far the surface must stay above the dew point.', { min: 0, max: 20 }),
  leastTemperatureC: figure('Coldest that the product’s sheet allows.', temperature),
  mostTemperatureC: figure('Warmest that the product’s sheet allows.', temperature),
  leastHumidityPct: figure('Driest air that it allows.', { min: 0, max: 100 }),
  mostHumidityPct: figure('Dampest air that it allows.', { min: 0, max: 100 }),
  mostMoisturePct: figure('Wettest wood that it allows.', { min: 1, max: 30 }),
});
