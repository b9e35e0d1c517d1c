import { defineRule } from '@scantling/rules';
import { structuralAnalysisLibrary, woodScrewSizesPage } from '@scantling/rules/sources';
import { drillingCare, measureTheTop } from '../cautions.ts';
import { partLimits as limits, partsFit, requireScrewParts } from '../screw-parts.ts';

export interface ThreadEngagementInput {
  /** Length of the screw as it is sold, mm, 1 to 1000: under a round or hexagon head, over all with a countersunk one. */
  readonly screwLengthMm: number;
  /** How much of it is threaded, tip included, mm, 0 to 1000. */
  readonly threadLengthMm: number;
  /** The tapered tip, which does not count as thread, mm, 0 to 100. */
  readonly tipLengthMm: number;
  /** From where the screw's length is measured to the wood, mm, 0 to 500: washer, bracket and strip together. */
  readonly fixtureThicknessMm: number;
  /** Thickness of the top, mm, 1 to 500. */
  readonly topThicknessMm: number;
}

export interface ThreadEngagement {
  /** Full thread within the wood, mm, its tip not counted. */
  readonly threadInWoodMm: number;
  /** Unthreaded shank within the wood, mm: it holds nothing along the screw and wants a hole of its own. */
  readonly shankInWoodMm: number;
  /** Screw within the wood, mm, tip and shank included. */
  readonly penetrationMm: number;
  /** Wood left above the tip, mm; negative where the screw comes through the face. */
  readonly stockAboveTipMm: number;
}

/**
 * How a screw lies in a top: what of its thread and of its shank is within the wood, how deep it goes, and what is
 * left above its tip. The shank eats in where the fixture is thinner than the shank is long.
 *
 * @returns Thread, shank and screw within the wood and the stock above the tip, mm.
 * @throws RangeError where an input is outside its limits, the tip is longer than the thread, or the thread longer
 * than the screw.
 * Source: geometry; that the tip of a lag screw does not count is the rule of the NDS.
 * @example
 * ```ts
 * import { threadEngagement } from '@scantling/fastening';
 * // A 5 × 40 screw, 27 mm of thread with 8 mm of tip, through a 3 mm bracket into a 45 mm top
 * threadEngagement({ screwLengthMm: 40, threadLengthMm: 27, tipLengthMm: 8, fixtureThicknessMm: 3, topThicknessMm: 45 }) // => { threadInWoodMm: 19, shankInWoodMm: 10, penetrationMm: 37, stockAboveTipMm: 8 }
 * ```
 */
export function threadEngagement(input: ThreadEngagementInput): ThreadEngagement {
  requireScrewParts('threadEngagement', input);
  const { screwLengthMm, threadLengthMm, tipLengthMm, fixtureThicknessMm, topThicknessMm } = input;
  const faceMm = fixtureThicknessMm + topThicknessMm;
  const threadFromMm = screwLengthMm - threadLengthMm;
  /** What a stretch of the screw has in common with the wood. */
  const within = (fromMm: number, toMm: number) =>
    Math.max(0, Math.min(toMm, faceMm) - Math.max(fromMm, fixtureThicknessMm));
  return {
    threadInWoodMm: within(threadFromMm, screwLengthMm - tipLengthMm),
    shankInWoodMm: within(0, threadFromMm),
    penetrationMm: within(0, screwLengthMm),
    stockAboveTipMm: faceMm - screwLengthMm,
  };
}

export const threadEngagementRule = /* @__PURE__ */ defineRule<ThreadEngagementInput, ThreadEngagement>(
  () => ({
    id: 'fastening/thread-engagement',
    title: 'Thread in the wood, and stock above the tip',
    summary:
      'How much thread of a screw is within a top, how much unthreaded shank, how deep the screw goes, and what is left above its tip.',
    basis: 'derived',
    inputs: {
      screwLengthMm: {
        kind: 'number',
        label: 'Screw length',
        unit: 'mm',
        ...limits.screwLengthMm,
        help: 'As sold: under a round or hexagon head, over all with a countersunk head.',
      },
      threadLengthMm: {
        kind: 'number',
        label: 'Threaded length',
        unit: 'mm',
        ...limits.threadLengthMm,
        help: 'With the tip. About two thirds of a common wood screw; all of a screw for boards.',
      },
      tipLengthMm: {
        kind: 'number',
        label: 'Tapered tip',
        unit: 'mm',
        ...limits.tipLengthMm,
        help: 'Where the thread has not its full diameter.',
      },
      fixtureThicknessMm: {
        kind: 'number',
        label: 'Washer, bracket and strip',
        unit: 'mm',
        ...limits.fixtureThicknessMm,
        help: 'Together, less what a countersunk head lies below their face.',
      },
      topThicknessMm: {
        kind: 'number',
        label: 'Thickness of the top',
        unit: 'mm',
        ...limits.topThicknessMm,
        help: 'Where the screw goes in, less any rabbet or recess there.',
      },
    },
    outputs: {
      threadInWoodMm: { label: 'Thread in the wood', unit: 'mm', help: 'Without the tip.' },
      shankInWoodMm: { label: 'Shank in the wood', unit: 'mm', help: 'Wants a hole of its own diameter.' },
      penetrationMm: { label: 'Screw in the wood', unit: 'mm', help: 'With tip and shank.' },
      stockAboveTipMm: {
        label: 'Stock above the tip',
        unit: 'mm',
        help: 'Negative where the screw comes through the face.',
      },
    },
    compute: threadEngagement,
    formula: String.raw`\begin{aligned}
\ell_t &= \max(0,\ \min(L - e,\ t + T) - \max(L - b,\ t)) \\
\ell_s &= \max(0,\ \min(L - b,\ t + T) - t) \\
p &= \max(0,\ \min(L,\ t + T) - t) \\
r &= t + T - L
\end{aligned}`,
    symbols: {
      '\\ell_t': 'thread in the wood',
      '\\ell_s': 'shank in the wood',
      p: 'screw in the wood',
      r: 'stock above the tip',
      L: 'screw length',
      b: 'threaded length',
      e: 'tapered tip',
      t: 'washer, bracket and strip',
      T: 'thickness of the top',
    },
    inSymbols: (input, output) => ({
      '\\ell_t': output.threadInWoodMm,
      '\\ell_s': output.shankInWoodMm,
      p: output.penetrationMm,
      r: output.stockAboveTipMm,
      L: input.screwLengthMm,
      b: input.threadLengthMm,
      e: input.tipLengthMm,
      t: input.fixtureThicknessMm,
      T: input.topThicknessMm,
    }),
    requires: [{ says: 'the tip is part of the thread, and the thread part of the screw', holds: partsFit }],
    sources: [
      {
        source: structuralAnalysisLibrary,
        at: 'lag screws: penetration is length less side member less tip; nails and wood screws with their tip',
        confirmed: 'text',
      },
      {
        source: woodScrewSizesPage,
        at: 'where the length is measured; the thread takes two thirds of a common wood screw',
        confirmed: 'text',
      },
    ],
    examples: [
      {
        given: {
          screwLengthMm: 2.5 * 25.4,
          threadLengthMm: 0,
          tipLengthMm: 0,
          fixtureThicknessMm: 0.105 * 25.4,
          topThicknessMm: 88.9,
        },
        expect: { penetrationMm: { printed: '2.395', unit: 'in', times: 25.4 } },
        from: {
          source: structuralAnalysisLibrary,
          at: 'worked example E2.1a of the American Wood Council: a nail of 2.5 in through a side member of 0.105 in',
          confirmed: 'text',
          tier: 'reprint',
        },
      },
      {
        given: {
          screwLengthMm: 40,
          threadLengthMm: 27,
          tipLengthMm: 8,
          fixtureThicknessMm: 3,
          topThicknessMm: 45,
        },
        expect: {
          threadInWoodMm: '19.00',
          shankInWoodMm: '10.00',
          penetrationMm: '37.00',
          stockAboveTipMm: '8.00',
        },
        from: {
          workedByHand:
            'the thread begins at 40 − 27 = 13 mm and ends before the tip, at 40 − 8 = 32 mm, all of it beyond the bracket: 32 − 13 = 19.00 mm; shank 13 − 3 = 10.00 mm; screw 40 − 3 = 37.00 mm; 3 + 45 − 40 = 8.00 mm',
        },
      },
      {
        given: {
          screwLengthMm: 50,
          threadLengthMm: 40,
          tipLengthMm: 8,
          fixtureThicknessMm: 15,
          topThicknessMm: 30,
        },
        expect: { threadInWoodMm: '27.00', shankInWoodMm: '0', stockAboveTipMm: '-5.00' },
        from: {
          workedByHand:
            'the thread begins at 50 − 40 = 10 mm, within the bracket; in the wood from 15 to 50 − 8 = 42 mm: 42 − 15 = 27.00 mm; no shank, 0 mm; 15 + 30 − 50 = −5.00 mm, through the face',
        },
      },
    ],
    laws: [
      { of: 'threadInWoodMm', by: { threadLengthMm: 'increasing', tipLengthMm: 'decreasing' } },
      { of: 'shankInWoodMm', by: { threadLengthMm: 'decreasing', screwLengthMm: 'increasing' } },
      { of: 'penetrationMm', by: { screwLengthMm: 'increasing', topThicknessMm: 'increasing' } },
      {
        of: 'stockAboveTipMm',
        by: { screwLengthMm: 'linear', fixtureThicknessMm: 'linear', topThicknessMm: 'linear' },
      },
    ],
    cautions: [measureTheTop, drillingCare],
  }),
);
