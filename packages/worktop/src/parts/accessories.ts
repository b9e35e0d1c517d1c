import { type PinFit, pinFit } from '@scantling/grids';
import type { Accessory } from '../plan/holes.ts';
import type { Point } from '../plan/place.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { PlannedHole } from '../result.ts';
import type { Swing } from '../season.ts';

/** A hole, counted from 1 at the front-left corner. */
export interface HolePlace {
  readonly row: number;
  readonly column: number;
}

/** Where something with pins stands, and how it fits through the year. */
export interface PlannedAccessory {
  readonly name: string;
  /** Places on the top where there is a hole for each pin, the way round that its pins are given. */
  readonly placeCount: number;
  /** The hole of each pin at the first of them; `null` where there is none. */
  readonly holes: readonly HolePlace[] | null;
  /** The same at all places: only how the holes lie to each other counts. */
  readonly fit: PinFit | null;
}

/** How many pitches each pin lies from the first, to the nearest hole. */
const stepsOf = ({ pins }: Accessory, { pitchXMm, pitchYMm }: SettledPlan['holes']): HolePlace[] => {
  const { xMm, yMm } = pins[0] as Point;
  return pins.map((pin) => ({
    column: Math.round((pin.xMm - xMm) / pitchXMm),
    row: Math.round((pin.yMm - yMm) / pitchYMm),
  }));
};

const key = ({ row, column }: HolePlace) => `${row} ${column}`;

/** Tries every hole for the first pin: where each other pin has one too, it can stand. */
export function plannedAccessories(
  plan: SettledPlan,
  swing: Swing,
  holes: readonly PlannedHole[],
): PlannedAccessory[] | null {
  const { accessories, holes: grid } = plan;
  if (!accessories) return null;
  const drilled = new Set(holes.map(key));
  return accessories.map((accessory) => {
    const steps = stepsOf(accessory, grid);
    const apart = new Set(steps.map(key)).size === steps.length;
    const from = ({ row, column }: HolePlace) =>
      steps.map((step) => ({ row: row + step.row, column: column + step.column }));
    const places = apart ? holes.filter((hole) => from(hole).every((one) => drilled.has(key(one)))) : [];
    const [first] = places;
    return {
      name: accessory.name,
      placeCount: places.length,
      holes: first ? from(first) : null,
      fit: first ? fitOf(accessory, steps, grid, swing) : null,
    };
  });
}

const fitOf = (
  { pins, leastPinMm, mostPinMm, leastHoleMm, mostHoleMm, ...errors }: Accessory,
  steps: readonly HolePlace[],
  { pitchXMm, pitchYMm }: SettledPlan['holes'],
  { swellPct, shrinkPct }: Swing,
): PinFit =>
  pinFit({
    pins,
    holes: steps.map(({ row, column }) => ({ xMm: column * pitchXMm, yMm: row * pitchYMm })),
    pin: { lowerLimitMm: leastPinMm, upperLimitMm: mostPinMm },
    hole: { lowerLimitMm: leastHoleMm, upperLimitMm: mostHoleMm },
    pinPositionErrorMm: errors.pinPositionErrorMm,
    holePositionErrorMm: errors.holePositionErrorMm,
    swellPct,
    shrinkPct,
  });
