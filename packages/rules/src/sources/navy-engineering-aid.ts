import type { Source } from '../citation.ts';

export const navyEngineeringAid: Source = {
  id: 'navy-engineering-aid',
  title: 'Engineering Aid Basic',
  author: 'U.S. Navy',
  url: 'http://www.tpub.com/engbas/6-3.htm',
  note: 'Undated page of the training manual, ch. 6.',
};
