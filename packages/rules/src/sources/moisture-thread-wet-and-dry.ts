import type { Source } from '../citation.ts';

export const moistureThreadWetAndDry: Source = {
  id: 'moisture-thread-wet-and-dry',
  title: 'Wood, thread 71545',
  author: 'members of a forum on woodworking',
  url: 'https://ukworkshop.co.uk/threads/wood.71545',
  note: 'Undated in the text seen.',
};
