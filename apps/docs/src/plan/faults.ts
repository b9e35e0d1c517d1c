import type { Check, WorktopPlan } from '@scantling/worktop';
import { planField } from '@scantling/worktop/fields';
import { at, type Draft, type DraftSection, dotted, isSection, type Path } from './draft.ts';
import { pathIn, placeOf } from './labels.ts';

/** So many places are offered to go to. */
const MOST_PLACES = 6;

/** What a check is about where its sentence names no place. */
const subjects: Readonly<Record<string, string>> = {
  species: 'top.species',
  moisture: 'top.moisturePct',
  boards: 'glueUp.boardCount',
  gluing: 'glueUp.glue',
  panel: 'glueUp',
  inlays: 'top.inlays',
  'strip-rabbet': 'strip.rabbetWidthMm',
  'strip-movement': 'strip',
  'strip-screws': 'strip.screwLengthMm',
  holes: 'holes.first',
  slots: 'base.fixings',
  screws: 'base.fixings',
  'through-face': 'screws.lengthMm',
  engagement: 'screws.leastThreadMm',
  washers: 'screws.washerDiameterMm',
  cover: 'base.members',
  template: 'template',
  accessories: 'accessories',
  sag: 'load.mostSagMm',
  'lift-off': 'load',
  weight: 'base.lift.capacityKg',
  height: 'base.lift',
  'cable-hole': 'cables.holeDiameterMm',
  'cable-place': 'cables.xMm',
  'cable-length': 'cables.cableLengthMm',
  shop: 'shop',
  finish: 'finish',
  calendar: 'calendar.readyByDays',
};

/** A path with a part, as sentences name it, with a name that follows; or a whole section at the head of a line. */
const NAMED = /(?<![\w.[])([a-z]\w*(?:(?:\.[a-z]\w*)|(?:\[\d+\]))+)|^([a-z]\w*)(?=[:,])/gim;

/** The row or part that a sentence names after its place: `base.members, front rail: stands …`. */
function namedNext(draft: Draft | undefined, after: string): Path {
  if (!after.startsWith(', ')) return [];
  const rows: readonly (readonly [string | number, Draft | undefined])[] = Array.isArray(draft)
    ? draft.map((row, i) => [i, row] as const)
    : isSection(draft)
      ? Object.entries(draft)
      : [];
  const found = rows.find(([, row]) => {
    const name = isSection(row) ? row.name : undefined;
    return typeof name === 'string' && name !== '' && after.startsWith(`, ${name}:`);
  });
  if (!found) return [];
  const [, key] = /^, [^:]*: (\w+)/.exec(after) ?? [];
  const inner = isSection(found[1]) && key !== undefined && Object.hasOwn(found[1], key) ? [key] : [];
  return [found[0], ...inner];
}

function placesIn(says: string, plan: DraftSection): Path[] {
  return [...says.matchAll(NAMED)].flatMap((match) => {
    const [text, inside, section] = match;
    const place = placeOf(planField.fields, plan, pathIn(inside ?? section ?? ''));
    if (place.length === 0) return [];
    return [[...place, ...namedNext(at(plan, place), says.slice(match.index + text.length))]];
  });
}

/** What holes came too near to: the figure of its place that moves it out of their rows. */
function inTheWay(plan: DraftSection, { blockedHoles, plan: { base, top } }: WorktopPlan): Path[] {
  const names = new Set(blockedHoles.flatMap(({ conflicts }) => conflicts.map((conflict) => conflict.with)));
  const lists = [
    { path: ['base', 'members'], rows: base.members },
    { path: ['top', 'inlays'], rows: top.inlays },
  ];
  return lists.flatMap(({ path, rows }) =>
    rows.flatMap(({ name, lengthMm, widthMm }, i) =>
      names.has(name)
        ? [placeOf(planField.fields, plan, [...path, i, lengthMm > widthMm ? 'yMm' : 'xMm'])]
        : [],
    ),
  );
}

/** Whether one place lies within another. */
const isWithin = (inner: string, outer: string) =>
  inner.startsWith(`${outer}.`) || inner.startsWith(`${outer}[`);

/** Where in the form a check's verdict can be changed, the places that its sentence names first. */
export function placesOf(check: Check, result: WorktopPlan, plan: DraftSection): Path[] {
  const subject = placeOf(planField.fields, plan, pathIn(subjects[check.id] ?? ''));
  if (check.status === 'pass') return [subject];
  const obstacles = check.id === 'holes' ? [subject, ...inTheWay(plan, result)] : [];
  const named = [...placesIn(check.says, plan), ...obstacles];
  const places = new Map((named.length > 0 ? named : [subject]).map((path) => [dotted(path), path]));
  const inmost = [...places].filter(([place]) => ![...places.keys()].some((other) => isWithin(other, place)));
  return inmost.map(([, path]) => path).slice(0, MOST_PLACES);
}
