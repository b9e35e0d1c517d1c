import type { Source } from '../citation.ts';

export const asmeB1821: Source = {
  id: 'asme-b18-2-1',
  title:
    'Square, Hex, Heavy Hex, and Askew Head Bolts and Hex, Heavy Hex, Hex Flange, Lobed Head, and Lag Screws (Inch Series)',
  author: 'American Society of Mechanical Engineers',
  year: 2012,
  identifier: 'ASME B18.2.1-2012',
  note: 'The standard itself was not seen; its table of lag screws stands on an engineering reference site.',
};
