import type { Source } from '../citation.ts';

export const din7996: Source = {
  id: 'din-7996',
  title: 'Cross recessed round head wood screws',
  author: 'Deutsches Institut für Normung',
  year: 2016,
  identifier: 'DIN 7996:2016-12',
  note: 'The standard itself was not seen; its figures stand in an open data set of fasteners.',
};
