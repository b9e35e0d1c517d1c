import type { Source } from '../citation.ts';

export const woodMovementChart2021: Source = {
  id: 'wood-movement-chart-2021',
  title: 'Calculating Wood Movement',
  author: 'Wood, a woodworking magazine',
  year: 2021,
  identifier: 'September 2021',
  url: 'https://www.pressreader.com/usa/wood-usa-9KXH/20210901/281938840870684',
};
