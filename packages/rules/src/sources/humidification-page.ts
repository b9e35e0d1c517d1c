import type { Source } from '../citation.ts';

export const humidificationPage: Source = {
  id: 'humidification-page',
  title: 'Do Outdoor Temperatures Affect Indoor Humidity Levels?',
  author: 'a maker of humidifiers',
  url: 'https://www.condair.com/why-humidify-importance-of-humidification/Affects-of-Outdoor-Air-on-Indoor-Humidity',
  note: 'Undated page.',
};
