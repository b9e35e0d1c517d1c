import type { Source } from '../citation.ts';

export const jcgm100: Source = {
  id: 'jcgm-100',
  title: 'Evaluation of measurement data: Guide to the expression of uncertainty in measurement',
  author: 'Joint Committee for Guides in Metrology',
  year: 2008,
  identifier: 'JCGM 100:2008',
  url: 'https://www.iso.org/sites/JCGM/GUM/JCGM100/C045315e-html/C045315e_FILES/MAIN_C045315e/05_e.html',
};
