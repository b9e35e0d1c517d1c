import type { Source } from '../citation.ts';

export const beechSanding2019: Source = {
  id: 'beech-sanding-2019',
  title: 'Surface roughness of heat treated and untreated beech (Fagus sylvatica L.) wood after sanding',
  author: 'L. Gurau, M. Irle and J. Buchner',
  year: 2019,
  identifier: 'BioResources 14 (2), 4512–4531',
  url: 'https://bioresources.cnr.ncsu.edu/resources/surface-roughness-of-heat-treated-and-untreated-beech-fagus-sylvatica-l-wood-after-sanding/',
  note: 'The abstract was seen, not the tables.',
};
