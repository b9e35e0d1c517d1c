import type { Source } from '../citation.ts';

export const flooringInspectionNote: Source = {
  id: 'flooring-inspection-note',
  title: 'Calculating Shrink/Swell and Why It Matters',
  author: 'Wood Floor Business, a magazine of the flooring trade',
  url: 'https://www.woodfloorbusiness.com/inspector-blog/calculating-shrink-swell-amp-why-it-matters.html',
  note: 'Undated page. It takes fibre saturation at 28 %.',
};
