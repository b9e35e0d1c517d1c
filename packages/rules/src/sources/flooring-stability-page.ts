import type { Source } from '../citation.ts';

export const flooringStabilityPage: Source = {
  id: 'flooring-stability-page',
  title: 'Dimensional Change',
  author: 'a dealer in wood floors, after the National Wood Flooring Association',
  url: 'https://flooringartists.com/dimensional-change',
  note: 'Undated page. Its table of coefficients comes from the Wood Handbook and from the trade.',
};
