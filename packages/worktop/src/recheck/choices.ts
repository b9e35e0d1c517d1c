import type { SlidingPart } from '../plan/base.ts';
import type { Point } from '../plan/place.ts';
import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, ROUNDING_MM, same } from './finding.ts';

/** Places of a plan that may be left open, as the list of choices names them, with what was asked and what was settled. */
function openPlaces({ asked, plan }: WorktopPlan): [path: string, asked: unknown, settled: unknown][] {
  const slides = (asked.base.sliding ?? []).map(({ slideMm }, i): [string, unknown, unknown] => [
    `base.sliding[${i}].slide`,
    slideMm,
    plan.base.sliding?.[i]?.slideMm,
  ]);
  return [
    ['base.fixedLine', asked.base.fixedLineMm, plan.base.fixedLineMm],
    ...slides,
    ['holes.first', asked.holes.first, plan.holes.first],
    ['screws.length', asked.screws?.lengthMm, plan.screws?.lengthMm],
    ['glueUp.boardCount', asked.glueUp?.boardCount, plan.glueUp?.boardCount],
  ];
}

/** A plan as text, without the places that may be open and without what slides. */
function remainder({ base, holes, screws, glueUp, ...rest }: WorktopPlan['asked'] | WorktopPlan['plan']) {
  const { members: _, fixings: __, fixedLineMm: ___, sliding, ...standing } = base;
  return JSON.stringify({
    ...rest,
    base: { ...standing, sliding: sliding?.map(({ slideMm: _open, ...part }) => part) },
    holes: { ...holes, first: null },
    screws: screws && { ...screws, lengthMm: null },
    glueUp: glueUp && { ...glueUp, boardCount: null },
  });
}

const steps = { left: [-1, 0], right: [1, 0], front: [0, -1], back: [0, 1] } as const;

/** Everything of one kind stands as far from where it is drawn as the part that carries it was slid. */
function recheckSlid({ asked, plan }: WorktopPlan, list: 'members' | 'fixings'): Finding[] {
  const drawn: readonly (Point & { readonly name: string })[] = asked.base[list];
  const carrier = (name: string) => (part: Pick<SlidingPart, 'members' | 'fixings'>) =>
    part[list].includes(name);
  return [
    ...agree(`plan.base.${list}`, plan.base[list].length, drawn.length, 0),
    ...drawn.flatMap((thing, i) => {
      const path = `plan.base.${list}[${i}]`;
      const now = plan.base[list][i];
      const part = plan.base.sliding?.find(carrier(thing.name));
      const [x, y] = part ? steps[part.widensTowards] : [0, 0];
      const byMm = part?.slideMm ?? 0;
      const placed = { xMm: thing.xMm + x * byMm, yMm: thing.yMm + y * byMm };
      return [
        ...agree(`${path}.xMm`, now?.xMm ?? Number.NaN, placed.xMm),
        ...agree(`${path}.yMm`, now?.yMm ?? Number.NaN, placed.yMm),
        ...same(
          path,
          JSON.stringify({ ...now, xMm: 0, yMm: 0 }),
          JSON.stringify({ ...thing, xMm: 0, yMm: 0 }),
        ),
      ];
    }),
  ];
}

/** The longest thread that keeps its tip below the face, of the lengths in stock, where one does at every screw. */
function recheckLength({ plan, asked, screws }: WorktopPlan): Finding[] {
  if (asked.screws?.lengthMm !== 'choose' || !plan.screws || !screws) return [];
  const { stockLengthsMm, layersMm, threadShare, tipLengthMm, leastThreadMm, leastStockMm } = plan.screws;
  const thinMm = Math.min(...screws.at.map(({ topThicknessMm }) => topThicknessMm));
  const outsideMm = layersMm.reduce((sum, mm) => sum + mm, 0);
  const threadMm = (lengthMm: number) =>
    Math.min(lengthMm - outsideMm, threadShare * lengthMm) - Math.min(tipLengthMm, threadShare * lengthMm);
  const fitting = stockLengthsMm.filter(
    (lengthMm) =>
      thinMm - (lengthMm - outsideMm) >= leastStockMm - ROUNDING_MM &&
      lengthMm > outsideMm &&
      threadMm(lengthMm) >= leastThreadMm - ROUNDING_MM,
  );
  const most = Math.max(...fitting.map(threadMm));
  return holds(
    'plan.screws.lengthMm',
    fitting.length === 0 || threadMm(plan.screws.lengthMm) >= most - ROUNDING_MM,
    'another length in stock has more thread in the wood',
  );
}

/** The plan is what was asked, with a choice for each place that was open and for no other, and nothing slid too far. */
export function recheckChoices(result: WorktopPlan): Finding[] {
  const { asked, plan, chosen } = result;
  const places = openPlaces(result);
  const open = places.filter(([, given]) => given === 'choose').map(([path]) => path);
  return [
    ...same('chosen', [...chosen.map(({ path }) => path)].sort().join(), [...open].sort().join()),
    ...places.flatMap(([path, given, settled]) => {
      const choice = given === 'choose' ? chosen.find((one) => one.path === path)?.value : given;
      return same(`plan.${path}`, JSON.stringify(settled), JSON.stringify(choice));
    }),
    ...same('plan', remainder(plan), remainder(asked)),
    ...recheckSlid(result, 'members'),
    ...recheckSlid(result, 'fixings'),
    ...(plan.base.sliding ?? []).flatMap(({ slideMm, leastSlideMm, mostSlideMm }, i) =>
      holds(
        `plan.base.sliding[${i}].slideMm`,
        slideMm >= leastSlideMm - ROUNDING_MM && slideMm <= mostSlideMm + ROUNDING_MM,
        'slides further than it may',
      ),
    ),
    ...recheckLength(result),
  ];
}
