import type { Source } from '../citation.ts';

export const woodHandbook2021: Source = {
  id: 'wood-handbook-2021',
  title: 'Wood Handbook: Wood as an Engineering Material',
  author: 'Forest Products Laboratory',
  year: 2021,
  identifier: 'General Technical Report FPL-GTR-282',
  url: 'https://github.com/soconnell345-geotech/geotech-references',
  note: 'Chapter 8 was seen in its metric form as an open library of engineering references carries it, equation by equation and table by table. The handbook itself was not seen.',
};
