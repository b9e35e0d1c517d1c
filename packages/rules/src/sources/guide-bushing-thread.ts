import type { Source } from '../citation.ts';

export const guideBushingThread: Source = {
  id: 'guide-bushing-thread',
  title: 'Bushings and bits',
  author: 'members of a forum on routing',
  url: 'https://www.routerforums.com/threads/bushings-and-bits.4249/',
  note: 'Undated as seen.',
};
