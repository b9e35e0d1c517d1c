import type { Citation } from '@scantling/rules';
import { movementCoefficientTable, woods } from '@scantling/species';

// The Wood Handbook prints shrinkage in Tables 4-3 and 4-4, and in Table 13-5 coefficients that follow from it.

/** A printed coefficient, and the printed shrinkage that it ought to follow from. */
export interface Pair {
  /** As Table 13-5 prints it. */
  readonly species: string;
  readonly cut: 'quartersawn' | 'flatsawn';
  readonly coefficientPerPct: number;
  readonly shrinkagePct: number;
  /** `text` where both figures were seen. */
  readonly confirmed: Citation['confirmed'];
}

/** Every row of the coefficients of one wood whose shrinkage is printed too. */
export const pairs: readonly Pair[] = movementCoefficientTable.flatMap((row): Pair[] => {
  const { species, confirmed, radialPerPct, tangentialPerPct } = row;
  const [wood, ...more] = woods.filter(({ printedAs }) => printedAs.includes(species));
  if (!wood || more.length > 0) return [];
  const { radialPct, tangentialPct } = wood.shrinkage;
  const cuts = [
    { cut: 'quartersawn', coefficientPerPct: radialPerPct, shrinkage: radialPct },
    { cut: 'flatsawn', coefficientPerPct: tangentialPerPct, shrinkage: tangentialPct },
  ] as const;
  return cuts.flatMap(({ shrinkage, ...rest }) => {
    if (!shrinkage) return [];
    const both = shrinkage.citation.confirmed === 'text' ? confirmed : 'memory';
    return [{ species, ...rest, shrinkagePct: shrinkage.value, confirmed: both }];
  });
});
