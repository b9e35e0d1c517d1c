import type { Source } from '../citation.ts';

export const asmeB1828: Source = {
  id: 'asme-b18-2-8',
  title: 'Clearance Holes for Bolts, Screws, and Studs',
  author: 'American Society of Mechanical Engineers',
  year: 1999,
  identifier: 'ASME B18.2.8-1999 (R2017)',
  note: 'The standard itself was not seen; its least holes stand in the source of an open drawing program, rounded to 0.1 mm.',
};
