import type { Source } from '../citation.ts';

export const humidityFormulasPage: Source = {
  id: 'humidity-formulas-page',
  title: 'Dew Point and Humidity calculations',
  author: 'a site on weather measurement',
  note: 'Undated page.',
};
