import { choice, figure, figures, open, section, text } from './field.ts';
import { gap } from './limits.ts';
import type { Open } from './place.ts';

/** The screws that hold the top, and the bits for them. */
export interface Screws {
  readonly lengthMm: number | Open;
  /** Lengths that are to be had, mm. */
  readonly stockLengthsMm: readonly number[];
  /** What lies between the head and the wood, mm each: washer, flange. */
  readonly layersMm: readonly number[];
  /** Diameter of the washers, or of the heads where there are none, mm. */
  readonly washerDiameterMm: number;
  /** Share of the length that is threaded, tip included. */
  readonly threadShare: number;
  /** The tapered tip, mm. */
  readonly tipLengthMm: number;
  /** Least thread within the wood, mm. */
  readonly leastThreadMm: number;
  /** Least wood that stays above any tip, of bit or screw, mm. */
  readonly leastStockMm: number;
  /** How much of the thread gets a lead hole, 0 to 1. */
  readonly leadHoleShare: number;
  /** From a bit's tip to its full diameter, mm: of the bit for the thread, and of that for the shank. */
  readonly leadBitTipLengthMm: number;
  readonly shankBitTipLengthMm: number;
  /** Length of the depth stop along the bit, mm. */
  readonly stopLengthMm: number;
}

/** A metal strip that is one of the inlays. */
export interface Strip {
  /** The name of the inlay. */
  readonly inlay: string;
  readonly thicknessMm: number;
  /** Of the rabbet that is cut for it, mm. */
  readonly rabbetWidthMm: number;
  readonly rabbetDepthMm: number;
  /** Thermal expansion of its metal, µm/(m·K). */
  readonly expansionUmPerMK: number;
  readonly densityKgPerM3: number;
  /** Air on building day, °C. */
  readonly buildingDayC: number;
  /** Movement that glue, screws and looks may bear, mm. */
  readonly toleranceMm: number;
  readonly endDistanceMm: number;
  /** Most from screw to screw, mm. */
  readonly mostPitchMm: number;
  /** The screw that holds the strip in place. */
  readonly fixedScrew: 'first' | 'middle' | 'last';
  readonly shankDiameterMm: number;
  readonly headDiameterMm: number;
  readonly headHeightMm: number;
  readonly headBelowFaceMm: number;
  readonly screwLengthMm: number;
  /** Room left at each end of a slot in the strip, and at each end of the strip, mm. */
  readonly slotClearanceMm: number;
  readonly endClearanceMm: number;
}

/** Angle of the cone that a countersunk head is, in degrees. */
export const coneAngleDeg = ({ headDiameterMm, shankDiameterMm, headHeightMm }: Strip): number =>
  (360 / Math.PI) * Math.atan2((headDiameterMm - shankDiameterMm) / 2, headHeightMm);

const screwLength = { min: 1, max: 1000 };
const upTo100 = { min: 0, max: 100 };
const upTo500 = { min: 0, max: 500 };
const small = { min: 0, max: 50 };
const diameter = { min: 0.5, max: 50 };

export const screwsField = section<Screws>('The screws that hold the top.', {
  lengthMm: open(figure('Length of the screws.', screwLength)),
  stockLengthsMm: figures('Lengths that are to be had.', screwLength, 1, 60),
  layersMm: figures('What lies between the head and the wood: washer, flange.', upTo500, 0, 8),
  washerDiameterMm: figure('Of the washers, or the heads where there are none.', { min: 0.5, max: 200 }),
  threadShare: figure('Share of the length that is threaded, tip included.', { min: 0.05, max: 1 }),
  tipLengthMm: figure('The tapered tip.', upTo100),
  leastThreadMm: figure('Least thread within the wood.', upTo500),
  leastStockMm: figure('Least wood above any tip.', upTo500),
  leadHoleShare: figure('How much of the thread gets a lead hole.', { min: 0, max: 1 }),
  leadBitTipLengthMm: figure('Tip of the bit for the thread.', upTo100),
  shankBitTipLengthMm: figure('Tip of the bit for the shank.', upTo100),
  stopLengthMm: figure('Length of the depth stop.', { min: 0, max: 200 }),
});

export const stripField = section<Strip>('A metal strip that is one of the inlays.', {
  inlay: text('The name of the inlay that it is.'),
  thicknessMm: figure('Of the strip.', { min: 0.5, max: 100 }),
  rabbetWidthMm: figure('Of the rabbet cut for it.', { min: 1, max: 1000 }),
  rabbetDepthMm: figure('Of the rabbet cut for it.', { min: 0.5, max: 300 }),
  expansionUmPerMK: figure('Thermal expansion of its metal.', { min: 0, max: 200 }),
  densityKgPerM3: figure('Of its metal.', { min: 500, max: 25_000 }),
  buildingDayC: figure('Air on building day.', { min: -10, max: 60 }),
  toleranceMm: figure('Movement that glue, screws and looks may bear.', small),
  endDistanceMm: figure('From the strip’s ends to the first screw.', gap),
  mostPitchMm: figure('Most from screw to screw.', { min: 1, max: 10_000 }),
  fixedScrew: choice('The screw that holds it in place.', ['first', 'middle', 'last']),
  shankDiameterMm: figure('Of its screws.', diameter),
  headDiameterMm: figure('Of their countersunk heads, to the sharp edge.', diameter),
  headHeightMm: figure('Of their heads.', small),
  headBelowFaceMm: figure('How far the heads lie below the face of the strip.', small),
  screwLengthMm: figure('Of its screws.', screwLength),
  slotClearanceMm: figure('Room left at each end of a slot.', small),
  endClearanceMm: figure('Room left at each end of the strip.', small),
});
