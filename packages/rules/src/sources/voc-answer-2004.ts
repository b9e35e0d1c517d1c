import type { Source } from '../citation.ts';

export const vocAnswer2004: Source = {
  id: 'voc-answer-2004',
  title: 'VOC for the Lube',
  author: 'Paints and Coatings Resource Center',
  year: 2004,
  url: 'http://www.paintcenter.org/rj/mar04b.php',
  note: 'Worked answer, March 2004.',
};
