import type { Source } from '../citation.ts';

export const toleranceGradeTable2007: Source = {
  id: 'tolerance-grade-table-2007',
  title: 'Index of ISO hole and shaft tolerances: tolerance band in micrometres, IT grades 1 to 14',
  author: 'an engineering weblog',
  year: 2007,
  url: 'https://engineersvault.blogspot.com/2007/02/index-of-iso-hole-and-shaft.html',
};
