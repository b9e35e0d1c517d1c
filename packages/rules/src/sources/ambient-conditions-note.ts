import type { Source } from '../citation.ts';

export const ambientConditionsNote: Source = {
  id: 'ambient-conditions-note',
  title: 'Air Temperature, Substrate Temperature, Relative Humidity, Dew Point',
  author: 'not named on the copy seen',
  note: 'Undated section of a handbook on painting.',
};
