import type { Source } from '../citation.ts';

export const simpson1998: Source = {
  id: 'simpson-1998',
  title: 'Equilibrium Moisture Content of Wood in Outdoor Locations in the United States and Worldwide',
  author: 'William T. Simpson, Forest Products Laboratory',
  year: 1998,
  identifier: 'Research Note FPL-RN-0268',
  note: 'Its equation was seen in the published source of a conservation-science package that cites it, not in the note itself.',
};
