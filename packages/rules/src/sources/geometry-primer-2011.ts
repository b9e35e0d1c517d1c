import type { Source } from '../citation.ts';

export const geometryPrimer2011: Source = {
  id: 'geometry-primer-2011',
  title: '3D Math Primer for Graphics and Game Development',
  author: 'F. Dunn, I. Parberry',
  year: 2011,
  identifier: '2nd edition, ISBN 978-1-56881-723-1',
  url: 'http://what-when-how.com/Tutorial/topic-854sfov/3D-Math-Primer-for-Graphics-and-Game-Development-742.html',
  note: 'Section A.5 was seen as a reprint on the web.',
};
