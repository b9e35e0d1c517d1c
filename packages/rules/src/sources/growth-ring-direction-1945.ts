import type { Source } from '../citation.ts';

export const growthRingDirection1945: Source = {
  id: 'growth-ring-direction-1945',
  title:
    'Effect of Direction of Growth Rings on the Relative Amount of Shrinkage in Width and Thickness of Lumber',
  author: 'J. D. MacLean, Forest Products Laboratory',
  year: 1945,
  identifier: 'Report R1473',
  note: 'Its introduction was seen, its equations and tables were not.',
};
