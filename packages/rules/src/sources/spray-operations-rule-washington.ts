import type { Source } from '../citation.ts';

export const sprayOperationsRuleWashington: Source = {
  id: 'spray-operations-rule-washington',
  title: 'Spray finishing: operations and maintenance',
  author: 'State of Washington, Department of Labor and Industries',
  year: 2017,
  identifier: 'WAC 296-24-37013',
  url: 'https://app.leg.wa.gov/WAC/default.aspx?cite=296-24-37013',
  note: 'The year is that of the section beside it.',
};
