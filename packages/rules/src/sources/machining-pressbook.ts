import type { Source } from '../citation.ts';

export const machiningPressbook: Source = {
  id: 'machining-pressbook',
  title: 'Machining 1, an open textbook',
  author: 'community colleges of Washington State',
  url: 'https://openwa.pressbooks.pub/machining1/chapter/8pt5',
  note: 'Undated as seen: chapter 8, part 5, Drill Presses.',
};
