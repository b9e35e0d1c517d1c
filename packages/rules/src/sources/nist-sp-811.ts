import type { Source } from '../citation.ts';

export const nistSp811: Source = {
  id: 'nist-sp-811',
  title: 'Guide for the Use of the International System of Units (SI)',
  author: 'National Institute of Standards and Technology',
  year: 2008,
  identifier: 'NIST Special Publication 811',
  url: 'https://www.nist.gov/pml/special-publication-811',
  note: 'Seen as two reprints of Appendices B.8 and B.9. A factor in boldface is exact; the others are rounded to seven digits.',
};
