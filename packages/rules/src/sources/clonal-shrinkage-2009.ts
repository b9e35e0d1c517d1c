import type { Source } from '../citation.ts';

export const clonalShrinkage2009: Source = {
  id: 'clonal-shrinkage-2009',
  title: 'Table III: mean values of shrinkage properties, and genotypic coefficients of variation',
  author: 'Annals of Forest Science, the authors not named on the page seen',
  year: 2009,
  identifier: 'article f08400',
  url: 'https://www.afs-journal.org/articles/forest/full_html/2009/06/f08400/T3.html',
  note: 'One table was seen, the article was not. Its variation is between clones alone.',
};
