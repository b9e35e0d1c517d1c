import type { Source } from '../citation.ts';

export const foundationSquaringThread: Source = {
  id: 'foundation-squaring-thread',
  title: 'How to Square a Wall or Layout for a Foundation',
  author: 'a builder, in a forum',
  url: 'http://www.diychatroom.com/f98/how-square-wall-layout-foundation-170560-print/',
  note: 'Undated thread.',
};
