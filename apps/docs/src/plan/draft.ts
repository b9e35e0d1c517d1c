import type { Field, Fields } from '@scantling/worktop/fields';

/** What a form says, as it was typed: a text for each field, rows, and sections with the names that a plan has. */
export type Draft = string | readonly Draft[] | DraftSection;

/** What is left out of a plan is `undefined`. */
export interface DraftSection {
  readonly [key: string]: Draft | undefined;
}

export type Path = readonly (string | number)[];

/** Left to the planner. */
export const CHOOSE = 'choose';

/** More than any field has use for; enough to be refused. */
const LONGEST_TEXT = 100;
const LONGEST_LIST = 2000;

/** `['base', 'members', 2, 'widthMm']` is `base.members[2].widthMm`. */
export const dotted = (path: Path): string =>
  path.map((key, i) => (typeof key === 'number' ? `[${key}]` : `${i ? '.' : ''}${key}`)).join('');

/** A length carries its unit in a file's value, in a program's property name: `width` is `widthMm`. */
export const fileKey = (key: string): string => key.replace(/Mm$/, '');

export const isSection = (draft: Draft | undefined): draft is DraftSection =>
  typeof draft === 'object' && !Array.isArray(draft);

const isList = (draft: Draft | undefined): draft is readonly Draft[] => Array.isArray(draft);

/** What stands in a place. */
export function at(draft: Draft | undefined, path: Path): Draft | undefined {
  const [key, ...rest] = path;
  if (key === undefined) return draft;
  if (isList(draft)) return at(typeof key === 'number' ? draft[key] : undefined, rest);
  return isSection(draft) && Object.hasOwn(draft, key) ? at(draft[key], rest) : undefined;
}

/** The same with something else in one place; whatever is not on the way there stays the same object. */
export function put(draft: Draft | undefined, path: Path, value: Draft | undefined): Draft {
  const [key, ...rest] = path;
  if (key === undefined) return value ?? '';
  const inner = rest.length > 0 ? put(at(draft, [key]), rest, value) : value;
  if (isList(draft)) return draft.map((item, i) => (i === key ? (inner ?? '') : item));
  return { ...(isSection(draft) ? draft : {}), [key]: inner };
}

/** A number as it is typed: no exponent, no grouping, a point as decimal mark. */
export function typedNumber(value: number): string {
  const text = String(value);
  return text.includes('e') && Number.isFinite(value) && Math.abs(value) < 1
    ? value.toFixed(20).replace(/0+$/, '')
    : text;
}

function textOf(content: unknown, longest = LONGEST_TEXT): string {
  if (typeof content === 'number') return typedNumber(content);
  return typeof content === 'string' ? content.slice(0, longest) : '';
}

/** What an object of its own, and not of its prototype, has under a plan's name or a file's. */
function own(content: unknown, key: string): unknown {
  if (typeof content !== 'object' || content === null) return undefined;
  const name = [key, fileKey(key)].find((one) => Object.hasOwn(content, one));
  return name === undefined ? undefined : (content as Readonly<Record<string, unknown>>)[name];
}

const sectionOf = (fields: Fields, content: unknown): DraftSection =>
  Object.fromEntries(
    Object.entries(fields).map(([key, field]) => {
      const given = own(content, key) ?? undefined;
      const absent = field.optional && given === undefined && field.kind !== 'figure';
      return [key, absent ? undefined : draftOf(field, given)];
    }),
  );

/**
 * What a form says for the content of a plan file, of a link, or for nothing at all. Takes anything: what has no place in
 * a plan is left behind, what can't stand where it is becomes a text that the reading refuses.
 */
export function draftOf(field: Field, content?: unknown): Draft {
  if (field.open && content === CHOOSE) return CHOOSE;
  switch (field.kind) {
    case 'figure':
    case 'text':
    case 'choice':
      return textOf(content);
    case 'figures':
      return Array.isArray(content)
        ? content
            .slice(0, field.maxItems + 1)
            .map((item) => textOf(item))
            .join('; ')
        : textOf(content, LONGEST_LIST);
    case 'list':
      return Array.isArray(content)
        ? content.slice(0, field.maxItems).map((item) => draftOf(field.of, item))
        : [];
    case 'section':
      return sectionOf(field.fields, content);
  }
}
