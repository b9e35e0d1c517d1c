import type { Source } from '../citation.ts';

export const euclidElements: Source = {
  id: 'euclid-elements',
  title: 'Elements',
  author: 'Euclid',
  year: -300,
  identifier: 'Book VI',
  url: 'https://mathcs.clarku.edu/~djoyce/java/elements/bookVI/propVI9.html',
  note: 'About 300 BC. Seen in an English edition on the web.',
};
