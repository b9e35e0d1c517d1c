import type { Source } from '../citation.ts';

export const panelAllowanceThread: Source = {
  id: 'panel-allowance-thread',
  title: 'Panel expansion allowance',
  author: 'members of a woodworking newsgroup',
  url: 'https://www.homeownershub.com/woodworking/panel-expansion-allowance-15606-.htm',
  note: 'Undated thread; its examples cite the Wood Handbook (FPL-GTR-113), ch. 12.',
};
