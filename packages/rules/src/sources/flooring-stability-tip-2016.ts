import type { Source } from '../citation.ts';

export const flooringStabilityTip2016: Source = {
  id: 'flooring-stability-tip-2016',
  title: 'Quick Tips: Determining Dimensional Stability in Wood',
  author: 'Hardwood Floors, a magazine of the flooring trade',
  year: 2016,
  url: 'https://hardwoodfloorsmag.com/2016/12/06/quick-tips-determining-dimensional-stability-wood/',
};
