import type { Source } from '../citation.ts';

export const gnuUnits: Source = {
  id: 'gnu-units',
  title: 'Units database of GNU units',
  author: 'Free Software Foundation',
  year: 2024,
  identifier: 'definitions.units, version 3.22',
  url: 'https://www.gnu.org/software/units/',
  note: 'A reprint of the factors of NIST SP 811 and NIST Handbook 44, which it cites.',
};
