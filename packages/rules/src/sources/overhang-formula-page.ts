import type { Source } from '../citation.ts';

export const overhangFormulaPage: Source = {
  id: 'overhang-formula-page',
  title: 'Simply supported beam with an overhanging load',
  author: 'an engineer',
  url: 'http://tquigley.com/T310.htm',
  note: 'Undated page of beam formulas.',
};
