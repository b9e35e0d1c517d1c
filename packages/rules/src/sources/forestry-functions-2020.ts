import type { Source } from '../citation.ts';

export const forestryFunctions2020: Source = {
  id: 'forestry-functions-2020',
  title: 'Forestry Functions: Wood Density in weight per cubic dimension',
  author: 'D. R. Larsen, University of Missouri',
  year: 2020,
  url: 'https://oakmissouri.org/forestfunction/density.html',
  note: 'A function library for forestry, which cites the Wood Handbook (FPL-GTR-190), ch. 4.',
};
