import type { Plan, SettledPlan } from './plan/plan.ts';
import type { Chosen } from './result.ts';
import type { Basis } from './season.ts';
import type { Sections } from './sections.ts';
import { chooseBoardCount } from './settle/board-count.ts';
import { chooseLine } from './settle/line.ts';
import { firstChosen, lineChosen, slideChosen } from './settle/says.ts';
import { chooseLength } from './settle/screw-length.ts';

/** A plan with every choice made, and what was chosen. */
export interface Settlement {
  readonly settled: SettledPlan;
  readonly chosen: readonly Chosen[];
}

/** What depends on each other: where the top is held, how far the base's parts slide, where the grid begins. */
function settleBase(plan: Plan, { swing }: Basis): Settlement {
  const line = chooseLine({ plan, swing });
  const { placement, fixedLineMm } = line.held;
  const sliding = plan.base.sliding ?? [];
  return {
    settled: {
      ...plan,
      base: {
        ...plan.base,
        ...placement.base,
        fixedLineMm,
        ...(plan.base.sliding && {
          sliding: sliding.map((part, i) => ({ ...part, slideMm: placement.slidesMm[i] as number })),
        }),
      },
      holes: { ...plan.holes, first: placement.first },
    } as SettledPlan,
    chosen: [
      ...(plan.base.fixedLineMm === 'choose' ? [lineChosen(plan, line)] : []),
      ...sliding.flatMap((part, i) =>
        part.slideMm === 'choose' ? [slideChosen(plan, part, i, placement)] : [],
      ),
      ...(plan.holes.first === 'choose' ? [firstChosen(plan, placement)] : []),
    ],
  };
}

/** Makes the choices that a plan leaves open, together where they depend on each other. */
export function settle(plan: Plan, basis: Basis, sections: Sections): Settlement {
  const { settled, chosen } = settleBase(plan, basis);
  const { screws, glueUp } = plan;
  const screw = screws?.lengthMm === 'choose' ? chooseLength(settled, basis, sections) : null;
  const boards = glueUp?.boardCount === 'choose' ? chooseBoardCount(settled, basis, sections) : null;
  return {
    settled: {
      ...settled,
      ...(screw && settled.screws && { screws: { ...settled.screws, lengthMm: screw.value as number } }),
      ...(boards && settled.glueUp && { glueUp: { ...settled.glueUp, boardCount: boards.value as number } }),
    },
    chosen: [...chosen, ...(screw ? [screw] : []), ...(boards ? [boards] : [])],
  };
}
