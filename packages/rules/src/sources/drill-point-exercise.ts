import type { Source } from '../citation.ts';

export const drillPointExercise: Source = {
  id: 'drill-point-exercise',
  title: 'Trigonometry exercise 3: length of a drill point, with its solution',
  author: 'a school for machinists',
  url: 'http://www.rose-training.com/tandp/solution3.htm',
  note: 'Undated exercise.',
};
