import type { Source } from '../citation.ts';

export const shellacConversionTable: Source = {
  id: 'shellac-conversion-table',
  title: 'Shellac Conversion Ratios',
  author: 'a woodworking magazine, as a reader quotes it',
  url: 'http://lumberjocks.com/pjones46/blog/22129',
  note: 'Undated quotation of a table and of the note that came with it: 2 lb of flakes make 1.2 gal of 1 gal of alcohol.',
};
