import type { Source } from '../citation.ts';

export const woodScrewSizesPage: Source = {
  id: 'wood-screw-sizes-page',
  title: 'Wood screws',
  author: 'an online dictionary of units and sizes',
  url: 'http://sizes.com/tools/wood_screws.htm',
  note: 'Undated as seen.',
};
