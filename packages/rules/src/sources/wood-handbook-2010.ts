import type { Source } from '../citation.ts';

export const woodHandbook2010: Source = {
  id: 'wood-handbook-2010',
  title: 'Wood Handbook: Wood as an Engineering Material',
  author: 'Forest Products Laboratory',
  year: 2010,
  identifier: 'General Technical Report FPL-GTR-190',
  url: 'https://www.fpl.fs.usda.gov/documnts/fplgtr/fpl_gtr190.pdf',
};
