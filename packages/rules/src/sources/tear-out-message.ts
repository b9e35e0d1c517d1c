import type { Source } from '../citation.ts';

export const tearOutMessage: Source = {
  id: 'tear-out-message',
  title: 'Two Methods for Preventing Tear Out',
  author: 'a member of a mailing list of blind woodworkers',
  url: 'https://www.mail-archive.com/blindhandyman@yahoogroups.com/msg14262.html',
  note: 'Undated as seen. It passes on a woodworking tip.',
};
