import type { Source } from '../citation.ts';

export const sandpaperSizesPage: Source = {
  id: 'sandpaper-sizes-page',
  title: 'Sandpaper (coated abrasives): grades',
  author: 'a dictionary of units and sizes',
  url: 'http://sizes.com/tools/sandpaper.htm',
  note: 'Undated page. Its table of CAMI and FEPA grades was seen as far as P120.',
};
