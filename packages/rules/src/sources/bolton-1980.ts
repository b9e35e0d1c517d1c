import type { Source } from '../citation.ts';

export const bolton1980: Source = {
  id: 'bolton-1980',
  title: 'The Computation of Equivalent Potential Temperature',
  author: 'D. Bolton',
  year: 1980,
  identifier: 'Monthly Weather Review 108, 1046–1053',
  url: 'https://rdrr.io/github/harphub/harpIO/man/rh2tdew.html',
  note: 'The coefficients were seen as a library of weather services states them; the paper is recalled.',
};
