import type { Source } from '../citation.ts';

export const pilotHoleSizesPage: Source = {
  id: 'pilot-hole-sizes-page',
  title: 'Wood screws pilot hole size',
  author: 'keeper of a site on boats',
  url: 'https://l-36.com/woodscrewpilot.php',
  note: 'Undated as seen. A table of root diameters and of drills to the nearest 1/64 in, and a plea for larger holes in fine work.',
};
