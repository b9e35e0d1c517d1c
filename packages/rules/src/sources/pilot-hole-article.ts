import type { Source } from '../citation.ts';

export const pilotHoleArticle: Source = {
  id: 'pilot-hole-article',
  title: 'Pilot hole',
  author: 'authors of an open encyclopedia',
  url: 'https://en.wikipedia.org/wiki/Pilot_hole',
  note: 'Undated as seen: a copy of the article.',
};
