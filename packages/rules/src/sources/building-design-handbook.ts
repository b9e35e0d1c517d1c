import type { Source } from '../citation.ts';

export const buildingDesignHandbook: Source = {
  id: 'building-design-handbook',
  title: 'Building Design and Construction Handbook, section 10: wood construction',
  author: 'F. S. Merritt and J. T. Ricketts',
  year: 2000,
  url: 'https://civilengineeringx.com/bdac/Wood-Screws/',
  note: 'Its pages on wood screws and on nails, which put the provisions of the National Design Specification into words, were seen as an engineering site carries them. The year is that of the sixth edition (memory).',
};
