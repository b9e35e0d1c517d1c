import type { Source } from '../citation.ts';

export const oakSanding2010: Source = {
  id: 'oak-sanding-2010',
  title: 'An objective method to measure and evaluate the quality of sanded wood surfaces',
  author: 'L. Gurau',
  year: 2010,
  identifier: 'Final conference of COST Action E53, Edinburgh',
  note: 'The abstract was seen, not the tables.',
};
