import { type Limits, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import type { Plan } from './plan.ts';
import { MOST_HOLES, planChoices, planCounts, planLimits } from './plan-limits.ts';

/** Two figures of a plan that can't both be right. */
export interface Conflict {
  readonly path: readonly (string | number)[];
  readonly allowed: string;
  readonly given: string | number;
}

/** Names that mean something else in a report. */
const edges = ['left edge', 'right edge', 'front edge', 'back edge'];

function nameConflicts({ top, base }: Plan): Conflict[] {
  const taken = new Set([...edges, ...base.fixings.map(({ name }) => `screw ${name}`)]);
  const conflicts: Conflict[] = [];
  const lists = { 'base.members': base.members, 'top.inlays': top.inlays, 'base.fixings': base.fixings };
  for (const [list, items] of Object.entries(lists)) {
    for (const [i, { name }] of items.entries()) {
      if (taken.has(name) || !name?.trim()) {
        conflicts.push({ path: [...list.split('.'), i, 'name'], allowed: 'a name of its own', given: name });
      }
      taken.add(name);
    }
  }
  return conflicts;
}

/** Where figures of a plan, each allowed by itself, contradict each other. */
export function planConflicts(plan: Plan): Conflict[] {
  const { top, holes, finish } = plan;
  const { first, diameterMm, pitchXMm, pitchYMm, columns, rows } = holes;
  const { product, thinner } = finish;
  const diameter = `at least the diameter of a hole, ${diameterMm} mm`;
  const checks: (Conflict & { holds: boolean })[] = [
    { path: ['holes', 'pitchXMm'], allowed: diameter, given: pitchXMm, holds: pitchXMm >= diameterMm },
    { path: ['holes', 'pitchYMm'], allowed: diameter, given: pitchYMm, holds: pitchYMm >= diameterMm },
    {
      path: ['holes', 'columns'],
      allowed: `so many that ${MOST_HOLES} holes are not passed; with ${rows} rows these are ${columns * rows}`,
      given: columns,
      holds: columns * rows <= MOST_HOLES,
    },
    {
      path: ['holes', 'first', 'xMm'],
      allowed: `a place on the top, between 0 and ${top.lengthMm} mm`,
      given: first.xMm,
      holds: first.xMm >= 0 && first.xMm <= top.lengthMm,
    },
    {
      path: ['holes', 'first', 'yMm'],
      allowed: `a place on the top, between 0 and ${top.widthMm} mm`,
      given: first.yMm,
      holds: first.yMm >= 0 && first.yMm <= top.widthMm,
    },
    {
      path: ['finish', 'thinner', 'parts'],
      allowed: `at most ten times the parts of the product, ${10 * product.parts}`,
      given: thinner?.parts ?? 0,
      holds: (thinner?.parts ?? 0) <= 10 * product.parts,
    },
  ];
  return [
    ...checks.filter(({ holds }) => !holds).map(({ holds, ...conflict }) => conflict),
    ...nameConflicts(plan),
  ];
}

/** `['base', 'members', 2, 'widthMm']` is `base.members[2].widthMm`. */
export const dotted = (path: readonly PropertyKey[]): string =>
  path.map((key, i) => (typeof key === 'number' ? `[${key}]` : `${i ? '.' : ''}${String(key)}`)).join('');

const caller = 'planWorktop';

function requireSection(path: string, section: object, limits: Readonly<Record<string, Limits>>): void {
  const figures = section as Readonly<Record<string, number>> | undefined;
  const inPlan = <T>(value: (key: string) => T) =>
    Object.fromEntries(Object.keys(limits).map((key) => [`${path}.${key}`, value(key)]));
  requireInputs(
    caller,
    inPlan((key) => figures?.[key] as number),
    inPlan((key) => limits[key] as Limits),
  );
}

function requireEach<T extends object>(
  path: string,
  items: readonly T[],
  [least, most]: readonly [number, number],
  limits: Readonly<Record<string, Limits>>,
): void {
  requireThat(caller, Array.isArray(items), `${path} to be a list`);
  const { length } = items;
  requireThat(
    caller,
    length >= least && length <= most,
    `${path} to have ${least} to ${most}, got ${length}`,
  );
  for (const [i, item] of items.entries()) requireSection(`${path}[${i}]`, item, limits);
}

/** Throws where a plan, made by a program rather than read from a file, has an impossible figure. */
export function requirePlan(plan: Plan): void {
  const { top, seasons, base, holes, finish } = plan ?? {};
  requireSection('top', top, planLimits.top);
  requireChoice(caller, 'top.cut', top.cut, planChoices.cut);
  requireEach('top.inlays', top.inlays, planCounts.inlays, planLimits.obstacle);
  requireSection('seasons.driest', seasons?.driest, planLimits.air);
  requireSection('seasons.wettest', seasons?.wettest, planLimits.air);
  requireSection('base', base, planLimits.base);
  requireEach('base.members', base.members, planCounts.members, planLimits.obstacle);
  requireEach('base.fixings', base.fixings, planCounts.fixings, planLimits.fixing);
  requireSection('holes', holes, planLimits.holes);
  requireSection('holes.first', holes.first, planLimits.firstHole);
  requireChoice(caller, 'holes.blocked', holes.blocked, planChoices.blocked);
  requireSection('finish', finish, planLimits.finish);
  requireSection('finish.product', finish.product, planLimits.product);
  if (finish.thinner !== undefined) requireSection('finish.thinner', finish.thinner, planLimits.thinner);
  for (const { path, allowed, given } of planConflicts(plan)) {
    throw new RangeError(`${caller} requires ${dotted(path)} to be ${allowed}, got ${given}`);
  }
}
