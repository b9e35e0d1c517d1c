import type { SlidingPart } from './base.ts';
import { type Claim, type Conflict, claim, inOrder, oneOf, ownNames } from './claim.ts';
import { drillingClaims } from './drilling.ts';
import { MOST_HOLES, position } from './limits.ts';
import type { Plan } from './plan.ts';
import { glueUpClaims, screwClaims, shopClaims, stripClaims } from './section-claims.ts';
import { calendarClaims, finishClaims, stockClaims } from './stock-claims.ts';
import { accessoryClaims, liftClaims, loadClaims, templateClaims } from './use-claims.ts';

/** Names that mean something else in a report. */
const edges = ['left edge', 'right edge', 'front edge', 'back edge'];

function nameClaims({ top, base, accessories }: Plan): Claim[] {
  const taken = new Set([...edges, ...base.fixings.map(({ name }) => `screw ${name}`)]);
  return [
    ...ownNames('base.members', base.members, taken),
    ...ownNames('top.inlays', top.inlays, taken),
    ...ownNames('base.fixings', base.fixings, taken),
    ...ownNames('base.sliding', base.sliding ?? [], new Set()),
    ...ownNames('accessories', accessories ?? [], new Set()),
  ];
}

function holeClaims({ top, holes }: Plan): Claim[] {
  const { first, diameterMm, pitchXMm, pitchYMm, columns, rows } = holes;
  const diameter = `at least the diameter of a hole, ${diameterMm} mm`;
  const few = `so many that ${MOST_HOLES} holes are not passed; with ${rows} rows these are ${columns * rows}`;
  const within = (path: string, given: number, most: number) =>
    claim(path, given >= 0 && given <= most, `a place on the top, between 0 and ${most} mm`, given);
  return [
    claim('holes.pitchXMm', pitchXMm >= diameterMm, diameter, pitchXMm),
    claim('holes.pitchYMm', pitchYMm >= diameterMm, diameter, pitchYMm),
    claim('holes.columns', columns * rows <= MOST_HOLES, few, columns),
    ...(first === 'choose'
      ? []
      : [
          within('holes.first.xMm', first.xMm, top.lengthMm),
          within('holes.first.yMm', first.yMm, top.widthMm),
        ]),
  ];
}

/** Nothing slides so far that its place would be a slip of the pen. */
function reachClaims({ base }: Plan): Claim[] {
  return (base.sliding ?? []).flatMap((part, i) => {
    const carried = [
      ...base.members.filter(({ name }) => part.members.includes(name)),
      ...base.fixings.filter(({ name }) => part.fixings.includes(name)),
    ];
    const along = part.widensTowards === 'left' || part.widensTowards === 'right';
    const sign = part.widensTowards === 'right' || part.widensTowards === 'back' ? 1 : -1;
    return (['leastSlideMm', 'mostSlideMm'] as const).map((end) => {
      const farthest = carried.every(({ xMm, yMm }) => {
        const atMm = (along ? xMm : yMm) + sign * part[end];
        return atMm >= position.min && atMm <= position.max;
      });
      const allowed = `such that all it carries stays between ${position.min} and ${position.max} mm`;
      return claim(`base.sliding.${i}.${end}`, farthest, allowed, part[end]);
    });
  });
}

/** So many pairs of a hole and a thing it may meet can be searched. */
const MOST_PAIRS = 1_000_000;

/** A search looks at every hole beside everything. */
function searchClaims({ top, base, holes }: Plan): Claim[] {
  const open = holes.first === 'choose' || (base.sliding ?? []).some(({ slideMm }) => slideMm === 'choose');
  const things = base.members.length + base.fixings.length + top.inlays.length + edges.length;
  const most = Math.floor(MOST_PAIRS / things);
  const given = holes.columns * holes.rows;
  const allowed = `with the rows at most ${most} holes where their place or a slide is to be chosen over ${things} things; these are ${given}`;
  return [claim('holes.columns', !open || given <= most, allowed, holes.columns)];
}

function slideClaims(base: Plan['base']): Claim[] {
  const once = (part: SlidingPart, i: number, list: 'members' | 'fixings') =>
    part[list].flatMap((name, j) => {
      const path = `base.sliding.${i}.${list}.${j}`;
      const holders = (base.sliding ?? []).filter((other) => other[list].includes(name)).length;
      const repeated = part[list].indexOf(name) < j || holders > 1;
      return [
        oneOf(path, name, base[list], 'one of base.'.concat(list)),
        claim(path, !repeated, 'named by one part, once', name),
      ];
    });
  return (base.sliding ?? []).flatMap((part, i) => {
    const path = `base.sliding.${i}`;
    const { leastSlideMm: least, mostSlideMm: most, slideMm: slide } = part;
    return [
      inOrder([`${path}.leastSlideMm`, least], [`${path}.mostSlideMm`, most]),
      ...(slide === 'choose'
        ? []
        : [claim(`${path}.slideMm`, slide >= least && slide <= most, `from ${least} to ${most}`, slide)]),
      ...once(part, i, 'members'),
      ...once(part, i, 'fixings'),
    ];
  });
}

/** Where figures of a plan, each allowed by itself, contradict each other. */
export const conflictsOf = (plan: Plan): Conflict[] =>
  [
    ...holeClaims(plan),
    ...finishClaims(plan),
    ...nameClaims(plan),
    ...slideClaims(plan.base),
    ...reachClaims(plan),
    ...searchClaims(plan),
    ...glueUpClaims(plan),
    ...screwClaims(plan),
    ...stripClaims(plan),
    ...liftClaims(plan),
    ...loadClaims(plan),
    ...templateClaims(plan),
    ...accessoryClaims(plan),
    ...shopClaims(plan),
    ...drillingClaims(plan),
    ...calendarClaims(plan),
    ...stockClaims(plan),
  ]
    .filter(({ holds }) => !holds)
    .map(({ holds, ...conflict }) => conflict);
