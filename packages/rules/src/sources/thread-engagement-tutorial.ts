import type { Source } from '../citation.ts';

export const threadEngagementTutorial: Source = {
  id: 'thread-engagement-tutorial',
  title: 'Screw or bolt thread engagement length',
  author: 'an online tutorial on machine design',
  url: 'https://mechguru.com/machine-design/screw-or-bolt-thread-engagement-length-calculation/',
  note: 'Undated as seen. Its first equation has lost the pitch p beside 0.938194.',
};
