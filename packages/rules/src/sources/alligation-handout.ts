import type { Source } from '../citation.ts';

export const alligationHandout: Source = {
  id: 'alligation-handout',
  title: 'Alligation (handout)',
  author: 'a teacher of pharmacy, not named on the copy seen',
  note: 'Undated handout: methods and worked examples.',
};
