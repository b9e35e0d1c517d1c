import type { Source } from '../citation.ts';

export const moistureArticle: Source = {
  id: 'moisture-article',
  title: 'Equilibrium moisture content',
  author: 'an encyclopedia, its authors not named on the reprint seen',
  url: 'http://www.liquisearch.com/equilibrium_moisture_content',
  note: 'Undated article, seen as a reprint. It gives 8.4 % by the equation where its table, an older one, prints 8.0 %.',
};
