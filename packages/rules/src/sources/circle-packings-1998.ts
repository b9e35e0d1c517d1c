import type { Source } from '../citation.ts';

export const circlePackings1998: Source = {
  id: 'circle-packings-1998',
  title: 'Dense packings of congruent circles in a circle',
  author: 'R. L. Graham, B. D. Lubachevsky, K. J. Nurmela and P. R. J. Östergård',
  year: 1998,
  identifier: 'Discrete Mathematics 181, pp. 139–154',
  url: 'https://doi.org/10.1016/S0012-365X(97)00050-2',
  note: 'The abstract and introduction were seen, the table of packings was not.',
};
