import type { Source } from '../citation.ts';

export const canadianWoodScrewsPage: Source = {
  id: 'canadian-wood-screws-page',
  title: 'Wood products, connections: screws',
  author: 'Canadian Wood Council',
  url: 'http://cwc.ca/wood-products/connections/screws/',
  note: 'Undated as seen.',
};
