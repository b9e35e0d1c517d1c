import type { Source } from '../citation.ts';

export const moistureThread2006: Source = {
  id: 'moisture-thread-2006',
  title: 'Moisture content of a fresh sample of grand fir, thread 16658',
  author: 'members of a forum on drying and processing wood',
  year: 2006,
  url: 'https://forestryforum.com/board/index.php?action=printpage&topic=16658.0',
};
