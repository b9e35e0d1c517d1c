import { planStrip, type StripPlan, type StripRabbet, slotLength, stripRabbet } from '@scantling/fastening';
import { changeBesideMetal, fitStrip } from '@scantling/movement';
import type { Step } from '../calculator/calculation.ts';

/** A strip, its recess and its screws, and the year that it will see. */
export interface StripQuestion {
  readonly runs: 'along the grain' | 'across the grain';
  readonly walls: 'rabbet' | 'groove';
  readonly fixed: 'first' | 'middle' | 'last';
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly thicknessToleranceMm: number;
  readonly widthToleranceMm: number;
  readonly belowFaceMm: number;
  readonly endDistanceMm: number;
  readonly mostPitchMm: number;
  readonly shankDiameterMm: number;
  readonly headDiameterMm: number;
  readonly headHeightMm: number;
  readonly headBelowFaceMm: number;
  readonly toleranceMm: number;
  readonly clearanceMm: number;
  readonly endClearanceMm: number;
  readonly metalUmPerMK: number;
  readonly coefficientPerPct: number;
  readonly alongPerPct: number;
  readonly acrossUmPerMK: number;
  readonly alongUmPerMK: number;
  readonly moisturePct: number;
  readonly driestMoisturePct: number;
  readonly wettestMoisturePct: number;
  readonly temperatureC: number;
  readonly coldestTemperatureC: number;
  readonly warmestTemperatureC: number;
}

/** How far strip and wood outgrow each other, and what that asks for. */
export interface StripFound {
  readonly metalOutgrowsMm: number;
  readonly woodOutgrowsMm: number;
  readonly rabbet: StripRabbet;
  readonly plan: StripPlan;
  readonly steps: readonly Step[];
}

/** The movement of the strip beside the wood, then its screws, then the recess. */
export function stripInWood(values: StripQuestion): StripFound {
  const { lengthMm, widthMm, thicknessMm, runs, fixed, endDistanceMm, toleranceMm } = values;
  const { coefficientPerPct, alongPerPct, acrossUmPerMK, alongUmPerMK, metalUmPerMK } = values;
  const { shankDiameterMm, clearanceMm } = values;
  const heldAtMm = { first: endDistanceMm, middle: lengthMm / 2, last: lengthMm - endDistanceMm }[fixed];
  const fit = fitStrip({
    strip: { lengthMm, widthMm, expansionUmPerMK: metalUmPerMK },
    runs,
    wood: { alongPerPct, acrossPerPct: coefficientPerPct, alongUmPerMK, acrossUmPerMK },
    buildingDay: values,
    year: values,
    heldAtMm,
    toleranceMm,
  });
  const { metalOutgrowsMm, woodOutgrowsMm } = fit.length;
  const plan = planStrip({
    ...values,
    strip: { lengthMm, thicknessMm },
    screws: values,
    metalOutgrowsMm,
    woodOutgrowsMm,
  });
  const cut = {
    ...{ stripThicknessMm: thicknessMm, stripWidthMm: widthMm },
    ...{ thicknessToleranceMm: values.thicknessToleranceMm, widthToleranceMm: values.widthToleranceMm },
    ...{ belowFaceMm: values.belowFaceMm, gapMm: fit.width.start.gapMm },
    wallCount: values.walls === 'rabbet' ? 1 : 2,
  };
  const rabbet = stripRabbet(cut);
  const along = runs === 'along the grain';
  const drying = {
    ...{ lengthMm, coefficientPerPct: along ? alongPerPct : coefficientPerPct },
    ...{ woodUmPerMK: along ? alongUmPerMK : acrossUmPerMK, metalUmPerMK },
    ...{ fromMoisturePct: values.moisturePct, toMoisturePct: values.driestMoisturePct },
    ...{ fromTemperatureC: values.temperatureC, toTemperatureC: values.warmestTemperatureC },
  };
  const farthest = plan.screws.reduce((a, b) => (b.outMm + b.inMm > a.outMm + a.inMm ? b : a));
  const travel = { shankDiameterMm, clearanceMm, swellMm: farthest.outMm, shrinkMm: farthest.inMm };
  return {
    metalOutgrowsMm,
    woodOutgrowsMm,
    rabbet,
    plan,
    steps: [
      { what: 'Size of the recess', rule: 'fastening/strip-rabbet', given: cut, gives: rabbet },
      {
        what: 'Strip beside the wood, driest and warmest',
        rule: 'movement/change-beside-metal',
        given: drying,
        gives: changeBesideMetal(drying),
      },
      {
        what: 'Slot for the screw that travels farthest',
        rule: 'fastening/slot-length',
        given: travel,
        gives: slotLength(travel),
      },
    ],
  };
}
