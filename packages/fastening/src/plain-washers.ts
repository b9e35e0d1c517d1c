import { requireInputs } from '@scantling/rules';
import { figureOf, isSameSize, mmFromIn, type ScrewFigure } from './screw.ts';
import { inchWashers, largeWashers, normalWashers } from './screw-tables.ts';

export interface PlainWashersInput {
  /** Nominal diameter of the screw, mm, 0.5 to 50. */
  readonly screwDiameterMm: number;
}

/** A washer that a table has for a size of screw. */
export interface PlainWasher {
  /** Normal and large of the metric tables; narrow and wide of the inch table, `undivided` below 1/4 in, where it has but one. */
  readonly series: 'normal' | 'large' | 'undivided' | 'narrow' | 'wide';
  readonly insideDiameterMm: ScrewFigure;
  readonly outsideDiameterMm: ScrewFigure;
  readonly thicknessMm: ScrewFigure;
}

/**
 * The plain washers that the tables have for a size of screw, of metric or inch series. Their outside is what has to
 * cover a slot; see `washerOverSlot`.
 *
 * @param input - Nominal diameter of the screw.
 * @returns The washers with their sources, the smaller one first; none where no table has the size.
 * @throws RangeError where the diameter is outside its limits.
 * Source: ISO 7089 and ISO 7093 for metric sizes, ASME B18.21.1, Table 1a, for inch sizes.
 * @example
 * ```ts
 * import { plainWashers } from '@scantling/fastening';
 * const [normal, large] = plainWashers({ screwDiameterMm: 6 });
 * [normal.outsideDiameterMm.value, large.outsideDiameterMm.value] // => [12, 18]
 * plainWashers({ screwDiameterMm: 6.35 }).map(({ series }) => series) // => ['narrow', 'wide']
 * plainWashers({ screwDiameterMm: 4.1656 }).map(({ series }) => series) // => ['undivided']
 * plainWashers({ screwDiameterMm: 6.2 }) // => []
 * ```
 */
export function plainWashers(input: PlainWashersInput): readonly PlainWasher[] {
  requireInputs('plainWashers', input, { screwDiameterMm: { min: 0.5, max: 50 } });
  const isThisSize = (diameterMm: number) => isSameSize(diameterMm, input.screwDiameterMm);
  const metric = (
    [
      ['normal', normalWashers],
      ['large', largeWashers],
    ] as const
  ).flatMap(([series, table]) =>
    table.rows
      .filter(({ diameterMm }) => isThisSize(diameterMm))
      .map((row) => ({
        series,
        insideDiameterMm: figureOf(table, row, 'insideDiameterMm'),
        outsideDiameterMm: figureOf(table, row, 'outsideDiameterMm'),
        thicknessMm: figureOf(table, row, 'thicknessMm'),
      })),
  );
  const inch = inchWashers.rows
    .filter(({ diameterIn }) => isThisSize(mmFromIn(diameterIn)))
    .map((row) => ({
      series: row.series,
      insideDiameterMm: figureOf(inchWashers, row, 'insideDiameterIn', mmFromIn),
      outsideDiameterMm: figureOf(inchWashers, row, 'outsideDiameterIn', mmFromIn),
      thicknessMm: figureOf(inchWashers, row, 'thicknessIn', mmFromIn),
    }));
  return [...metric, ...inch];
}
