import type { Source } from '../citation.ts';

export const asmeB1861: Source = {
  id: 'asme-b18-6-1',
  title: 'Wood Screws (Inch Series)',
  author: 'American Society of Mechanical Engineers',
  year: 1981,
  identifier: 'ANSI/ASME B18.6.1-1981 (R1997)',
  note: 'The standard itself was not seen; its figures stand in an open data set of fasteners.',
};
