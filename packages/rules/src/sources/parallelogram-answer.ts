import type { Source } from '../citation.ts';

export const parallelogramAnswer: Source = {
  id: 'parallelogram-answer',
  title: 'Question 972914: the other diagonal of a parallelogram',
  author: 'a tutor, to a student of geometry',
  url: 'https://www.algebra.com/cgi-bin/show-question-source.mpl?solution=595334',
  note: 'Undated answer.',
};
