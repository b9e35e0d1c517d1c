import type { Source } from '../citation.ts';

export const circlePackingArticle: Source = {
  id: 'circle-packing-article',
  title: 'Circle packing in a circle',
  author: 'authors of an open encyclopedia',
  url: 'https://en.wikipedia.org/wiki/Circle_packing_in_a_circle',
  note: 'Undated as seen: a copy of the article.',
};
