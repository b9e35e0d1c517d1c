import type { Source } from '../citation.ts';

export const coverageAnswer2003: Source = {
  id: 'coverage-answer-2003',
  title: 'Calculating Paint Coverage',
  author: 'Paints and Coatings Resource Center',
  year: 2003,
  url: 'http://www.paintcenter.org/rj/oct03e.php',
  note: 'Worked answer, October 2003.',
};
