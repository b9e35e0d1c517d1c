import type { Column } from './table.ts';

/** A name with hyphens as a name in code. */
export const camel = (kebab: string) =>
  kebab.replace(/-+([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

/** `wood-handbook-2010--table-4-3` holds `woodHandbook2010Table43`. */
export const exportName = (id: string): string => camel(id);

/** A cell as the generated rows hold it: numbers as numbers, an empty cell as `null`. */
export function literal({ kind }: Column, text: string): string {
  if (text === '') return 'null';
  return JSON.stringify(kind === 'number' ? Number(text) : text);
}
