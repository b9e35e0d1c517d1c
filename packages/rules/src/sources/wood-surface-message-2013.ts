import type { Source } from '../citation.ts';

export const woodSurfaceMessage2013: Source = {
  id: 'wood-surface-message-2013',
  title: 'Water on Wood Surfaces',
  author: 'a contributor to a mailing list on mechanical music',
  year: 2013,
  url: 'https://mmdigest.com/Archives/Digests/201302/2013.02.24.04.html',
};
