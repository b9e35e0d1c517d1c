import type { Source } from '../citation.ts';

export const coatingCoverageSheet: Source = {
  id: 'coating-coverage-sheet',
  title: 'Theoretical Spreading Rate / Coverage',
  author: 'a coating maker, not named on the copy seen',
  url: 'https://www.scribd.com/document/343849341/Spreading-Rate-pdf',
  note: 'Undated bulletin, seen as a copy. Its metric formula is printed with 100, its metric example is worked with 1000.',
};
