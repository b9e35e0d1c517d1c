import type { Source } from '../citation.ts';

export const oshaSamplingInformation: Source = {
  id: 'osha-sampling-information',
  title: 'Chemical Sampling Information',
  author: 'Occupational Safety and Health Administration',
  year: 2012,
  url: 'https://www.osha.gov/dts/chemicalsampling/toc/toc_chemsamp.html',
  note: 'Pages of single substances, updated at different times.',
};
