import type { Source } from '../citation.ts';

export const timberDesignToEurocode: Source = {
  id: 'timber-design-to-eurocode',
  title: 'Structural Timber Design to Eurocode 5',
  author: 'J. Porteous and A. Kermani',
  year: 2007,
  url: 'https://www.eurocode.us/structural-timber-design/i-tje.html',
  note: 'Seen as a site about the Eurocodes carries its sections; authors and year are from memory.',
};
