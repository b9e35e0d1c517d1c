import type { Source } from '../citation.ts';

export const iso85024: Source = {
  id: 'iso-8502-4',
  title:
    'Preparation of steel substrates before application of paints and related products. Tests for the assessment of surface cleanliness. Part 4: Guidance on the estimation of the probability of condensation prior to paint application',
  author: 'International Organization for Standardization',
  year: 2017,
  identifier: 'ISO 8502-4:2017',
  url: 'https://www.iso.org/standard/65913.html',
  note: 'Only its scope was seen.',
};
