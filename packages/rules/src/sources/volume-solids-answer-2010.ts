import type { Source } from '../citation.ts';

export const volumeSolidsAnswer2010: Source = {
  id: 'volume-solids-answer-2010',
  title: 'Percent of Volume Solids',
  author: 'Paints and Coatings Resource Center',
  year: 2010,
  url: 'https://www.paintcenter.org/rj/aug10b.php',
  note: 'Answer, August 2010.',
};
