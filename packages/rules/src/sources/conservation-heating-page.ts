import type { Source } from '../citation.ts';

export const conservationHeatingPage: Source = {
  id: 'conservation-heating-page',
  title: 'Conservation heating',
  author: 'a site on the physics of conservation, its author not named on the page seen',
  url: 'http://conservationphysics.org/atmcalc/consheat.html',
  note: 'Undated page.',
};
