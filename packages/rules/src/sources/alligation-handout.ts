import type { Source } from '../citation.ts';

export const alligationHandout: Source = {
  id: 'alligation-handout',
  title: 'Alligation (handout)',
  author: 'a teacher of pharmacy, not named on the copy seen',
  url: 'https://www.scribd.com/document/151502467/Alligation-Handout',
  note: 'Undated handout: methods and worked examples.',
};
