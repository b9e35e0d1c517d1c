import type { Source } from '../citation.ts';

export const organicFinishingGuidebook2013: Source = {
  id: 'organic-finishing-guidebook-2013',
  title: 'Organic Finishing Guidebook, Appendix B: Calculation of VOC in Coatings',
  author: 'Metal Finishing',
  year: 2013,
  url: 'https://metalfinishing.epubxp.com/i/218436-2013/826',
};
