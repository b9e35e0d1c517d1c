import type { Source } from '../citation.ts';

export const wetFilmAnswer2003: Source = {
  id: 'wet-film-answer-2003',
  title: 'Converting Dry Film Thickness to Wet Film Thickness',
  author: 'R. Joseph',
  year: 2003,
  identifier: 'Paints and Coatings Resource Center, question-and-answer archive, October 2003',
  url: 'https://www.paintcenter.org/rj/oct03k.php',
};
