import {
  checkRange,
  defineRule,
  plusZero,
  type RangeNote,
  type RuleRange,
  requireInputs,
  requireNumber,
} from '@scantling/rules';
import { flooringStabilityTip2016, woodHandbook2010, woodMovementChart2021 } from '@scantling/rules/sources';
import { boardsDiffer } from '../cautions.ts';

const limits = {
  widthMm: { min: 0, max: 10_000 },
  coefficientPerPct: { min: 0, max: 0.02 },
  fromMoisturePct: { min: 0, max: 30 },
  toMoisturePct: { min: 0, max: 30 },
} as const;

export interface WidthChangeInput {
  /** Width across the grain now, mm, 0 to 10 000. */
  readonly widthMm: number;
  /** Dimensional change coefficient of the species and cut, per 1 % of moisture content, 0 to 0.02. */
  readonly coefficientPerPct: number;
  /** Moisture content now, % of ovendry mass, 0 to 30. */
  readonly fromMoisturePct: number;
  /** Moisture content then, % of ovendry mass, 0 to 30. */
  readonly toMoisturePct: number;
}

export interface WidthChange {
  /** Change in width, mm: positive where the wood swells. */
  readonly changeMm: number;
}

/**
 * How much a board or panel changes in width between two moisture contents, by the coefficient of its species
 * and cut.
 *
 * @returns The change in mm: positive where the wood swells, negative where it shrinks.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 13-2, claimed for 6 to 14 % moisture content.
 * @example
 * ```ts
 * import { widthChange } from '@scantling/movement';
 * // Sugar maple, flatsawn, 600 mm wide, from 8 % to 11 %: 600 × 0.00353 × 3
 * widthChange({ widthMm: 600, coefficientPerPct: 0.00353, fromMoisturePct: 8, toMoisturePct: 11 }).changeMm // => 6.354
 * ```
 */
export function widthChange(input: WidthChangeInput): WidthChange {
  const { widthMm, coefficientPerPct, fromMoisturePct, toMoisturePct } = input ?? {};
  requireNumber('widthChange', 'widthMm', widthMm, limits.widthMm);
  requireNumber('widthChange', 'coefficientPerPct', coefficientPerPct, limits.coefficientPerPct);
  requireNumber('widthChange', 'fromMoisturePct', fromMoisturePct, limits.fromMoisturePct);
  requireNumber('widthChange', 'toMoisturePct', toMoisturePct, limits.toMoisturePct);
  return { changeMm: plusZero(widthMm * coefficientPerPct * (toMoisturePct - fromMoisturePct)) };
}

/** Eq. 13-3, with the total shrinkage S that a coefficient C = 1 / (3000 / S − 30 + 10) stands for. */
function byTotalShrinkage(input: WidthChangeInput): number {
  const { widthMm, coefficientPerPct, fromMoisturePct, toMoisturePct } = input;
  const shrinkagePct = (3000 * coefficientPerPct) / (1 + 20 * coefficientPerPct);
  return (widthMm * (toMoisturePct - fromMoisturePct)) / (3000 / shrinkagePct - 30 + fromMoisturePct);
}

/** What it takes, and where its source claims it. */
const range = (): RuleRange<WidthChangeInput, WidthChange> => ({
  inputs: {
    widthMm: { kind: 'number', label: 'Width', unit: 'mm', ...limits.widthMm, help: 'Across the grain.' },
    coefficientPerPct: {
      kind: 'number',
      label: 'Dimensional change coefficient',
      unit: '1/%',
      ...limits.coefficientPerPct,
      help: 'Tangential for flatsawn boards, radial for quartersawn ones.',
    },
    fromMoisturePct: { kind: 'number', label: 'Moisture content now', unit: '%', ...limits.fromMoisturePct },
    toMoisturePct: { kind: 'number', label: 'Moisture content then', unit: '%', ...limits.toMoisturePct },
  },
  valid: { fromMoisturePct: [6, 14], toMoisturePct: [6, 14] },
});

/**
 * What lies outside the range that the source of `widthChange` claims, without the rest of its card.
 *
 * @returns One note for each figure outside the claimed range; none where all is inside.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 13-2, claimed for 6 to 14 % moisture content.
 * @example
 * ```ts
 * import { widthChangeNotes } from '@scantling/movement';
 * const board = { widthMm: 600, coefficientPerPct: 0.00353, fromMoisturePct: 8 };
 * widthChangeNotes({ ...board, toMoisturePct: 20 })[0].message // => 'Moisture content then 20 % is outside 6 to 14 %, the range that the source claims.'
 * widthChangeNotes({ ...board, toMoisturePct: 11 }) // => []
 * ```
 */
export function widthChangeNotes(input: WidthChangeInput): RangeNote[] {
  requireInputs('widthChangeNotes', input, limits);
  return checkRange(range(), input);
}

export const widthChangeRule = /* @__PURE__ */ defineRule(() => ({
  id: 'movement/width-change',
  title: 'Change in width, by coefficient',
  summary: 'How much a board or panel swells or shrinks across the grain between two moisture contents.',
  basis: 'measured',
  ...range(),
  outputs: { changeMm: { label: 'Change in width', unit: 'mm' } },
  compute: widthChange,
  formula: String.raw`\Delta D = D_I \, C \, (M_F - M_I)`,
  symbols: {
    D_I: 'width now',
    C: 'dimensional change coefficient',
    M_I: 'moisture content now',
    M_F: 'moisture content then',
  },
  inSymbols: (input, output) => ({
    '\\Delta D': output.changeMm,
    D_I: input.widthMm,
    C: input.coefficientPerPct,
    M_I: input.fromMoisturePct,
    M_F: input.toMoisturePct,
  }),
  sources: [
    {
      source: woodHandbook2010,
      at: 'ch. 13, the equation that goes with Table 13-5, for 6 to 14 %, as an extension service reprints it',
      confirmed: 'text',
      tier: 'reprint',
    },
    { source: woodHandbook2010, at: 'its number: Eq. 13-2', confirmed: 'text' },
    { source: woodHandbook2010, at: 'its page: 13-17', confirmed: 'memory' },
  ],
  examples: [
    {
      given: { widthMm: 9.15 * 25.4, coefficientPerPct: 0.00245, fromMoisturePct: 8, toMoisturePct: 11 },
      expect: { changeMm: { printed: '0.067', unit: 'in', times: 25.4 } },
      from: {
        source: woodHandbook2010,
        at: 'ch. 13, worked example: flat-grained white fir board, 9.15 in, 8 to 11 %',
        confirmed: 'memory',
      },
    },
    {
      given: { widthMm: 5 * 25.4, coefficientPerPct: 0.00369, fromMoisturePct: 6, toMoisturePct: 9 },
      expect: { changeMm: { printed: '0.055', unit: 'in', times: 25.4 } },
      from: {
        source: flooringStabilityTip2016,
        at: 'example: red oak, 5 in wide, 6 to 9 %',
        confirmed: 'text',
      },
    },
    {
      // The article states a change of 6 points; these are six within the range of the coefficient.
      given: { widthMm: 8 * 25.4, coefficientPerPct: 0.0026, fromMoisturePct: 6, toMoisturePct: 12 },
      expect: { changeMm: { printed: '0.1248', unit: 'in', times: 25.4 } },
      from: {
        source: woodMovementChart2021,
        at: 'example: flatsawn red alder, 8 in wide, 6 % change',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { widthMm: 600, coefficientPerPct: 0.00353, fromMoisturePct: 12, toMoisturePct: 7 },
      expect: { changeMm: '-10.590' },
      from: { workedByHand: '600 × 0.00353 = 2.118 mm for each 1 %; 2.118 × (7 − 12) = −10.590 mm' },
    },
  ],
  laws: [
    {
      of: 'changeMm',
      by: {
        widthMm: 'proportional',
        coefficientPerPct: 'proportional',
        fromMoisturePct: 'decreasing',
        toMoisturePct: 'increasing',
      },
    },
    { of: 'changeMm', by: { fromMoisturePct: 'linear', toMoisturePct: 'linear' } },
  ],
  peers: [
    {
      name: 'the change by total shrinkage, from 30 % fibre saturation',
      of: 'changeMm',
      compute: byTotalShrinkage,
      // The coefficient is a share of the width at 10 % moisture content; at 6 or 14 % the width differs by 4 C.
      relative: 0.025,
      over: { coefficientPerPct: [0, 0.006], fromMoisturePct: [6, 14], toMoisturePct: [6, 14] },
      source: { source: woodHandbook2010, at: 'Eq. 13-3, p. 13-17', confirmed: 'memory' },
    },
  ],
  cautions: [boardsDiffer],
}));
