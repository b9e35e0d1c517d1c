import type { Source } from '../citation.ts';

export const guideBushThread2004: Source = {
  id: 'guide-bush-thread-2004',
  title: 'Calculating guide bush sizes',
  author: 'members of a woodworking forum',
  year: 2004,
  url: 'https://www.ukworkshop.co.uk/threads/calculating-guide-bush-sizes.8513/',
  note: 'Begun on 20 February 2004.',
};
