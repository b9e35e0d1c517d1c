import type { Source } from '../citation.ts';

export const concreteMathematics1994: Source = {
  id: 'concrete-mathematics-1994',
  title: 'Concrete Mathematics: A Foundation for Computer Science',
  author: 'R. L. Graham, D. E. Knuth, O. Patashnik',
  year: 1994,
  identifier: '2nd edition, ISBN 0-201-55802-5',
};
