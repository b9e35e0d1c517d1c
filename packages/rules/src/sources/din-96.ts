import type { Source } from '../citation.ts';

export const din96: Source = {
  id: 'din-96',
  title: 'Slotted round head wood screws',
  author: 'Deutsches Institut für Normung',
  year: 2016,
  identifier: 'DIN 96:2016-12',
  note: 'The standard itself was not seen; its figures stand in an open data set of fasteners.',
};
