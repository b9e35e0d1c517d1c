import type { Source } from '../citation.ts';

export const ps20: Source = {
  id: 'ps-20',
  title: 'American Softwood Lumber Standard',
  author: 'National Institute of Standards and Technology',
  identifier: 'Voluntary Product Standard PS 20',
  url: 'https://www.engineeringtoolbox.com/amp/softwood-lumber-standard-d_1270.html',
  note: 'Undated as seen: a page that tabulates the nominal and minimum-dressed sizes of the standard.',
};
