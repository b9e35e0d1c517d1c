import type { Source } from '../citation.ts';

export const flammableLiquidsRuleWashington: Source = {
  id: 'flammable-liquids-rule-washington',
  title: 'Flammable liquids (ship repairing)',
  author: 'State of Washington, Department of Labor and Industries',
  year: 2017,
  identifier: 'WAC 296-304-03009',
  url: 'https://app.leg.wa.gov/WAC/default.aspx?cite=296-304-03009',
};
