import type { Source } from '../citation.ts';

export const asmeB1863: Source = {
  id: 'asme-b18-6-3',
  title: 'Machine Screws, Tapping Screws, and Metallic Drive Screws (Inch Series)',
  author: 'American Society of Mechanical Engineers',
  year: 2013,
  identifier: 'ASME B18.6.3-2013',
  note: 'The standard itself was not seen; its figures stand in an open data set of fasteners, in millimetres that are whole thousandths of an inch.',
};
