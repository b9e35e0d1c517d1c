import type { Source } from '../citation.ts';

export const gluePressureColumn2014: Source = {
  id: 'glue-pressure-column-2014',
  title: 'PSI to glue a joint',
  author: 'the wood technologist of a trade magazine',
  year: 2014,
  url: 'https://www.woodworkingnetwork.com/magazine/fdmc-magazine/psi-glue-joint',
};
