import type { Source } from '../citation.ts';

export const deflectionAnswer: Source = {
  id: 'deflection-answer',
  title: 'What is the difference between 2012 NDS 3.5 and 2012 IBC Table 1604.3 Footnote D?',
  author: 'American Wood Council',
  url: 'https://awc.org/faq/what-is-the-difference-between-2012-nds-3-5-and-2012-ibc-table-1604-3-footnote-d-for-adjusting-long-term-deflection-of-wood-members-2/',
  note: 'Undated answer.',
};
