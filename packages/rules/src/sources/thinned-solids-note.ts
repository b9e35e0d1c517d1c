import type { Source } from '../citation.ts';

export const thinnedSolidsNote: Source = {
  id: 'thinned-solids-note',
  title: 'How Do I Calculate the Volume Solids of a Coating After Adding Thinner?',
  author: 'Strands Industrial Coatings',
  url: 'https://strandsindustrialcoatings.com/volume-solids-of-a-coating/',
  note: 'Undated page.',
};
