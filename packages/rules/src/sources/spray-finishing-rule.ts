import type { Source } from '../citation.ts';

export const sprayFinishingRule: Source = {
  id: 'spray-finishing-rule',
  title: 'Spray finishing using flammable and combustible materials',
  author: 'Occupational Safety and Health Administration',
  year: 1974,
  identifier: '29 CFR 1910.107',
  note: 'Seen as a letter of interpretation of 2009 and the rule of the State of Washington, WAC 296-24-370, repeat it; the year is recalled.',
};
