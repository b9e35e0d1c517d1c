import { finishAreas, planCoats, spreadingRate, thinnedSolids } from '@scantling/finishing';
import type { SettledPlan } from '../plan/plan.ts';
import type { FinishedFace, PlannedFinish } from '../result.ts';

/** Most holes of one entry of `finishAreas`. */
const MOST_HOLES_OF_A_KIND = 10_000;

/** Every face, with the holes that are drilled. The strip fills its rabbet, so that no rabbet is left to coat. */
function facesOf({ top, holes }: SettledPlan, holeCount: number): FinishedFace[] {
  const { lengthMm, widthMm, thicknessMm } = top;
  const { diameterMm } = holes;
  const kinds = Math.ceil(holeCount / MOST_HOLES_OF_A_KIND);
  const areas = finishAreas({
    lengthMm,
    widthMm,
    thicknessMm,
    holes: Array.from({ length: kinds }, (_, i) => ({
      count: Math.min(MOST_HOLES_OF_A_KIND, holeCount - i * MOST_HOLES_OF_A_KIND),
      diameterMm,
      bored: 'through' as const,
    })),
    rabbets: [],
  });
  return [
    { name: 'top', areaM2: areas.topM2 },
    { name: 'underside', areaM2: areas.undersideM2 },
    { name: 'edges', areaM2: areas.frontM2 + areas.backM2 + areas.leftM2 + areas.rightM2 },
    { name: 'hole walls', areaM2: areas.holeWallsM2 },
  ];
}

/** How much finish all coats take, and how it is mixed. */
export function plannedFinish(plan: SettledPlan, holeCount: number): PlannedFinish {
  const { coats, product, thinner, dryFilmUm, lossPct } = plan.finish;
  const { volumeSolidsPct } = product;
  const faces = facesOf(plan, holeCount);
  const thinnerPct = (100 * (thinner?.parts ?? 0)) / product.parts;
  const { thinnedSolidsPct } = thinnedSolids({ volumeSolidsPct, thinnerPct });
  const { spreadingRateM2PerL } = spreadingRate({ volumeSolidsPct: thinnedSolidsPct, dryFilmUm });
  const coat = {
    faces: faces.map(({ name }) => name),
    finish: product.name,
    ...(thinner ? { thinner: thinner.name } : {}),
    ...{ thinnerPct, volumeSolidsPct, spreadingRateM2PerL, lossPct },
    // A plan does not say how glossy a coat dries, and nothing here depends on it.
    sheen: 'satin' as const,
  };
  const planned = planCoats({ faces, coats: Array.from({ length: coats }, () => coat) });
  const [each] = planned.coats as readonly [(typeof planned.coats)[number]];
  return {
    areaM2: each.areaM2,
    faces,
    mixSolidsPct: thinnedSolidsPct,
    spreadingRateM2PerL,
    volumeMl: planned.coats.reduce((sum, { mixMl }) => sum + mixMl, 0),
    eachCoat: {
      mixMl: each.mixMl,
      productMl: each.finishMl,
      thinnerMl: each.thinnerMl,
      wetFilmUm: each.wetFilmUm,
      dryFilmUm: each.dryFilmUm,
    },
    mix: planned.liquids.map(({ name, volumeMl }) => ({
      name,
      volumeMl,
      onHandMl: (name === thinner?.name ? thinner : product).onHandMl,
    })),
  };
}
