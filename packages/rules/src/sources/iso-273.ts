import type { Source } from '../citation.ts';

export const iso273: Source = {
  id: 'iso-273',
  title: 'Fasteners: Clearance holes for bolts and screws',
  author: 'International Organization for Standardization',
  year: 1979,
  identifier: 'ISO 273:1979',
  note: 'The standard itself was not seen; its figures stand in the source of an open drawing program.',
};
