import type { Source } from '../citation.ts';

export const humidityFormulasPage: Source = {
  id: 'humidity-formulas-page',
  title: 'Dew Point and Humidity calculations',
  author: 'a site on weather measurement, after a maker of instruments',
  url: 'https://www.metpod.co.uk/calc-dew-point.html',
  note: 'Undated page.',
};
