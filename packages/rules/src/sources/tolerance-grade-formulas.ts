import type { Source } from '../citation.ts';

export const toleranceGradeFormulas: Source = {
  id: 'tolerance-grade-formulas',
  title: 'Formulas for standard international tolerance (IT) grades, per ISO 286-1 and IS 919',
  author: 'an engineering reference site',
  url: 'https://engineersedge.com/mechanical,045tolerances/formulas_international_tolerance_it_grades__15523.htm',
  note: 'Undated page. It quotes annex A of ISO 286-1.',
};
