import type { Confirmation, Tier } from '@scantling/rules';
import { csvParse } from 'd3-dsv';

/** What stands beside a table in its file. */
interface TableMeta {
  readonly source: string;
  readonly at: string;
  readonly title: string;
  readonly rights: string;
  readonly rowCount: number;
  readonly columns: Readonly<Record<string, { readonly kind: string; readonly unit?: string }>>;
  readonly errata: readonly { readonly rows: readonly string[]; readonly says: string }[];
  readonly notes: readonly string[];
}

/** A table as it stands in a package, and what is known of its rows. */
export interface PrintedTable extends TableMeta {
  /** As its file is called. */
  readonly id: string;
  readonly packageName: string;
  /** How many of its rows are known in which way. */
  readonly known: readonly { confirmed: Confirmation; tier: Tier; rows: number }[];
}

const metas = import.meta.glob<TableMeta>('../../../../packages/*/data/tables/*.meta.json', {
  eager: true,
  import: 'default',
});
const csvs = import.meta.glob<string>('../../../../packages/*/data/tables/*.csv', {
  eager: true,
  query: '?raw',
  import: 'default',
});

function knownRows(csv: string): PrintedTable['known'] {
  const counts = new Map<string, number>();
  for (const { confirmed, tier } of csvParse(csv)) {
    const key = `${confirmed}/${tier}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return [...counts].map(([key, rows]) => {
    const [confirmed, tier] = key.split('/') as [Confirmation, Tier];
    return { confirmed, tier, rows };
  });
}

export const printedTables: readonly PrintedTable[] = Object.entries(metas).map(([path, meta]) => {
  const csv = csvs[path.replace('.meta.json', '.csv')];
  if (csv === undefined) throw new Error(`${path} has no table beside it.`);
  const [packageName = '', , , file = ''] = path.split('/packages/')[1]?.split('/') ?? [];
  return { ...meta, id: file.replace('.meta.json', ''), packageName, known: knownRows(csv) };
});

if (printedTables.length === 0) throw new Error('No table was found in packages/*/data/tables.');
