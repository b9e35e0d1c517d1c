import type { Source } from '../citation.ts';

export const din97: Source = {
  id: 'din-97',
  title: 'Slotted countersunk flat head wood screws',
  author: 'Deutsches Institut für Normung',
  year: 2016,
  identifier: 'DIN 97:2016-12',
  note: 'Not seen: its figures are recalled.',
};
