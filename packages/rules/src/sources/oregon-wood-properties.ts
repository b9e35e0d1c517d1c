import type { Source } from '../citation.ts';

export const oregonWoodProperties: Source = {
  id: 'oregon-wood-properties',
  title: 'Table of Relative Working and Physical Properties (inch-pound)',
  author: 'Oregon Wood Innovation Center, Oregon State University',
  url: 'https://owic.oregonstate.edu/table-relative-working-and-physical-properties-inch-pound',
  note: 'Undated page, which cites the Wood Handbook.',
};
