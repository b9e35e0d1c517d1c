import type { Source } from '../citation.ts';

export const sheenColumn: Source = {
  id: 'sheen-column',
  title: 'Get the sheen you want',
  author: 'a columnist of a woodworking magazine',
  url: 'https://www.woodshopnews.com/columns-blogs/get-the-sheen-you-want',
  note: 'Undated column.',
};
