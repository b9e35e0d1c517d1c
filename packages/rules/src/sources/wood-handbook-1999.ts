import type { Source } from '../citation.ts';

export const woodHandbook1999: Source = {
  id: 'wood-handbook-1999',
  title: 'Wood Handbook: Wood as an Engineering Material',
  author: 'Forest Products Laboratory',
  year: 1999,
  identifier: 'General Technical Report FPL-GTR-113',
  url: 'https://www.fpl.fs.usda.gov/documnts/fplgtr/fplgtr113/fplgtr113.pdf',
  note: 'The edition before FPL-GTR-190.',
};
