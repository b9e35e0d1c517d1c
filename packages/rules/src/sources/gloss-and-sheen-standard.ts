import type { Source } from '../citation.ts';

export const glossAndSheenStandard: Source = {
  id: 'gloss-and-sheen-standard',
  title: 'Gloss and Sheen',
  author: 'Master Painters Institute',
  url: 'http://paintinfo.com/mpi/approved/sheen.shtml',
  note: 'Undated page that states the standard’s levels.',
};
