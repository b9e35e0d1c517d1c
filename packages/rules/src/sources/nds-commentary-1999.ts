import type { Source } from '../citation.ts';

export const ndsCommentary1999: Source = {
  id: 'nds-commentary-1999',
  title: 'Commentary on the National Design Specification for Wood Construction',
  author: 'American Forest & Paper Association',
  year: 1999,
  note: 'Seen: how part IX, lag screws, and part XI, wood screws, begin.',
};
