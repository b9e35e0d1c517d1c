import type { Source } from '../citation.ts';

export const astmD523Page: Source = {
  id: 'astm-d523-page',
  title: 'ASTM D523',
  author: 'a page that repeats the scope of the standard',
  identifier: 'ASTM D523',
  note: 'Undated page; its address is not one to rely on.',
};
