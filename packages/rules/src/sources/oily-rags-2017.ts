import type { Source } from '../citation.ts';

export const oilyRags2017: Source = {
  id: 'oily-rags-2017',
  title: 'Safety with Oily Rags',
  author: 'National Fire Protection Association',
  year: 2017,
  url: 'http://villageofbellevue.blogspot.com/2017/05/nfpa-safety-with-oily-rags.html',
  note: 'The tip sheet was seen as a village prints it.',
};
