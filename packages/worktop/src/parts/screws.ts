import { chooseScrewLength, type DepthStep, planDepthStops, type StoppedHole } from '@scantling/fastening';
import { toRectangleMm } from '../geometry.ts';
import type { Point } from '../plan/place.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { PlannedFixing } from '../result.ts';
import type { PlannedStrip } from './strip.ts';

/** How a screw lies in the top, all lengths in mm. */
export interface PlannedScrew extends Point {
  /** The fixing that it is. */
  readonly name: string;
  /** The wood that it goes into: less under the rabbet of the strip. */
  readonly topThicknessMm: number;
  readonly underStrip: boolean;
  /** Full thread within the wood, the tip not counted. */
  readonly threadInWoodMm: number;
  readonly shankInWoodMm: number;
  readonly penetrationMm: number;
  /** Wood above its tip; negative where it comes through. */
  readonly stockAboveTipMm: number;
}

/** Holes for the screws that go into wood of one thickness, bored with the base off the top. */
export interface BoringSetting {
  readonly topThicknessMm: number;
  /** Names of the fixings. */
  readonly fixings: readonly string[];
  readonly shankHole: StoppedHole | null;
  readonly leadHole: StoppedHole | null;
  /** What is against it; none where it can be bored so. */
  readonly reasons: readonly string[];
  /** In their order; none where there are reasons against it. */
  readonly steps: readonly DepthStep[];
}

/** The screws that hold the top. */
export interface PlannedScrews {
  readonly lengthMm: number;
  /** Threaded, tip included, mm. */
  readonly threadLengthMm: number;
  /** What lies between the heads and the wood, mm. */
  readonly layersMm: number;
  readonly at: readonly PlannedScrew[];
  readonly settings: readonly BoringSetting[];
  /** Lengths on offer that do everywhere, mm. */
  readonly fittingLengthsMm: readonly number[];
}

/** How every screw lies in the wood, which lengths would do, and how to bore for them. */
export function plannedScrews(
  { top, base, screws, strip }: SettledPlan,
  fixings: readonly PlannedFixing[],
  plannedStrip: PlannedStrip | null,
): PlannedScrews | null {
  if (!screws) return null;
  const { lengthMm, stockLengthsMm, layersMm, threadShare, tipLengthMm, leastThreadMm, leastStockMm } =
    screws;
  const thicknessAt = (underStrip: boolean) =>
    top.thicknessMm - (underStrip && strip ? strip.rabbetDepthMm : 0);
  const judged = (lengthsMm: readonly number[], topThicknessMm: number) =>
    chooseScrewLength({
      ...{ layersMm, topThicknessMm, threadShare, tipLengthMm, leastThreadMm, leastStockMm },
      stockLengthsMm: lengthsMm,
    }).lengths;
  const at = fixings.map(({ name, xMm, yMm }): PlannedScrew => {
    const underStrip =
      plannedStrip !== null && toRectangleMm({ xMm, yMm }, plannedStrip.rabbet) < base.shankDiameterMm / 2;
    const topThicknessMm = thicknessAt(underStrip);
    const [lies] = judged([lengthMm], topThicknessMm);
    if (!lies) throw new Error('one length has one verdict');
    const { threadInWoodMm, shankInWoodMm, penetrationMm, stockAboveTipMm } = lies;
    return {
      name,
      xMm,
      yMm,
      topThicknessMm,
      underStrip,
      threadInWoodMm,
      shankInWoodMm,
      penetrationMm,
      stockAboveTipMm,
    };
  });
  const thicknesses = [...new Set(at.map(({ topThicknessMm }) => topThicknessMm))];
  const threadLengthMm = threadShare * lengthMm;
  const fixtureThicknessMm = layersMm.reduce((sum, layerMm) => sum + layerMm, 0);
  const settings = thicknesses.map((topThicknessMm): BoringSetting => {
    const { shankHole, leadHole, reasons, steps } = planDepthStops({
      screwLengthMm: lengthMm,
      threadLengthMm,
      tipLengthMm: Math.min(tipLengthMm, threadLengthMm),
      fixtureThicknessMm,
      topThicknessMm,
      drilledThroughMm: 0,
      leadHoleShare: screws.leadHoleShare,
      leadBitTipLengthMm: screws.leadBitTipLengthMm,
      shankBitTipLengthMm: screws.shankBitTipLengthMm,
      stopLengthMm: screws.stopLengthMm,
      leastStockMm,
    });
    const names = at.filter((screw) => screw.topThicknessMm === topThicknessMm).map(({ name }) => name);
    return { topThicknessMm, fixings: names, shankHole, leadHole, reasons, steps };
  });
  const passing = thicknesses.map((topThicknessMm) =>
    judged(stockLengthsMm, topThicknessMm)
      .filter(({ status }) => status === 'pass')
      .map((length) => length.lengthMm),
  );
  return {
    lengthMm,
    threadLengthMm,
    layersMm: fixtureThicknessMm,
    at,
    settings,
    fittingLengthsMm: (passing[0] ?? []).filter((length) => passing.every((fit) => fit.includes(length))),
  };
}
