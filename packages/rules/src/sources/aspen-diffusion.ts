import type { Source } from '../citation.ts';

export const aspenDiffusion: Source = {
  id: 'aspen-diffusion',
  title:
    'Measuring Dependence of Diffusion Coefficient of Wood on Moisture Concentration by Adsorption Experiments',
  author: 'W. T. Simpson',
  year: 1974,
  identifier: 'Wood and Fiber',
  url: 'https://wfs.swst.org/index.php/wfs/article/view/2155',
  note: 'Its abstract was seen; the year is from memory.',
};
