import { defineRule, requireInputs } from '@scantling/rules';
import { gnuUnits, navyEngineeringAid, timberFraming2004 } from '@scantling/rules/sources';

const limits = {
  thicknessMm: { min: 1, max: 1000 },
  widthMm: { min: 1, max: 5000 },
  lengthMm: { min: 1, max: 30_000 },
} as const;

export interface BoardFeetInput {
  /** Nominal thickness, mm, 1 to 1000; less than an inch counts as an inch. */
  readonly thicknessMm: number;
  /** Nominal width, mm, 1 to 5000. */
  readonly widthMm: number;
  /** Length, mm, 1 to 30 000. */
  readonly lengthMm: number;
}

export interface BoardFeet {
  /** Board measure, bd ft. */
  readonly volumeBoardFt: number;
}

/**
 * Board measure of one board, by its nominal sizes. Lumber thinner than an inch counts as an inch thick.
 *
 * @returns Board feet, not rounded.
 * @throws RangeError where an input is outside its limits.
 * Source: a training manual of the U.S. Navy, Engineering Aid Basic, ch. 6.
 * @example
 * ```ts
 * import { boardFeet } from '@scantling/stock';
 * // A two by four, 14 feet long: 2 × 4 × 14 / 12
 * boardFeet({ thicknessMm: 50.8, widthMm: 101.6, lengthMm: 4267.2 }).volumeBoardFt // => 9.3333
 * ```
 */
export function boardFeet(input: BoardFeetInput): BoardFeet {
  requireInputs('boardFeet', input, limits);
  const { thicknessMm, widthMm, lengthMm } = input;
  const volumeMm3 = Math.max(thicknessMm, 25.4) * widthMm * lengthMm;
  // 144 in³ is 2 359 737.216 mm³.
  return { volumeBoardFt: volumeMm3 / 2_359_737.216 };
}

export const boardFeetRule = /* @__PURE__ */ defineRule(() => {
  const scale = (at: string) => ({
    source: timberFraming2004,
    at: `lumber scale: ${at}`,
    confirmed: 'text' as const,
    tier: 'reprint' as const,
  });
  return {
    id: 'stock/board-feet',
    title: 'Board feet',
    summary: 'What a board counts for where lumber is sold by the board foot, by its nominal sizes.',
    basis: 'exact',
    inputs: {
      thicknessMm: {
        kind: 'number',
        label: 'Thickness',
        unit: 'mm',
        ...limits.thicknessMm,
        help: 'Nominal, or rough-sawn: not the thickness after planing. Below an inch it counts as an inch.',
      },
      widthMm: {
        kind: 'number',
        label: 'Width',
        unit: 'mm',
        ...limits.widthMm,
        help: 'Nominal, or rough-sawn.',
      },
      lengthMm: { kind: 'number', label: 'Length', unit: 'mm', ...limits.lengthMm },
    },
    outputs: { volumeBoardFt: { label: 'Board measure', unit: 'bd ft' } },
    compute: boardFeet,
    formula: String.raw`V = \frac{\max(T, 1) \times W \times L}{12}`,
    symbols: { V: 'board feet', T: 'thickness in inches', W: 'width in inches', L: 'length in feet' },
    inSymbols: (input, output) => ({
      V: output.volumeBoardFt,
      T: input.thicknessMm / 25.4,
      W: input.widthMm / 25.4,
      L: input.lengthMm / 304.8,
    }),
    sources: [
      {
        source: navyEngineeringAid,
        at: 'ch. 6, p. 6-3: the board foot; nominal sizes; less than 1 in counts as 1 in',
        confirmed: 'text',
      },
      { source: gnuUnits, at: 'board foot: 144 in³', confirmed: 'text', tier: 'reprint' },
    ],
    examples: [
      {
        given: { thicknessMm: 4 * 25.4, widthMm: 4 * 25.4, lengthMm: 8 * 304.8 },
        expect: { volumeBoardFt: '10.7' },
        from: scale('4 × 4 in, 8 ft'),
      },
      {
        given: { thicknessMm: 8 * 25.4, widthMm: 10 * 25.4, lengthMm: 14 * 304.8 },
        expect: { volumeBoardFt: '93.3' },
        from: scale('8 × 10 in, 14 ft'),
      },
      {
        given: { thicknessMm: 19.05, widthMm: 152.4, lengthMm: 2438.4 },
        expect: { volumeBoardFt: '4.0' },
        from: { workedByHand: '3/4 in counts as 1 in; 1 × 6 × 8 / 12 = 4.0 bd ft' },
      },
    ],
    laws: [
      {
        of: 'volumeBoardFt',
        by: { widthMm: 'proportional', lengthMm: 'proportional', thicknessMm: 'increasing' },
      },
    ],
  };
});
