import type { Source } from '../citation.ts';

export const woodScrewsChapter: Source = {
  id: 'wood-screws-chapter',
  title: 'Wood Screws',
  author: 'A text book of furniture making',
  url: 'https://www.furnituremaking.us/making-3/wood-screws.html',
  note: 'Undated page with the text of a British book.',
};
