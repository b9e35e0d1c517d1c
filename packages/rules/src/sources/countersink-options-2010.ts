import type { Source } from '../citation.ts';

export const countersinkOptions2010: Source = {
  id: 'countersink-options-2010',
  title: 'Countersink Options',
  author: 'Woodworker’s Journal',
  year: 2010,
  identifier: 'April 2010, p. 57',
  note: 'Seen in a copy of that page.',
};
