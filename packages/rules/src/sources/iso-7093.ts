import type { Source } from '../citation.ts';

export const iso7093: Source = {
  id: 'iso-7093',
  title: 'Plain washers: Large series',
  author: 'International Organization for Standardization',
  year: 2000,
  identifier: 'ISO 7093:2000',
  note: 'The standard itself was not seen; its figures stand in an open library for drawing machine parts.',
};
