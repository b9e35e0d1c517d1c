import type { Source } from '../citation.ts';

export const civilFormulasHandbook: Source = {
  id: 'civil-formulas-handbook',
  title: 'Civil Engineering Formulas, chapter 6: Timber Engineering Formulas',
  author: 'the author of a handbook of civil engineering formulas',
  note: 'Undated as seen: pages 170 and 171. Its title is recalled. Rules for wood screws from before 1991.',
};
