import type { Source } from '../citation.ts';

export const nfpa70: Source = {
  id: 'nfpa-70',
  title: 'National Electrical Code',
  author: 'National Fire Protection Association',
  year: 2014,
  identifier: 'NFPA 70',
  url: 'https://www.nfpa.org/codes-and-standards/nfpa-70-standard-development/70',
  note: 'The code itself was not seen: Table 1 of chapter 9 was, in a handbook on the edition of 2014 (53 and 31 %) and in notes on the code (53, 31 and 40 %).',
};
