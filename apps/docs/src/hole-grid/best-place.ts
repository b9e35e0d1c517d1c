import { type BestOffset, bestOffset, type GridTerms } from '@scantling/grids';
import type { Outcome, Say } from '../calculator/calculation.ts';
import { asking } from '../workers/ask.ts';
import type { Grid, Place } from './layout.ts';

const ask = asking<GridTerms, BestOffset>(
  () => new Worker(new URL('../workers/best-offset.ts', import.meta.url), { type: 'module' }),
);

/** A proof may take a second or two: an open page has it done by a worker. */
const bestOf = async (terms: GridTerms) => (import.meta.env.SSR ? bestOffset(terms) : ask(terms));

/** The answer at the best place for a grid, and what is proven of it; where there is none, `otherwise` with a remark. */
export async function bestPlace(
  { lengthMm, widthMm, columns, rows, members, fixedLineYMm, swellPct, shrinkPct, ...grid }: Grid,
  otherwise: Outcome,
  outcomeAt: (first: Place) => Outcome,
  say: Say,
): Promise<Outcome> {
  const { firstHole, keptCount, spareMm, spareBoundMm, proven } = await bestOf({
    panel: { lengthMm, widthMm },
    pitchXMm: grid.pitchXMm,
    pitchYMm: grid.pitchYMm,
    holeDiameterMm: grid.holeDiameterMm,
    edgeMarginMm: grid.edgeMarginMm,
    ...(columns !== null && { columns }),
    ...(rows !== null && { rows }),
    keepOuts: members.map(({ name: _, ...member }, i) => ({
      ...member,
      ...{ shape: 'rectangle', id: `${i}`, belongsTo: 'base' },
    })),
    movement: { fixedLineYMm, swellPct, shrinkPct },
  });
  if (!firstHole || spareMm === null || spareBoundMm === null) {
    const says = proven ? 'Wherever the grid begins, no hole is clear.' : 'No place was found for any hole.';
    return { ...otherwise, notes: [`${says} Shown is the grid where you put it.`] };
  }
  const outcome = outcomeAt(firstHole);
  return {
    ...outcome,
    figures: [
      ...outcome.figures,
      { name: 'bestXMm', label: 'First hole, from the left', value: firstHole.xMm, unit: 'mm' },
      { name: 'bestYMm', label: 'First hole, from the front', value: firstHole.yMm, unit: 'mm' },
    ],
    reasons: [
      `Here ${keptCount} holes are clear, and the tightest has ${say(spareMm)} beyond what is asked for.`,
      proven
        ? `Proven: no place keeps more holes with ${say(0.01)} to spare, and none that keeps as many leaves the tightest more than ${say(spareBoundMm)}.`
        : `Not proven, the search was stopped: with as many holes the tightest has no more than ${say(spareBoundMm)} anywhere, but another place may keep more of them.`,
      ...(outcome.reasons ?? []),
    ],
  };
}
