import type { Source } from '../citation.ts';

export const threeStrengthsModule: Source = {
  id: 'three-strengths-module',
  title: 'Alligation Method for Mixing 3 strengths',
  author: 'a university course in pharmaceutical calculations',
  url: 'https://uhphar-4330.herokuapp.com/module/dilution_and_concentration/topics/three_strengths',
  note: 'Undated page of a course, with a solved problem.',
};
