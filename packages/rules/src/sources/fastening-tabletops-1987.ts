import type { Source } from '../citation.ts';

export const fasteningTabletops1987: Source = {
  id: 'fastening-tabletops-1987',
  title: 'Fastening Tabletops',
  author: 'C. Becksvoort',
  year: 1987,
  identifier: 'Fine Woodworking 62',
  url: 'http://www.finewoodworking.com/how-to/article/fastening-tabletops.aspx',
  note: 'Its summary was seen, the article itself was not; the year is from memory.',
};
