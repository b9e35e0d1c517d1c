import { requireFields, requireInputs, requireThat } from '@scantling/rules';
import { oilyRags, productSheet, solvents, twoPart } from './cautions.ts';
import { ROUNDING_HOURS } from './rounding.ts';

const useLimits = {
  atHours: { min: 0, max: 100_000 },
  lastsHours: { min: 0, max: 24 },
  volumeMl: { min: 0, max: 1_000_000 },
} as const;

/** A time at which mixed finish is used, evenly from its beginning to its end. */
export interface FinishUse {
  /** When it begins, h, not before the last one ends. */
  readonly atHours: number;
  /** How long it lasts, h, 0 to 24. */
  readonly lastsHours: number;
  /** mL, 0 to 1 000 000. */
  readonly volumeMl: number;
}

export interface PlanBatchesInput {
  /** In the order of time, 1 to 100. */
  readonly uses: readonly FinishUse[];
  /** How long a mixed batch can be worked, h, 0.1 to 10 000: see the product’s sheet. */
  readonly potLifeHours: number;
}

/** What a batch is used for. */
export interface BatchShare {
  /** Which of the uses, counted from 0. */
  readonly index: number;
  readonly volumeMl: number;
}

export interface PlannedBatch {
  /** When to mix it, h: as it is first needed. */
  readonly atHours: number;
  /** mL, all of it used before it is too old. */
  readonly volumeMl: number;
  readonly shares: readonly BatchShare[];
}

export interface PlanBatches {
  readonly batches: readonly PlannedBatch[];
  readonly cautions: readonly string[];
}

/**
 * Batches of a finish that must be used within its pot life, each mixed when it is needed and used up, so that none is
 * thrown away. It takes as few batches as can be: each lasts as long as its pot life lets it.
 *
 * @throws RangeError where an input is outside its limits, or a use begins before the last one ends.
 * Source: the fewest intervals that cover times in order; the pot life is the product’s own.
 * @example
 * ```ts
 * import { planBatches } from '@scantling/finishing';
 * // Two coats in one afternoon, a third the next day
 * const { batches } = planBatches({
 *   uses: [{ atHours: 0, lastsHours: 1, volumeMl: 120 }, { atHours: 3, lastsHours: 1, volumeMl: 100 }, { atHours: 24, lastsHours: 1, volumeMl: 100 }],
 *   potLifeHours: 8,
 * });
 * batches.map(({ atHours, volumeMl }) => [atHours, volumeMl]) // => [[0, 220], [24, 100]]
 * ```
 */
export function planBatches(input: PlanBatchesInput): PlanBatches {
  requireInputs('planBatches', input, { potLifeHours: { min: 0.1, max: 10_000 } });
  const { uses, potLifeHours } = input;
  requireThat(
    'planBatches',
    Array.isArray(uses) && uses.length >= 1 && uses.length <= 100,
    `uses to be a list of 1 to 100, got ${uses?.length}`,
  );
  const batches: { atHours: number; volumeMl: number; shares: BatchShare[] }[] = [];
  let until = Number.NEGATIVE_INFINITY;
  let lastEnd = 0;
  for (const [index, use] of uses.entries()) {
    requireFields('planBatches', `uses[${index}]`, use, useLimits);
    const { atHours, lastsHours, volumeMl } = use;
    requireThat(
      'planBatches',
      atHours >= lastEnd - ROUNDING_HOURS,
      `uses[${index}].atHours at or after the end of the one before, ${lastEnd}, got ${atHours}`,
    );
    lastEnd = atHours + lastsHours;
    if (volumeMl === 0) continue;
    let leftMl = volumeMl;
    for (let from = atHours; ; ) {
      if (batches.length === 0 || from > until || (from === until && lastsHours > 0)) {
        batches.push({ atHours: from + 0, volumeMl: 0, shares: [] });
        until = from + potLifeHours;
      }
      const lasts = until >= lastEnd;
      const ml = lasts ? leftMl : Math.min(leftMl, (volumeMl * (until - from)) / lastsHours);
      const batch = batches.at(-1) as (typeof batches)[number];
      batch.volumeMl += ml;
      batch.shares.push({ index, volumeMl: ml });
      leftMl -= ml;
      if (lasts) break;
      from = until;
    }
  }
  return {
    batches,
    cautions: [
      'Mixed two-part finish grows hot in a full can, and hotter the more of it stands together: mix what the hour takes, and let leftovers set in a thin layer outdoors.',
      twoPart,
      oilyRags,
      solvents,
      productSheet,
    ],
  };
}
