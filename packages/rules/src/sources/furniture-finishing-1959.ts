import type { Source } from '../citation.ts';

export const furnitureFinishing1959: Source = {
  id: 'furniture-finishing-1959',
  title: 'Moisture Content of Wood as Related to Finishing of Furniture',
  author: 'F. L. Browne, Forest Products Laboratory',
  year: 1959,
  identifier: 'Report No. 1722',
  url: 'https://www.studylib.net/doc/13651059/a-as-mated-to-finishing-of-furniture-mc-kim-content-cif-wood',
  note: 'The title is read from a poor scan.',
};
