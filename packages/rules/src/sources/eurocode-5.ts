import type { Source } from '../citation.ts';

export const eurocode5: Source = {
  id: 'eurocode-5',
  title: 'Eurocode 5: Design of timber structures, Part 1-1: General, common rules and rules for buildings',
  author: 'European Committee for Standardization',
  year: 2004,
  identifier: 'EN 1995-1-1',
  url: 'https://github.com/kevindevromeLTS/MassTimber-wiki/blob/main/docs/verbindingen/randafstanden.md',
  note: 'Table 8.4 was seen as worked out for five bolts in the notes of a timber engineer, at the address. The standard itself was not seen: what else is cited of it is recalled, or stands in the handbooks cited beside it.',
};
