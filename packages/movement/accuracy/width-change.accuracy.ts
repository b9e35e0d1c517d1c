import type { AccuracyTable, Deviation } from '../../../tests-shared/src/accuracy.ts';
import { coefficientFromShrinkage, widthChange, widthChangeByShrinkage } from '../src/index.ts';
import { type Pair, pairs } from '../test/coefficient-pairs.ts';

/** Half of the last digit of the coefficient, and what half of the last digit of the shrinkage makes of it. */
function rounding({ shrinkagePct }: Pair, fibreSaturationPct: number): number {
  const at = (shrinkage: number) =>
    coefficientFromShrinkage({ shrinkagePct: shrinkage, fibreSaturationPct }).coefficientPerPct;
  return 0.000_005 + (at(shrinkagePct + 0.05) - at(shrinkagePct - 0.05)) / 2;
}

const derived = (pair: Pair, fibreSaturationPct: number): Deviation => ({
  printed: pair.coefficientPerPct,
  ours: coefficientFromShrinkage({ shrinkagePct: pair.shrinkagePct, fibreSaturationPct }).coefficientPerPct,
  known: rounding(pair, fibreSaturationPct),
  confirmed: pair.confirmed,
});

const SATURATED_EARLY = [
  'Cedar, northern white',
  'Cedar, western red',
  'Redwood, old-growth',
  'Redwood, second-growth',
];
const early = pairs.filter(({ species }) => SATURATED_EARLY.includes(species));
const others = pairs.filter(({ species }) => !SATURATED_EARLY.includes(species));

const width = { widthMm: 600, fromMoisturePct: 8, toMoisturePct: 11 };

const tables: readonly AccuracyTable[] = [
  {
    title: '`coefficientFromShrinkage`: Wood Handbook, Table 13-5 from Tables 4-3 and 4-4, 30 %',
    unit: '',
    decimals: 5,
    remark:
      'Those that differ belong to woods that share one figure with their group, to imported woods and to a misprint; each has an erratum.',
    deviations: others.map((pair) => derived(pair, 30)),
  },
  {
    title: '`coefficientFromShrinkage`: the cedars and redwoods of 22 %',
    unit: '',
    decimals: 5,
    deviations: early.map((pair) => derived(pair, 22)),
  },
  {
    title: '`widthChange`: `widthChangeByShrinkage` of the same wood, 600 mm from 8 to 11 %',
    unit: 'mm',
    decimals: 2,
    remark:
      'The woods that differ are those whose printed coefficient does not follow from their printed shrinkage.',
    deviations: pairs.map(({ species, coefficientPerPct, shrinkagePct }) => ({
      printed: widthChangeByShrinkage({
        ...width,
        shrinkagePct,
        fibreSaturationPct: SATURATED_EARLY.includes(species) ? 22 : 30,
      }).changeMm,
      ours: widthChange({ ...width, coefficientPerPct }).changeMm,
      // What the rounding of both makes of 3 % on 600 mm, and the coefficient's own base, the width at 10 %.
      known: 1800 * (0.000_005 + (coefficientPerPct * 0.05) / shrinkagePct + 2 * coefficientPerPct ** 2),
      confirmed: 'computed' as const,
    })),
  },
];

export default tables;
