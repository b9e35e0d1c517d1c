import { finishVolume, mixByParts, spreadingRate, thinnedSolids } from '@scantling/finishing';
import type { SettledPlan } from '../plan/plan.ts';
import type { PlannedFinish } from '../result.ts';

/** Both faces and the four edges, inlays and all, less the mouths of the holes and with their walls. */
function finishedAreaM2({ top, holes }: SettledPlan, count: number): number {
  const { lengthMm: l, widthMm: w, thicknessMm: t } = top;
  const d = holes.diameterMm;
  const mm2 = 2 * (l * w + l * t + w * t) + count * Math.PI * d * (t - d / 2);
  return mm2 / 1e6;
}

/** How much finish all coats take, and how it is mixed. */
export function plannedFinish(plan: SettledPlan, holeCount: number): PlannedFinish {
  const { coats, product, thinner, dryFilmUm, lossPct } = plan.finish;
  const liquids = thinner ? [product, thinner] : [product];
  const areaM2 = finishedAreaM2(plan, holeCount);
  const { thinnedSolidsPct } = thinnedSolids({
    volumeSolidsPct: product.volumeSolidsPct,
    thinnerPct: (100 * (thinner?.parts ?? 0)) / product.parts,
  });
  const { spreadingRateM2PerL } = spreadingRate({ volumeSolidsPct: thinnedSolidsPct, dryFilmUm });
  const { volumeMl } = finishVolume({ areaM2, coatCount: coats, spreadingRateM2PerL, lossPct });
  const { volumesMl } = mixByParts({ parts: liquids.map(({ parts }) => parts), batchMl: volumeMl });
  const mix = liquids.map(({ name, onHandMl }, i) => ({
    name,
    volumeMl: volumesMl[i] as number,
    onHandMl,
  }));
  return { areaM2, mixSolidsPct: thinnedSolidsPct, spreadingRateM2PerL, volumeMl, mix };
}
