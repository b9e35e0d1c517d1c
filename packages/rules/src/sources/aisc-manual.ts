import type { Source } from '../citation.ts';

export const aiscManual: Source = {
  id: 'aisc-manual',
  title: 'Steel Construction Manual',
  author: 'American Institute of Steel Construction',
  year: 2017,
  note: 'Its beam tables are from memory.',
};
