import type { Source } from '../citation.ts';

export const engineeringTables: Source = {
  id: 'engineering-tables',
  title: 'CRC Handbook of Chemistry and Physics, and tables for engineers that agree with it',
  author: 'CRC Press and others',
  note: 'Undated: figures that such tables have in common, recalled without an edition.',
};
