import type { Source } from '../citation.ts';

export const iso2813: Source = {
  id: 'iso-2813',
  title: 'Paints and varnishes: determination of gloss value at 20°, 60° and 85°',
  author: 'International Organization for Standardization',
  year: 2014,
  identifier: 'ISO 2813:2014',
};
