import type { Source } from '../citation.ts';

export const nds2005: Source = {
  id: 'nds-2005',
  title: 'National Design Specification for Wood Construction',
  author: 'American Forest & Paper Association',
  year: 2005,
  url: 'https://publicdocs.santa-ana.org/BuildingWeblink/0/doc/4207/Page13.aspx',
  note: 'Section 11.2, in the records of a city. The edition is taken from the numbers of its sections, which 2001 and 2005 share.',
};
