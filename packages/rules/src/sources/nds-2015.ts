import type { Source } from '../citation.ts';

export const nds2015: Source = {
  id: 'nds-2015',
  title: 'National Design Specification for Wood Construction',
  author: 'American Wood Council',
  year: 2015,
  url: 'https://lfportal.everettwa.gov/WebLink/0/doc/1831805/Page33.aspx',
  note: 'Pages 77 and 106, Tables 12.2A and 12K, in the records of a city. The edition is taken from the numbers of its tables, which 2015 and 2018 share.',
};
