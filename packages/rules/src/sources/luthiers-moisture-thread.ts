import type { Source } from '../citation.ts';

export const luthiersMoistureThread: Source = {
  id: 'luthiers-moisture-thread',
  title: 'Equilibrium moisture content in the shop, thread 7600',
  author: 'members of a forum of guitar makers',
  url: 'http://w-ww.luthiersforum.com/forum/viewtopic.php?f=10102&start=25&t=7600',
  note: 'Undated in the text seen. It reads off a chart that was not seen.',
};
