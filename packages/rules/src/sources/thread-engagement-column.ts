import type { Source } from '../citation.ts';

export const threadEngagementColumn: Source = {
  id: 'thread-engagement-column',
  title: 'A column on failed threads, and its readers: how long the engagement of a thread should be',
  author: 'a magazine for design engineers',
  url: 'http://www.designnews.com/author.asp?section_id=1365&doc_id=239122',
  note: 'Undated as seen.',
};
