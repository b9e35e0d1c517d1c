import { requireInputs, requireThat } from '@scantling/rules';

const price = { min: 0, max: 1_000_000 };
const limits = {
  usedMm: { min: 0.1, max: 1e9 },
  cutCount: { min: 0, max: 100_000, integer: true },
  stickLengthMm: { min: 1, max: 30_000 },
  stickCount: { min: 1, max: 100_000, integer: true },
  stickPrice: price,
  perMetrePrice: price,
  perCutPrice: price,
} as const;

export interface CompareBuyingInput {
  /** All parts end to end, with the kerfs between them, mm, 0.1 to 10⁹. */
  readonly usedMm: number;
  /** Cuts that the seller would make, 0 to 100 000. */
  readonly cutCount: number;
  /** mm, 1 to 30 000. */
  readonly stickLengthMm: number;
  /** Whole sticks that the parts take, 1 to 100 000: `cutBars` finds how few. */
  readonly stickCount: number;
  /** For a whole stick, in any one currency, 0 to 1 000 000. */
  readonly stickPrice: number;
  /** For a metre cut to length, 0 to 1 000 000. */
  readonly perMetrePrice: number;
  /** For each cut, 0 to 1 000 000. */
  readonly perCutPrice: number;
}

export interface CompareBuying {
  /** All whole sticks. */
  readonly sticksPrice: number;
  /** Of that, what goes into the parts. */
  readonly usedPrice: number;
  /** Of that, what lies in the leftover. */
  readonly leftoverPrice: number;
  /** mm. */
  readonly leftoverMm: number;
  /** All pieces cut to length, with the cuts. */
  readonly piecesPrice: number;
  /** What is cheaper to pay now; whole sticks where both are the same. */
  readonly cheaper: 'whole sticks' | 'pieces';
  /** What whole sticks cost more than pieces; negative where they cost less. */
  readonly differencePrice: number;
  /** What a metre of the leftover must be worth later for whole sticks to be no loss; 0 where they are cheaper anyhow, `null` where none is left. */
  readonly leftoverPerMetrePrice: number | null;
}

/**
 * Whether to buy whole sticks or have pieces cut: what the parts cost either way, and what lies in the leftover.
 *
 * @throws RangeError where an input is outside its limits, or the sticks are too few for the parts.
 * Source: sums and shares by length.
 * @example
 * ```ts
 * import { compareBuying } from '@scantling/stock';
 * // 7.4 m of parts from two sticks of 6 m at 27, or cut at 4.90 a metre and 1.50 a cut
 * const { sticksPrice, leftoverPrice, piecesPrice, cheaper, leftoverPerMetrePrice } = compareBuying({ usedMm: 7400, cutCount: 8, stickLengthMm: 6000, stickCount: 2, stickPrice: 27, perMetrePrice: 4.9, perCutPrice: 1.5 });
 * [sticksPrice, leftoverPrice, piecesPrice]; // => [54, 20.7, 48.26]
 * // The pieces are cheaper now, unless 4.6 m of leftover are worth 1.25 a metre one day
 * [cheaper, leftoverPerMetrePrice]; // => ['pieces', 1.2478]
 * ```
 */
export function compareBuying(input: CompareBuyingInput): CompareBuying {
  requireInputs('compareBuying', input, limits);
  const { usedMm, cutCount, stickLengthMm, stickCount, stickPrice, perMetrePrice, perCutPrice } = input;
  const boughtMm = stickLengthMm * stickCount;
  requireThat(
    'compareBuying',
    usedMm <= boughtMm,
    `sticks that hold usedMm ${usedMm}, got ${boughtMm} mm of them`,
  );
  const sticksPrice = stickCount * stickPrice;
  const piecesPrice = (perMetrePrice * usedMm) / 1000 + perCutPrice * cutCount;
  const leftoverMm = boughtMm - usedMm;
  const leftoverPrice = (sticksPrice * leftoverMm) / boughtMm;
  const differencePrice = sticksPrice - piecesPrice;
  return {
    sticksPrice: sticksPrice + 0,
    usedPrice: sticksPrice - leftoverPrice,
    leftoverPrice: leftoverPrice + 0,
    leftoverMm,
    piecesPrice: piecesPrice + 0,
    cheaper: differencePrice <= 0 ? 'whole sticks' : 'pieces',
    differencePrice,
    leftoverPerMetrePrice: leftoverMm === 0 ? null : Math.max(0, (1000 * differencePrice) / leftoverMm),
  };
}
