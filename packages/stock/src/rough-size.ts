import { requireFields, requireInputs, requireThat } from '@scantling/rules';
import { requireName } from './require-name.ts';

const side = { min: 0.1, max: 30_000 };
const added = { min: 0, max: 1000 };

/** Something that takes wood off each piece: on all its sides together. */
export interface SizeAllowance {
  /** Kerf, jointing, planing, snipe, ends. */
  readonly name: string;
  /** mm, 0 to 1000. */
  readonly lengthMm: number;
  /** mm, 0 to 1000. */
  readonly widthMm: number;
  /** mm, 0 to 1000. */
  readonly thicknessMm: number;
}

/** Something that takes a share of all that is bought. */
export interface ShareAllowance {
  /** Defects, wane, boards that do not match. */
  readonly name: string;
  /** Of what is bought, %, 0 to 99. */
  readonly sharePct: number;
}

export interface RoughSizeInput {
  /** Finished, mm, 0.1 to 30 000. */
  readonly lengthMm: number;
  /** Finished, mm, 0.1 to 30 000. */
  readonly widthMm: number;
  /** Finished, mm, 0.1 to 30 000. */
  readonly thicknessMm: number;
  /** Pieces alike, 1 to 10 000. */
  readonly count: number;
  /** In the order from the finished piece back to the rough board; up to 20. */
  readonly sizes: readonly SizeAllowance[];
  /** Up to 20; together at most 99 %. */
  readonly shares: readonly ShareAllowance[];
}

/** Where a part of what is bought goes. */
export interface WoodShare {
  readonly name: string;
  /** m³. */
  readonly volumeM3: number;
  /** Of what is bought, %. */
  readonly sharePct: number;
}

export interface RoughSize {
  /** Of each piece, mm. */
  readonly roughLengthMm: number;
  /** Of each piece, mm. */
  readonly roughWidthMm: number;
  /** Of each piece, mm. */
  readonly roughThicknessMm: number;
  /** All that is bought, m³. */
  readonly boughtM3: number;
  /** All finished pieces, m³. */
  readonly finishedM3: number;
  /** Of what is bought, how much ends in the finished pieces, %. */
  readonly yieldPct: number;
  /** Where the rest goes: the allowances in their order. */
  readonly wasted: readonly WoodShare[];
}

/**
 * From finished pieces to what has to be bought, every allowance by its name: the rough size of a piece, the volume of
 * all, and the share that each allowance takes. Where two allowances meet in a corner, the later one takes it.
 *
 * @throws RangeError where an input is outside its limits, an allowance has no name, or shares take all there is.
 * Source: volumes of boxes, one inside the other.
 * @example
 * ```ts
 * import { roughSize } from '@scantling/stock';
 * const none = { lengthMm: 0, widthMm: 0, thicknessMm: 0 };
 * const { roughThicknessMm, yieldPct, wasted } = roughSize({
 *   lengthMm: 900, widthMm: 95, thicknessMm: 20, count: 4,
 *   sizes: [{ ...none, name: 'planing', thicknessMm: 5 }, { ...none, name: 'kerf and jointing', widthMm: 5 }, { ...none, name: 'ends', lengthMm: 100 }],
 *   shares: [{ name: 'knots and splits', sharePct: 10 }],
 * });
 * [roughThicknessMm, yieldPct] // => [25, 61.56]
 * wasted.map(({ name, sharePct }) => `${name} ${sharePct.toFixed(2)} %`) // => ['planing 15.39 %', 'kerf and jointing 4.05 %', 'ends 9.00 %', 'knots and splits 10.00 %']
 * ```
 */
export function roughSize(input: RoughSizeInput): RoughSize {
  const count = { min: 1, max: 10_000, integer: true } as const;
  requireInputs('roughSize', input, { lengthMm: side, widthMm: side, thicknessMm: side, count });
  const { sizes, shares } = input;
  const requireItems = (
    name: string,
    items: readonly { readonly name: string }[],
    limits: Readonly<Record<string, typeof added>>,
  ) => {
    const fits = Array.isArray(items) && items.length <= 20;
    requireThat('roughSize', fits, `${name} to be a list of at most 20, got ${items?.length}`);
    items.forEach((item, i) => {
      requireFields('roughSize', `${name}[${i}]`, item, limits);
      requireName('roughSize', `${name}[${i}]`, item);
    });
  };
  requireItems('sizes', sizes, { lengthMm: added, widthMm: added, thicknessMm: added });
  requireItems('shares', shares, { sharePct: { min: 0, max: 99 } });
  const takenPct = shares.reduce((sum, { sharePct }) => sum + sharePct, 0);
  requireThat('roughSize', takenPct <= 99, `shares to take at most 99 % together, got ${takenPct}`);

  let { lengthMm, widthMm, thicknessMm } = input;
  const volumeM3 = () => (lengthMm * widthMm * thicknessMm * input.count) / 1e9;
  const finishedM3 = volumeM3();
  const bySize = sizes.map(({ name, ...taken }) => {
    const before = volumeM3();
    lengthMm += taken.lengthMm;
    widthMm += taken.widthMm;
    thicknessMm += taken.thicknessMm;
    return { name, volumeM3: volumeM3() - before };
  });
  const boughtM3 = volumeM3() / (1 - takenPct / 100);
  const byShare = shares.map(({ name, sharePct }) => ({ name, volumeM3: (boughtM3 * sharePct) / 100 }));
  return {
    roughLengthMm: lengthMm,
    roughWidthMm: widthMm,
    roughThicknessMm: thicknessMm,
    boughtM3,
    finishedM3,
    yieldPct: (100 * finishedM3) / boughtM3,
    wasted: [...bySize, ...byShare].map((one) => ({ ...one, sharePct: (100 * one.volumeM3) / boughtM3 })),
  };
}
