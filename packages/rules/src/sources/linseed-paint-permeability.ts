import type { Source } from '../citation.ts';

export const linseedPaintPermeability: Source = {
  id: 'linseed-paint-permeability',
  title: 'Water vapour transmission properties of linseed oil paint',
  author: 'R. Šemjakin, A. Ruus, K. Kirtsi, E. Tungel',
  url: 'http://agronomy.emu.ee/tag/water-vapour-permeation-coefficient/',
  note: 'Undated on the page seen, which gives its abstract.',
};
