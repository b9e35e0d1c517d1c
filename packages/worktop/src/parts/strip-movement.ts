import {
  coefficientFromShrinkage,
  fitStrip,
  longitudinalShrinkage,
  thermalExpansionTable,
  widthChange,
  woodThermalExpansion,
} from '@scantling/movement';
import { plusZero } from '@scantling/rules';
import type { WoodInBrief } from '@scantling/species';
import { specificGravityOf } from '../density.ts';
import type { Rectangle } from '../plan/place.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Strip } from '../plan/screws.ts';
import type { Basis } from '../season.ts';

const alongTheGrain = () =>
  thermalExpansionTable
    .filter(({ material, direction }) => material === 'wood' && direction === 'along')
    .flatMap(({ lowUmPerMK, highUmPerMK }) => [lowUmPerMK, highUmPerMK]);

/** One figure where the gravity of the wood is known; else those of the lightest and heaviest that the source speaks of. */
function acrossTheGrain(wood: WoodInBrief, cut: SettledPlan['top']['cut']): number[] {
  const ovendryRatio = specificGravityOf(wood, 0);
  return (ovendryRatio ? [ovendryRatio] : [0.1, 0.8]).map((ovendrySpecificGravityRatio) => {
    const expansion = woodThermalExpansion({ ovendrySpecificGravityRatio });
    return cut === 'flatsawn' ? expansion.tangentialUmPerMK : expansion.radialUmPerMK;
  });
}

/** Strip and wood over the year: of figures that are known as a range, the end that parts the two farthest. */
export function outgrowths(plan: SettledPlan, strip: Strip, { wood, movement }: Basis, inlay: Rectangle) {
  const { top, seasons } = plan;
  const temperatures = [seasons.driest.temperatureC, seasons.wettest.temperatureC];
  const along = inlay.lengthMm >= inlay.widthMm;
  const { coefficientPerPct: alongPerPct } = coefficientFromShrinkage({
    shrinkagePct: longitudinalShrinkage.highPct,
    fibreSaturationPct: 30,
  });
  const fits = alongTheGrain().flatMap((alongUmPerMK) =>
    acrossTheGrain(wood, top.cut).map((acrossUmPerMK) =>
      fitStrip({
        strip: {
          lengthMm: Math.max(inlay.lengthMm, inlay.widthMm),
          widthMm: Math.min(inlay.lengthMm, inlay.widthMm),
          expansionUmPerMK: strip.expansionUmPerMK,
        },
        runs: along ? 'along the grain' : 'across the grain',
        wood: { alongPerPct, acrossPerPct: movement.coefficientPerPct, alongUmPerMK, acrossUmPerMK },
        buildingDay: { moisturePct: top.moisturePct, temperatureC: strip.buildingDayC },
        year: {
          driestMoisturePct: movement.driestMoisturePct,
          wettestMoisturePct: movement.wettestMoisturePct,
          coldestTemperatureC: Math.min(...temperatures),
          warmestTemperatureC: Math.max(...temperatures),
        },
        // Only what both outgrow each other by is asked for here: `planStrip` shares it out.
        heldAtMm: 0,
        toleranceMm: strip.toleranceMm,
      }),
    ),
  );
  return {
    metalOutgrowsMm: Math.max(...fits.map(({ length }) => length.metalOutgrowsMm)),
    woodOutgrowsMm: Math.max(...fits.map(({ length }) => length.woodOutgrowsMm)),
    sideGapMm: Math.max(...fits.map(({ width }) => width.start.gapMm)),
  };
}

/** The strip stands on the floor of its rabbet, and the wood beside it swells and shrinks in thickness. */
export function belowFace({ top }: SettledPlan, strip: Strip, { wood, movement }: Basis) {
  const { radialPerPct, tangentialPerPct } = wood.movement;
  const inThickness = top.cut === 'flatsawn' ? radialPerPct : tangentialPerPct;
  const coefficientPerPct = inThickness?.value ?? movement.coefficientPerPct;
  const { rabbetDepthMm: widthMm } = strip;
  const then = (toMoisturePct: number) =>
    widthMm +
    widthChange({ widthMm, coefficientPerPct, fromMoisturePct: top.moisturePct, toMoisturePct }).changeMm -
    strip.thicknessMm;
  return {
    belowFaceMm: plusZero(widthMm - strip.thicknessMm),
    belowFaceDriestMm: plusZero(then(movement.driestMoisturePct)),
    belowFaceWettestMm: plusZero(then(movement.wettestMoisturePct)),
  };
}
