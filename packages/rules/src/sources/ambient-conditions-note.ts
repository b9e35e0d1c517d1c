import type { Source } from '../citation.ts';

export const ambientConditionsNote: Source = {
  id: 'ambient-conditions-note',
  title: 'Air Temperature, Substrate Temperature, Relative Humidity, Dew Point',
  author: 'not named on the copy seen',
  url: 'https://fr.scribd.com/document/146044552/2-Ambient-Application-Conditions-v2',
  note: 'Undated section of a handbook on painting.',
};
