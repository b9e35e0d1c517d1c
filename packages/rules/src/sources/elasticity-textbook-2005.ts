import type { Source } from '../citation.ts';

export const elasticityTextbook2005: Source = {
  id: 'elasticity-textbook-2005',
  title: 'Elasticity: Theory, Applications, and Numerics',
  author: 'M. H. Sadd',
  year: 2005,
  note: 'One page was seen; author and year are from memory.',
};
