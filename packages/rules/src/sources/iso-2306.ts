import type { Source } from '../citation.ts';

export const iso2306: Source = {
  id: 'iso-2306',
  title: 'Drills for use prior to tapping screw threads',
  author: 'International Organization for Standardization',
  year: 1972,
  identifier: 'ISO 2306:1972',
  note: 'The standard itself was not seen; its figures stand in the source of an open drawing program.',
};
