import type { Source } from '../citation.ts';

export const iso2862: Source = {
  id: 'iso-286-2',
  title:
    'Geometrical product specifications (GPS): ISO code system for tolerances on linear sizes, Part 2: Tables of standard tolerance classes and limit deviations for holes and shafts',
  author: 'International Organization for Standardization',
  year: 2010,
  identifier: 'ISO 286-2:2010',
  note: 'The standard itself was not seen; its figures stand in many reprints.',
};
