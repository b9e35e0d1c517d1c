import { requireChoice, requireInputs } from '@scantling/rules';
import { gnuUnitsDrillSizes } from './data/gnu-units--drill-sizes.generated.ts';
import { mmFromIn } from './screw.ts';

/** Drills as they are sold: millimetres, fractions of an inch, or the numbers and letters of the drill gauge. */
export type DrillSeries = 'metric' | 'fraction' | 'number-letter';

export interface NearestDrillsInput {
  /** Hole that is asked for, mm, 0.1 to 30. */
  readonly holeDiameterMm: number;
  readonly series: DrillSeries;
}

export interface Drill {
  /** `4.2 mm`, `11/64 in`, `No. 19`, `F`. */
  readonly name: string;
  readonly diameterMm: number;
}

export interface NearestDrills {
  /** The largest drill that is not larger than the hole; `null` where the series has none. */
  readonly notLarger: Drill | null;
  /** The smallest drill that is not smaller than the hole; `null` where the series has none. */
  readonly notSmaller: Drill | null;
}

/** Drills and holes closer than this are one size, mm. */
const SAME_SIZE_MM = 0.0005;

function metricDrills(): Drill[] {
  const tenths = Array.from({ length: 138 }, (_, i) => (i + 3) / 10);
  const halves = Array.from({ length: 22 }, (_, i) => (i + 29) / 2);
  return [...tenths, ...halves].map((diameterMm) => ({ name: `${diameterMm} mm`, diameterMm }));
}

function fractionDrills(): Drill[] {
  return Array.from({ length: 64 }, (_, i) => {
    const shared = [64, 32, 16, 8, 4, 2].find((part) => (i + 1) % part === 0) ?? 1;
    const size = shared === 64 ? '1' : `${(i + 1) / shared}/${64 / shared}`;
    return { name: `${size} in`, diameterMm: mmFromIn((i + 1) / 64) };
  });
}

const numberLetterDrills = (): Drill[] =>
  gnuUnitsDrillSizes.map(({ name, diameterIn }) => ({ name, diameterMm: mmFromIn(diameterIn) }));

const drillsOf = (series: DrillSeries): readonly Drill[] =>
  ({ metric: metricDrills, fraction: fractionDrills, 'number-letter': numberLetterDrills })[series]();

/**
 * The drills of one series on either side of a hole that is asked for: both the same where a drill fits it. A clearance
 * hole wants the one that is not smaller, a lead hole in soft wood the one that is not larger.
 *
 * Metric: every 0.1 mm from 0.3 to 14 mm, every 0.5 mm to 25 mm. Fractions: every 1/64 in to 1 in. Numbers and letters:
 * No. 80 to No. 1, A to Z. Common practice of the trade, what shops sell differs.
 *
 * @param input - Diameter of the hole and series of drills.
 * @returns The drill not larger and the drill not smaller than the hole.
 * @throws RangeError where the diameter is outside its limits or the series is none of the three.
 * Source: for numbers and letters the units database of GNU units.
 * @example
 * ```ts
 * import { nearestDrills } from '@scantling/fastening';
 * nearestDrills({ holeDiameterMm: 3.33, series: 'metric' }) // => { notLarger: { name: '3.3 mm', diameterMm: 3.3 }, notSmaller: { name: '3.4 mm', diameterMm: 3.4 } }
 * nearestDrills({ holeDiameterMm: 4.4, series: 'fraction' }).notSmaller.name // => '3/16 in'
 * nearestDrills({ holeDiameterMm: 5.0, series: 'number-letter' }).notLarger.name // => 'No. 9'
 * nearestDrills({ holeDiameterMm: 11, series: 'number-letter' }).notSmaller // => null
 * ```
 */
export function nearestDrills(input: NearestDrillsInput): NearestDrills {
  const { holeDiameterMm, series } = input ?? {};
  requireInputs('nearestDrills', { holeDiameterMm }, { holeDiameterMm: { min: 0.1, max: 30 } });
  requireChoice('nearestDrills', 'series', series, ['metric', 'fraction', 'number-letter']);
  const drills = drillsOf(series);
  return {
    notLarger: drills.findLast(({ diameterMm }) => diameterMm <= holeDiameterMm + SAME_SIZE_MM) ?? null,
    notSmaller: drills.find(({ diameterMm }) => diameterMm >= holeDiameterMm - SAME_SIZE_MM) ?? null,
  };
}
