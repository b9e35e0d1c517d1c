import type { Source } from '../citation.ts';

export const airContaminantsRule: Source = {
  id: 'air-contaminants-rule',
  title: 'Air contaminants',
  author: 'Occupational Safety and Health Administration',
  year: 1974,
  identifier: '29 CFR 1910.1000',
  url: 'https://up.codes/s/computation-formulae',
  note: 'Paragraph (d) was seen as a site of codes prints it; the year is recalled.',
};
