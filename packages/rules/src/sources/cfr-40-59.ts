import type { Source } from '../citation.ts';

export const cfr4059: Source = {
  id: 'cfr-40-59',
  title: 'National Volatile Organic Compound Emission Standards for Consumer and Commercial Products',
  author: 'U.S. Environmental Protection Agency',
  year: 2007,
  identifier: '40 CFR part 59',
  url: 'http://edocket.access.gpo.gov/cfr_2007/julqtr/40cfr59.104.htm',
  note: 'The stored page lists the variables of the equation; the equation itself is a picture that is not stored.',
};
