import type { Source } from '../citation.ts';

export const iso10642: Source = {
  id: 'iso-10642',
  title: 'Fasteners: Hexagon socket countersunk head screws with reduced loadability',
  author: 'International Organization for Standardization',
  year: 2019,
  identifier: 'ISO 10642:2019',
  note: 'The standard itself was not seen; its figures stand in an open data set of fasteners.',
};
