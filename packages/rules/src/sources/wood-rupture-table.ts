import type { Source } from '../citation.ts';

export const woodRuptureTable: Source = {
  id: 'wood-rupture-table',
  title: 'Modulus of Rupture of Wood',
  author: 'not named on the page',
  url: 'https://matmake.com/properties/modulus-of-rupture-of-wood.html',
  note: 'Undated page, which cites the Wood Handbook, edition of 2010.',
};
