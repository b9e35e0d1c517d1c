import type { Source } from '../citation.ts';

export const leadHoleTests2021: Source = {
  id: 'lead-hole-tests-2021',
  title:
    'Evaluation of Withdrawal Resistance of Screw-Type Fasteners Depending on Lead-Hole Size, Grain Direction, Screw Size, Screw Type and Species',
  author: 'H. W. Lee, S. S. Jang and C.-W. Kang',
  year: 2021,
  identifier: 'Journal of the Korean Wood Science and Technology 49 (2), 181',
  url: 'https://www.woodj.org/archive/view_article?pid=wood-49-2-181',
};
