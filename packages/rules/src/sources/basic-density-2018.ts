import type { Source } from '../citation.ts';

export const basicDensity2018: Source = {
  id: 'basic-density-2018',
  title:
    'New formula and conversion factor to compute basic wood density of tree species using a global wood technology database',
  author: 'G. Vieilledent, F. J. Fischer, J. Chave, D. Guibal, P. Langbour, J. Gérard',
  year: 2018,
  identifier: 'American Journal of Botany 105(10), 1653-1661',
  url: 'https://agritrop.cirad.fr/589166/',
  note: 'Its abstract was seen: 4022 trees, mostly tropical, of 872 species.',
};
