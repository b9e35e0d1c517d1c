import type { Source } from '../citation.ts';

export const withdrawalExamplesPage: Source = {
  id: 'withdrawal-examples-page',
  title: 'Wood Screws: Withdrawal Force, and Nails and Spikes: Withdrawal Force',
  author: 'The Engineering ToolBox',
  url: 'https://www.engineeringtoolbox.com/wood-screws-allowable-withdrawal-load-d_1815.html',
  note: 'Undated reference pages for engineers, each with a worked example.',
};
