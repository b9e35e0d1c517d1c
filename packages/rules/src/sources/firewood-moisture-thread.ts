import type { Source } from '../citation.ts';

export const firewoodMoistureThread: Source = {
  id: 'firewood-moisture-thread',
  title: 'Moisture content, thread 22771',
  author: 'members of a forum on firewood',
  url: 'https://hearth.com/talk/threads/moisture-content.22771',
  note: 'Undated in the text seen.',
};
