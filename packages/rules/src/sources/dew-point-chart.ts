import type { Source } from '../citation.ts';

export const dewPointChart: Source = {
  id: 'dew-point-chart',
  title: 'Dew Point Calculation Chart',
  author: 'not named on the copy seen',
  url: 'https://handypdf.com/pdf/dew-point-calculation-sample-chart',
  note: 'Undated chart in whole °F for painters, with a worked example.',
};
