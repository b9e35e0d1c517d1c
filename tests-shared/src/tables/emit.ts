import type { Column, Erratum, TableMeta } from './table.ts';

/** A name with hyphens as a name in code. */
export const camel = (kebab: string) =>
  kebab.replace(/-+([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

/** `wood-handbook-2010--table-4-3` holds `woodHandbook2010Table43`. */
export const exportName = (id: string): string => camel(id);

/** An erratum as the generated code holds it: about properties of the rows, not headings of the table. */
export function emittedErratum({ columns }: TableMeta, erratum: Erratum): Erratum {
  if (!erratum.columns) return erratum;
  const named = erratum.columns.map((heading) => {
    const column = columns[heading];
    return column && 'name' in column ? column.name : heading;
  });
  return { ...erratum, columns: named };
}

/** A cell as the generated rows hold it: numbers as numbers, an empty cell as `null`. */
export function literal({ kind }: Column, text: string): string {
  if (text === '') return 'null';
  return JSON.stringify(kind === 'number' ? Number(text) : text);
}
