import type { Source } from '../citation.ts';

export const astmD523Page: Source = {
  id: 'astm-d523-page',
  title: 'ASTM D523',
  author: 'a page that repeats the scope of the standard',
  identifier: 'ASTM D523',
  url: 'http://en1.nbchao.com/k/5598',
  note: 'Undated page.',
};
