import type { Source } from '../citation.ts';

export const nioshPocketGuide: Source = {
  id: 'niosh-pocket-guide',
  title: 'NIOSH Pocket Guide to Chemical Hazards',
  author: 'National Institute for Occupational Safety and Health',
  year: 2007,
  identifier: 'DHHS (NIOSH) Publication No. 2005-149',
  url: 'https://www.cdc.gov/niosh/npg/',
  note: 'Seen page by page, some on copies of the site.',
};
