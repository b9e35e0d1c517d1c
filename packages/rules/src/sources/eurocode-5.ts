import type { Source } from '../citation.ts';

export const eurocode5: Source = {
  id: 'eurocode-5',
  title: 'Eurocode 5: Design of timber structures, Part 1-1: General, common rules and rules for buildings',
  author: 'European Committee for Standardization',
  year: 2004,
  identifier: 'EN 1995-1-1',
  note: 'The standard itself was not seen: what is cited of it is recalled, or stands in the handbooks cited beside it.',
};
