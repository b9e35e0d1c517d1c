import type { Source } from '../citation.ts';

export const woodCouncilAnswer2006: Source = {
  id: 'wood-council-answer-2006',
  title: 'Does the penetration depth factor apply to design values for lag screws, wood screws, or nails?',
  author: 'American Wood Council',
  year: 2006,
  url: 'http://www.awc.org/wood-design/2006/05/does-penetration-depth-factor-cd-apply.html',
};
