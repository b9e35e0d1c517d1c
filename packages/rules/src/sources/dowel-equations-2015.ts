import type { Source } from '../citation.ts';

export const dowelEquations2015: Source = {
  id: 'dowel-equations-2015',
  title: 'General Dowel Equations for Calculating Lateral Connection Values',
  author: 'American Wood Council',
  year: 2015,
  identifier: 'Technical Report 12',
};
