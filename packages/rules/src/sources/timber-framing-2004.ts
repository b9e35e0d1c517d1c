import type { Source } from '../citation.ts';

export const timberFraming2004: Source = {
  id: 'timber-framing-2004',
  title: 'Timber Framing for the Rest of Us',
  author: 'R. Roy',
  year: 2004,
  url: 'http://boulderlibrary.net/timber-framing-for-the-rest-of-us-rob-roy/the-board-foot.html',
  note: 'Its lumber scale was seen on a page that carries the chapter; the year is from memory.',
};
