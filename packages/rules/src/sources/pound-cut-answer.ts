import type { Source } from '../citation.ts';

export const poundCutAnswer: Source = {
  id: 'pound-cut-answer',
  title: 'Shellac’s cut',
  author: 'a writer on woodworking',
  url: 'https://www.satfix.to/showthread.php?13726-Shellac-s-cut',
  note: 'Undated answer to a reader.',
};
