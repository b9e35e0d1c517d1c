import { type Limits, requireChoice, requireNumber, requireThat } from '@scantling/rules';
import { conflictsOf } from './conflicts.ts';
import type { Field, Fields } from './field.ts';
import { type Plan, planField } from './plan.ts';

const CALLER = 'planWorktop';

/** `['base', 'members', 2, 'widthMm']` is `base.members[2].widthMm`. */
export const dotted = (path: readonly PropertyKey[]): string =>
  path.map((key, i) => (typeof key === 'number' ? `[${key}]` : `${i ? '.' : ''}${String(key)}`)).join('');

function requireItems(path: string, items: unknown, least: number, most: number): readonly unknown[] {
  requireThat(CALLER, Array.isArray(items), `${path} to be a list`);
  const list = items as readonly unknown[];
  const { length } = list;
  requireThat(
    CALLER,
    length >= least && length <= most,
    `${path} to have ${least} to ${most}, got ${length}`,
  );
  return list;
}

/** A text that is printed on one line: 1 to 60 characters, not blanks alone. */
export const LINE = /^(?=.{0,59}\S)\P{Cc}{1,60}$/u;

const isLine = (given: unknown) => typeof given === 'string' && LINE.test(given);

const requireFigure = (path: string, given: unknown, limits: Limits) =>
  requireNumber(CALLER, path, given as number, limits);

function requireField(path: string, given: unknown, field: Field): void {
  if (field.optional && given == null) return;
  if (field.open && given === 'choose') return;
  switch (field.kind) {
    case 'figure':
      requireFigure(path, given, field.limits);
      return;
    case 'figures':
      for (const [i, item] of requireItems(path, given, field.minItems, field.maxItems).entries()) {
        requireFigure(`${path}[${i}]`, item, field.limits);
      }
      return;
    case 'text':
      requireThat(
        CALLER,
        isLine(given),
        `${path} to be text of 1 to 60 characters on one line, got ${JSON.stringify(given)?.slice(0, 70)}`,
      );
      return;
    case 'choice':
      requireChoice(CALLER, path, given as string, field.names);
      return;
    case 'list':
      for (const [i, item] of requireItems(path, given, field.minItems, field.maxItems).entries()) {
        requireField(`${path}[${i}]`, item, field.of);
      }
      return;
    case 'section':
      requireThat(CALLER, typeof given === 'object' && given !== null, `${path} to be an object`);
      requireSection(`${path}.`, given as object, field.fields);
  }
}

function requireSection(prefix: string, given: object, fields: Fields): void {
  const values = given as Readonly<Record<string, unknown>>;
  for (const [key, field] of Object.entries(fields)) requireField(`${prefix}${key}`, values[key], field);
}

/** Throws where a plan, made by a program rather than read from a file, has an impossible figure. */
export function requirePlan(plan: Plan): void {
  const { version } = plan ?? {};
  requireThat(CALLER, version === 2, `version to be 2, got ${version}`);
  requireSection('', plan, planField.fields);
  for (const { path, allowed, given } of conflictsOf(plan)) {
    throw new RangeError(`${CALLER} requires ${dotted(path)} to be ${allowed}, got ${given}`);
  }
}
