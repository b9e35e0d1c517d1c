import type { Source } from '../citation.ts';

export const mapleSanding2006: Source = {
  id: 'maple-sanding-2006',
  title:
    'Effects of abrasive mineral, grit size and feed speed on the quality of sanded surfaces of sugar maple wood',
  author: 'L. F. de Moura and R. E. Hernández',
  year: 2006,
  identifier: 'Wood Science and Technology 40',
  url: 'https://discovery.researcher.life/article/effects-of-abrasive-mineral-grit-size-and-feed-speed-on-the-quality-of-sanded-surfaces-of-sugar-maple-wood/f9dcd0923c7a31ff90417b08a75cb394',
  note: 'The abstract was seen; authors, journal and year are recalled.',
};
