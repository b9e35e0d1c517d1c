import { defineRule, plusZero, requireInputs, requireNumber } from '@scantling/rules';
import { flooringInspectionNote, timberCourseProblem, woodHandbook2010 } from '@scantling/rules/sources';
import { boardsDiffer } from '../cautions.ts';

const limits = {
  widthMm: { min: 0, max: 10_000 },
  shrinkagePct: { min: 0, max: 30 },
  fibreSaturationPct: { min: 20, max: 40 },
  fromMoisturePct: { min: 0, max: 40 },
  toMoisturePct: { min: 0, max: 40 },
} as const;

export interface WidthChangeByShrinkageInput {
  /** Width across the grain now, mm, 0 to 10 000. */
  readonly widthMm: number;
  /** Shrinkage of the species and cut from green to ovendry, % of the green width, 0 to 30. */
  readonly shrinkagePct: number;
  /** Moisture content below which the species shrinks, % of ovendry mass, 20 to 40. */
  readonly fibreSaturationPct: number;
  /** Moisture content now, % of ovendry mass, 0 to fibre saturation. */
  readonly fromMoisturePct: number;
  /** Moisture content then, % of ovendry mass, 0 to fibre saturation. */
  readonly toMoisturePct: number;
}

export interface WidthChangeByShrinkage {
  /** Change in width, mm: positive where the wood swells. */
  readonly changeMm: number;
}

const belowSaturation = (input: WidthChangeByShrinkageInput) =>
  Math.max(input.fromMoisturePct, input.toMoisturePct) <= input.fibreSaturationPct;

/**
 * How much a board or panel changes in width between two moisture contents, by the shrinkage of its species and
 * cut. Wood is taken to shrink in a straight line from fibre saturation to ovendry: for most woods from about 30 %
 * moisture content; northern white-cedar, western redcedar and redwood begin near 22 %, and move a third more for it.
 *
 * @returns The change in mm: positive where the wood swells, negative where it shrinks.
 * @throws RangeError where an input is outside its limits, or a moisture content above fibre saturation.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 13-3, for any moisture content up to fibre saturation.
 * @example
 * ```ts
 * import { widthChangeByShrinkage } from '@scantling/movement';
 * // White fir, flatsawn, 232.41 mm wide, from 8 % to 11 %: 232.41 × 3 / (3000 / 7 − 30 + 8)
 * const fir = { widthMm: 232.41, shrinkagePct: 7, fibreSaturationPct: 30, fromMoisturePct: 8 };
 * widthChangeByShrinkage({ ...fir, toMoisturePct: 11 }).changeMm // => 1.7149
 * widthChangeByShrinkage({ ...fir, toMoisturePct: 31 }) // throws widthChangeByShrinkage requires toMoisturePct between 0 and 30, got 31
 * ```
 */
export function widthChangeByShrinkage(input: WidthChangeByShrinkageInput): WidthChangeByShrinkage {
  requireInputs('widthChangeByShrinkage', input, limits);
  const { widthMm, shrinkagePct, fibreSaturationPct, fromMoisturePct, toMoisturePct } = input;
  const unsaturated = { min: 0, max: fibreSaturationPct };
  requireNumber('widthChangeByShrinkage', 'fromMoisturePct', fromMoisturePct, unsaturated);
  requireNumber('widthChangeByShrinkage', 'toMoisturePct', toMoisturePct, unsaturated);
  // Eq. 13-3 multiplied through by S: the same number, and none of a wood that does not shrink.
  const changeMm =
    (widthMm * shrinkagePct * (toMoisturePct - fromMoisturePct)) /
    (100 * fibreSaturationPct - (fibreSaturationPct - fromMoisturePct) * shrinkagePct);
  return { changeMm: plusZero(changeMm) };
}

/** The width when green, and the part of it that each 1 % of moisture content takes. */
function byGreenWidth(input: WidthChangeByShrinkageInput): number {
  const { widthMm, shrinkagePct, fibreSaturationPct, fromMoisturePct, toMoisturePct } = input;
  const perPct = shrinkagePct / 100 / fibreSaturationPct;
  const greenMm = widthMm / (1 - perPct * (fibreSaturationPct - fromMoisturePct));
  return greenMm * perPct * (toMoisturePct - fromMoisturePct);
}

/** Eq. 13-2, with the coefficient that follows from the shrinkage. */
function byCoefficient(input: WidthChangeByShrinkageInput): number {
  const { widthMm, shrinkagePct, fibreSaturationPct, fromMoisturePct, toMoisturePct } = input;
  const coefficientPerPct = 1 / ((100 * fibreSaturationPct) / shrinkagePct - fibreSaturationPct + 10);
  return widthMm * coefficientPerPct * (toMoisturePct - fromMoisturePct);
}

export const widthChangeByShrinkageRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/width-change-by-shrinkage',
  title: 'Change in width, by shrinkage',
  summary:
    'How much a board or panel swells or shrinks across the grain between any two moisture contents, from the shrinkage that wood tables print.',
  basis: 'measured',
  inputs: {
    widthMm: {
      kind: 'number',
      label: 'Width',
      unit: 'mm',
      ...limits.widthMm,
      help: 'Across the grain, as it is now.',
    },
    shrinkagePct: {
      kind: 'number',
      label: 'Shrinkage, green to ovendry',
      unit: '%',
      ...limits.shrinkagePct,
      help: 'Tangential for flatsawn boards, radial for quartersawn ones.',
    },
    fibreSaturationPct: {
      kind: 'number',
      label: 'Fibre saturation point',
      unit: '%',
      ...limits.fibreSaturationPct,
      help: '30 for most woods; 22 for northern white-cedar, western redcedar and redwood.',
    },
    fromMoisturePct: { kind: 'number', label: 'Moisture content now', unit: '%', ...limits.fromMoisturePct },
    toMoisturePct: { kind: 'number', label: 'Moisture content then', unit: '%', ...limits.toMoisturePct },
  },
  outputs: { changeMm: { label: 'Change in width', unit: 'mm', help: 'Positive where the wood swells.' } },
  compute: widthChangeByShrinkage,
  formula: String.raw`\Delta D = \frac{D_I \, (M_F - M_I)}{100 \, M_{fs} / S - M_{fs} + M_I}`,
  symbols: {
    '\\Delta D': 'change in width',
    D_I: 'width now',
    S: 'shrinkage from green to ovendry, %',
    'M_{fs}': 'fibre saturation point, %',
    M_I: 'moisture content now, %',
    M_F: 'moisture content then, %',
  },
  requires: [{ says: 'no moisture content is above the fibre saturation point', holds: belowSaturation }],
  sources: [
    {
      source: woodHandbook2010,
      at: 'Eq. 13-3, p. 13-17, with 30 % for the fibre saturation point, or 22 % for the woods that have it',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: {
        widthMm: 9.15 * 25.4,
        shrinkagePct: 7,
        fibreSaturationPct: 30,
        fromMoisturePct: 8,
        toMoisturePct: 11,
      },
      expect: { changeMm: { printed: '0.067', unit: 'in', times: 25.4 } },
      within: {
        value: 0.0132,
        because:
          'The handbook works this board out with the coefficient of Eq. 13-2, a share of the width at 10 % moisture content; this equation takes the width at 8 %.',
      },
      from: {
        source: woodHandbook2010,
        at: 'ch. 13, worked example: flat-grained white fir board, 9.15 in, 8 to 11 %',
        confirmed: 'memory',
      },
    },
    {
      given: {
        widthMm: 2.25 * 25.4,
        shrinkagePct: 8.6,
        fibreSaturationPct: 30,
        fromMoisturePct: 8,
        toMoisturePct: 5,
      },
      expect: { changeMm: { printed: '-0.021', unit: 'in', times: 25.4 } },
      from: {
        source: flooringInspectionNote,
        at: 'example: plainsawn red oak, 2¼ in wide, 8 to 5 %',
        confirmed: 'text',
        erratum: 'It shares the shrinkage out over 28 %, of the width at 8 %; the figure is the same.',
      },
    },
    {
      given: {
        widthMm: 13.25 * 25.4,
        shrinkagePct: 6,
        fibreSaturationPct: 30,
        fromMoisturePct: 19,
        toMoisturePct: 10,
      },
      expect: { changeMm: { printed: '-0.2385', unit: 'in', times: 25.4 } },
      within: {
        value: 0.14,
        because:
          'The course takes 6 / 30 = 0.2 % for each 1 % of the width at 19 %; this equation takes it of the green width.',
      },
      from: {
        source: timberCourseProblem,
        at: 'shrinkage of a depth of 13.25 in, 19 to 10 %, at 0.2 % for each 1 %',
        confirmed: 'text',
      },
    },
    {
      given: {
        widthMm: 600,
        shrinkagePct: 9.9,
        fibreSaturationPct: 30,
        fromMoisturePct: 12,
        toMoisturePct: 7,
      },
      expect: { changeMm: '-10.5252' },
      from: {
        workedByHand: '3000 / 9.9 − 30 + 12 = 285.0303; 600 × (7 − 12) / 285.0303 = −10.5252 mm',
      },
    },
    {
      // Western redcedar, flatsawn.
      given: { widthMm: 600, shrinkagePct: 5, fibreSaturationPct: 22, fromMoisturePct: 8, toMoisturePct: 11 },
      expect: { changeMm: '4.2254' },
      from: { workedByHand: '2200 / 5 − 22 + 8 = 426; 600 × (11 − 8) / 426 = 4.2254 mm' },
    },
  ],
  laws: [
    {
      of: 'changeMm',
      by: {
        widthMm: 'proportional',
        fromMoisturePct: 'decreasing',
        toMoisturePct: 'linear',
      },
    },
    { of: 'changeMm', by: { toMoisturePct: 'increasing' } },
  ],
  peers: [
    {
      name: 'the change from the green width and the shrinkage to each moisture content',
      of: 'changeMm',
      compute: byGreenWidth,
      relative: 1e-12,
      source: { source: woodHandbook2010, at: 'Eq. 4-7, ch. 4', confirmed: 'memory' },
    },
    {
      name: 'the change by coefficient, the coefficient taken from the shrinkage',
      of: 'changeMm',
      compute: byCoefficient,
      // The coefficient is a share of the width at 10 % moisture content; at 6 or 14 % the width differs by 4 C.
      relative: 0.026,
      over: {
        shrinkagePct: [0, 13],
        fibreSaturationPct: [22, 30],
        fromMoisturePct: [6, 14],
        toMoisturePct: [6, 14],
      },
      source: {
        source: woodHandbook2010,
        at: 'ch. 13, the equation that goes with Table 13-5, for 6 to 14 %, as an extension service reprints it',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
  ],
  cautions: [boardsDiffer],
}));
