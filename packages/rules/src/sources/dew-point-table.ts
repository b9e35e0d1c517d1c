import type { Source } from '../citation.ts';

export const dewPointTable: Source = {
  id: 'dew-point-table',
  title: 'Taupunkttabelle',
  author: 'not named on the copy seen',
  url: 'https://expydoc.com/doc/12113599/taupunkttabelle',
  note: 'Undated table in tenths of a degree Celsius, rounded, for painters. Below 0 °C its figures are frost points. Some cells are misprinted.',
};
