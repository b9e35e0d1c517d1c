import type { Source } from '../citation.ts';

export const tuberculosisGuidelines1994: Source = {
  id: 'tuberculosis-guidelines-1994',
  title: 'Guidelines for Preventing the Transmission of Mycobacterium tuberculosis in Health-Care Facilities',
  author: 'Centers for Disease Control and Prevention',
  year: 1994,
  identifier: 'MMWR 43 (RR-13), p. 72',
  note: 'The page with Table S3-1 was seen as a copy.',
};
