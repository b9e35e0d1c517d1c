import { requireChoice, requireFields, requireInputs, requireThat } from '@scantling/rules';
import {
  boardFoot,
  convert,
  cubicMetre,
  cubicMillimetre,
  foot,
  kilogram,
  millimetre,
  pound,
  squareFoot,
  squareMillimetre,
} from '@scantling/units';
import { requireName } from './require-name.ts';

/** What a price is for. Area is that of the wide face. */
export type PricedBy = 'm' | 'ft' | 'm²' | 'ft²' | 'm³' | 'bd ft' | 'kg' | 'lb' | 'stick';

/** One way to buy a stick or board of the same section. */
export interface PriceOffer {
  readonly name: string;
  readonly pricedBy: PricedBy;
  /** For one of that unit, in any one currency, 0.000001 to 1 000 000. */
  readonly unitPrice: number;
  /** Of the sticks that it comes in, mm, 1 to 30 000. */
  readonly stickLengthMm: number;
}

export interface ComparePricesInput {
  /** Of the section as it is sold, mm, 0.1 to 1000. */
  readonly thicknessMm: number;
  /** Of the section as it is sold, mm, 0.1 to 5000. */
  readonly widthMm: number;
  /** kg/m³, 1 to 25 000. */
  readonly densityKgPerM3: number;
  /** 1 to 50. */
  readonly offers: readonly PriceOffer[];
}

/** An offer in every unit. */
export interface ComparedOffer {
  readonly name: string;
  /** For a metre of length. */
  readonly perMetrePrice: number;
  /** For a foot of length. */
  readonly perFootPrice: number;
  /** For a square metre of the wide face. */
  readonly perSquareMetrePrice: number;
  /** For a cubic metre. */
  readonly perCubicMetrePrice: number;
  /** For a board foot, by volume. */
  readonly perBoardFootPrice: number;
  /** For a kilogram. */
  readonly perKilogramPrice: number;
  /** For a whole stick. */
  readonly perStickPrice: number;
  /** How much dearer than the cheapest, %. */
  readonly dearerPct: number;
}

/**
 * Prices for one section of wood or metal in every unit, the cheapest first, whatever each seller counts by.
 *
 * @throws RangeError where an input is outside its limits, an offer has no name, or a unit is none of those named.
 * Source: exact factors of `@scantling/units`. Board feet are by volume: `boardFeet` counts thin boards as an inch.
 * @example
 * ```ts
 * import { comparePrices } from '@scantling/stock';
 * // Flat steel 50 × 6 mm: by the kilogram, and by sticks of 6 m
 * const [cheapest, other] = comparePrices({ thicknessMm: 6, widthMm: 50, densityKgPerM3: 7850, offers: [
 *   { name: 'cut to length', pricedBy: 'kg', unitPrice: 2.4, stickLengthMm: 1000 },
 *   { name: 'whole sticks', pricedBy: 'stick', unitPrice: 27, stickLengthMm: 6000 },
 * ] });
 * [cheapest.name, cheapest.perMetrePrice, other.perMetrePrice] // => ['whole sticks', 4.5, 5.652]
 * other.dearerPct // => 25.6
 * ```
 */
export function comparePrices(input: ComparePricesInput): ComparedOffer[] {
  requireInputs('comparePrices', input, {
    thicknessMm: { min: 0.1, max: 1000 },
    widthMm: { min: 0.1, max: 5000 },
    densityKgPerM3: { min: 1, max: 25_000 },
  });
  const { thicknessMm, widthMm, densityKgPerM3, offers } = input;
  const fits = Array.isArray(offers) && offers.length >= 1 && offers.length <= 50;
  requireThat('comparePrices', fits, `offers to be a list of 1 to 50, got ${offers?.length}`);

  const byVolume = (mm3: number) => mm3 / (thicknessMm * widthMm);
  const byMass = (kg: number) => byVolume((kg / densityKgPerM3) * 1e9);
  /** How many mm of length one of each unit is. */
  const lengthsOf = (stickLengthMm: number): Readonly<Record<PricedBy, number>> => ({
    m: 1000,
    ft: convert(1, foot, millimetre),
    'm²': 1e6 / widthMm,
    'ft²': convert(1, squareFoot, squareMillimetre) / widthMm,
    'm³': byVolume(convert(1, cubicMetre, cubicMillimetre)),
    'bd ft': byVolume(convert(1, boardFoot, cubicMillimetre)),
    kg: byMass(1),
    lb: byMass(convert(1, pound, kilogram)),
    stick: stickLengthMm,
  });

  const compared = offers.map((offer, i) => {
    const path = `offers[${i}]`;
    requireFields('comparePrices', path, offer, {
      unitPrice: { min: 1e-6, max: 1_000_000 },
      stickLengthMm: { min: 1, max: 30_000 },
    });
    requireName('comparePrices', path, offer);
    const { name, pricedBy, unitPrice, stickLengthMm } = offer;
    const lengths = lengthsOf(stickLengthMm);
    requireChoice('comparePrices', `${path}.pricedBy`, pricedBy, Object.keys(lengths));
    const per = (unit: PricedBy) => (unitPrice / lengths[pricedBy]) * lengths[unit];
    return {
      name,
      perMetrePrice: per('m'),
      perFootPrice: per('ft'),
      perSquareMetrePrice: per('m²'),
      perCubicMetrePrice: per('m³'),
      perBoardFootPrice: per('bd ft'),
      perKilogramPrice: per('kg'),
      perStickPrice: per('stick'),
    };
  });
  const least = Math.min(...compared.map(({ perMetrePrice }) => perMetrePrice));
  return compared
    .map((offer) => ({ ...offer, dearerPct: 100 * (offer.perMetrePrice / least - 1) }))
    .sort((a, b) => a.perMetrePrice - b.perMetrePrice);
}
