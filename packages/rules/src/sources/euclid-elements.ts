import type { Source } from '../citation.ts';

export const euclidElements: Source = {
  id: 'euclid-elements',
  title: 'The Thirteen Books of Euclid’s Elements',
  author: 'Euclid, translated by T. L. Heath',
  year: 1908,
  url: 'http://www.visual-euclid.org/elements/BK.VI/p6-09.html',
  note: 'Book I, Proposition 47, Book VI, Proposition 9 and Book XII, Proposition 2 were seen as reprints on the web.',
};
