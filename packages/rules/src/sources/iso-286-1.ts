import type { Source } from '../citation.ts';

export const iso2861: Source = {
  id: 'iso-286-1',
  title: 'ISO system of limits and fits, Part 1: Bases of tolerances, deviations and fits',
  author: 'International Organization for Standardization',
  year: 1988,
  identifier: 'ISO 286-1:1988, identical with IS 919 (Part 1):1993',
  url: 'https://slidepub.com/slideshow/is-919-1-1993-iso-systems-of-limits-and-fits',
  note: 'Seen in part, as the Indian standard that adopts it.',
};
