import type { Source } from '../citation.ts';

export const nds2018: Source = {
  id: 'nds-2018',
  title: 'National Design Specification for Wood Construction',
  author: 'American Wood Council',
  year: 2018,
  note: 'Seen as copied into the source of a structural analysis library.',
};
