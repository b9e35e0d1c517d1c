import { chooseScrewLength } from '@scantling/fastening';
import { millimetres } from '../lengths.ts';
import { plannedFixings } from '../parts/fixings.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Chosen } from '../result.ts';
import type { Basis } from '../season.ts';
import type { Sections } from '../sections.ts';

/**
 * The screw with most thread in the wood that leaves enough above its tip where the wood is thinnest: one length for all,
 * so that none is mistaken for another. Where none does, the longest that at least leaves the wood above it.
 */
export function chooseLength(plan: SettledPlan, basis: Basis, sections: Sections): Chosen {
  const { layersMm, stockLengthsMm, threadShare, tipLengthMm, leastThreadMm, leastStockMm, ...screws } =
    plan.screws as NonNullable<SettledPlan['screws']>;
  const terms = { layersMm, stockLengthsMm, threadShare, tipLengthMm, leastThreadMm, leastStockMm };
  const tried = { ...screws, ...terms, lengthMm: stockLengthsMm[0] as number };
  const fixings = plannedFixings(plan, basis.swing);
  const strip = sections.strip.planned(plan, basis);
  const at = sections.screws.planned({ ...plan, screws: tried }, fixings, strip)?.at ?? [];
  const topThicknessMm = Math.min(...at.map((screw) => screw.topThicknessMm));
  const { chosen, why, lengths } = chooseScrewLength({ ...terms, topThicknessMm });
  const safe = lengths.filter(({ stockAboveTipMm }) => stockAboveTipMm >= leastStockMm);
  const { lengthMm } = chosen ?? safe.at(-1) ?? (lengths[0] as (typeof lengths)[0]);
  const thin = at
    .filter(({ underStrip }) => underStrip)
    .map(({ name }) => name)
    .sort();
  const where = `${millimetres(topThicknessMm)} of wood${thin.length ? ` under the strip, at ${thin.join(', ')}` : ''}`;
  return {
    path: 'screws.length',
    value: lengthMm,
    says: chosen
      ? `${why} The most thread of the lengths in stock that fit ${where}.`
      : `No length in stock fits ${where}. ${why} Planned with ${millimetres(lengthMm)}.`,
    proven: true,
  };
}
