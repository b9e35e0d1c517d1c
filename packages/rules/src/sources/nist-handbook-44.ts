import type { Source } from '../citation.ts';

export const nistHandbook44: Source = {
  id: 'nist-handbook-44',
  title: 'Specifications, Tolerances, and Other Technical Requirements for Weighing and Measuring Devices',
  author: 'National Institute of Standards and Technology',
  year: 2026,
  identifier: 'NIST Handbook 44',
  url: 'https://www.nist.gov/pml/owm/nist-handbook-44-current-edition',
  note: 'Seen as lines of Appendix C quoted in a reprint.',
};
