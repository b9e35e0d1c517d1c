import type { Source } from '../citation.ts';

export const specificGravityReport1993: Source = {
  id: 'specific-gravity-report-1993',
  title: 'Specific gravity, moisture content, and density relationship for wood',
  author: 'W. T. Simpson, Forest Products Laboratory',
  year: 1993,
  identifier: 'General Technical Report FPL-GTR-76',
  url: 'https://www.fs.usda.gov/research/treesearch/5914',
  note: 'Its abstract and contents were seen, its equations were not.',
};
