import type { Source } from '../citation.ts';

export const iso7089: Source = {
  id: 'iso-7089',
  title: 'Plain washers: Normal series, Product grade A',
  author: 'International Organization for Standardization',
  year: 2000,
  identifier: 'ISO 7089:2000',
  note: 'The standard itself was not seen; its figures stand in an open data set of fasteners.',
};
