import type { Source } from '../citation.ts';

export const mechanicalProperties1914: Source = {
  id: 'mechanical-properties-1914',
  title: 'The Mechanical Properties of Wood',
  author: 'S. J. Record',
  year: 1914,
  url: 'https://chestofbooks.com/home-improvement/woodworking/Mechanical-Properties-of-Wood/Stiffness-Of-Beams.html',
};
