import type { Source } from '../citation.ts';

export const asmeB18211: Source = {
  id: 'asme-b18-21-1',
  title: 'Washers: Helical Spring-Lock, Tooth Lock, and Plain Washers (Inch Series)',
  author: 'American Society of Mechanical Engineers',
  year: 2009,
  identifier: 'ASME B18.21.1-2009 (R2016)',
  note: 'The standard itself was not seen; a handbook for machinists reprints its tables.',
};
