import type { Source } from '../citation.ts';

export const finishingGuidebook2012: Source = {
  id: 'finishing-guidebook-2012',
  title: 'Guidebook and Directory 2012–2013',
  author: 'Metal Finishing',
  year: 2012,
  url: 'https://metalfinishing.epubxp.com/i/98750-2012-2013/615',
  note: 'Text of one page on measuring films, where fractions are run together into lines.',
};
