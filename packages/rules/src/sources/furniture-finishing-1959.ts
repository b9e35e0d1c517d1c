import type { Source } from '../citation.ts';

export const furnitureFinishing1959: Source = {
  id: 'furniture-finishing-1959',
  title: 'Moisture Content of Wood as Related to Finishing of Furniture',
  author: 'F. L. Browne, Forest Products Laboratory',
  year: 1959,
  identifier: 'Report No. 1722',
  note: 'The title is read from a poor scan.',
};
