import type { List } from '@scantling/worktop/fields';
import { type Draft, draftOf, isSection } from './draft.ts';

const nameOf = (row: Draft | undefined): string => {
  const name = isSection(row) ? row.name : undefined;
  return typeof name === 'string' ? name : '';
};

/** `rail` beside another `rail` is `rail 2`. */
function ownName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/ \d+$/, '');
  for (let i = 2; ; i += 1) {
    const next = `${stem} ${i}`;
    if (!taken.includes(next)) return next;
  }
}

/** One more row: like the last, under a name of its own, or like one of the example, or empty. */
export function withRow(list: List, rows: readonly Draft[], example: Draft | undefined): readonly Draft[] {
  const last = rows.at(-1);
  if (list.of.kind === 'text') return [...rows, ''];
  if (last === undefined) return [Array.isArray(example) && example[0] ? example[0] : draftOf(list.of)];
  const names = rows.map(nameOf);
  const name = nameOf(last);
  return [...rows, isSection(last) && name !== '' ? { ...last, name: ownName(name, names) } : last];
}

export const withoutRow = (rows: readonly Draft[], index: number): readonly Draft[] =>
  rows.filter((_, i) => i !== index);

/** What a row is called: by its name, or by its place. */
export const rowTitle = (row: Draft | undefined, index: number): string => nameOf(row) || `${index + 1}`;
