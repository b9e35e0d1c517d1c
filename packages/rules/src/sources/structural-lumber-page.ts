import type { Source } from '../citation.ts';

export const structuralLumberPage: Source = {
  id: 'structural-lumber-page',
  title: 'Structural lumber: properties',
  author: 'editors of a site of engineering tables',
  url: 'https://engineeringtoolbox.com/structural-lumber-properties-d_1835.html',
  note: 'Undated table of sections of standard dressed sizes.',
};
