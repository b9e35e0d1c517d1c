import type { Source } from '../citation.ts';

export const iso7721: Source = {
  id: 'iso-7721',
  title: 'Fasteners: Countersunk head screws, Head configuration and gauging',
  author: 'International Organization for Standardization',
  year: 2020,
  identifier: 'ISO 7721:2020',
  note: 'The standard itself was not seen; its figures stand in an open data set of fasteners, for the screws of ISO 2009, 2010, 7046 and 7047.',
};
