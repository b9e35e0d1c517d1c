import type { Source } from '../citation.ts';

export const attachingTabletops2007: Source = {
  id: 'attaching-tabletops-2007',
  title: 'Attaching Tabletops',
  author: 'M. Rodriguez',
  year: 2007,
  identifier: 'Fine Woodworking, Building Furniture, p. 38–43',
  note: 'Pages 38 and 39 were seen; the last page is from memory.',
};
