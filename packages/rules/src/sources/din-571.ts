import type { Source } from '../citation.ts';

export const din571: Source = {
  id: 'din-571',
  title: 'Hexagon head wood screws',
  author: 'Deutsches Institut für Normung',
  year: 2016,
  identifier: 'DIN 571:2016-12',
  note: 'The standard itself was not seen; its figures stand in an open data set of fasteners.',
};
