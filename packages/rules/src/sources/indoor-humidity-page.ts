import type { Source } from '../citation.ts';

export const indoorHumidityPage: Source = {
  id: 'indoor-humidity-page',
  title: 'Indoor Relative Humidity vs. Outdoor Relative Humidity and Temperature',
  author: 'a site of engineering tables',
  url: 'https://engineeringtoolbox.com/amp/temperature-relative-humidity-d_1118.html',
  note: 'Undated page. Below freezing its table takes saturation over ice.',
};
