import type { Source } from '../citation.ts';

export const cuppingModel2016: Source = {
  id: 'cupping-model-2016',
  title: 'Modeling the cupping of lumber',
  author: 'P. H. Mitchell',
  year: 2016,
  identifier: 'BioResources 11(3), 6416-6425',
  url: 'https://bioresources.cnr.ncsu.edu/resources/modeling-the-cupping-of-lumber/',
  note: 'Its abstract and keywords were seen, its equations were not.',
};
