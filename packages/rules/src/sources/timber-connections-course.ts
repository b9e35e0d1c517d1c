import type { Source } from '../citation.ts';

export const timberConnectionsCourse: Source = {
  id: 'timber-connections-course',
  title: 'Bolt Yield Limit Equations for Single Shear',
  author: 'Missouri University of Science and Technology',
  url: 'https://web.mst.edu/jthomas/classes/5260/concept/13/03/index.html',
  note: 'Undated page of a course in wood design; it follows the NDS of 2005.',
};
