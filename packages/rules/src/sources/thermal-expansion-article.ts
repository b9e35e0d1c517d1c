import type { Source } from '../citation.ts';

export const thermalExpansionArticle: Source = {
  id: 'thermal-expansion-article',
  title: 'Thermal expansion: coefficients for various materials',
  author: 'an encyclopedia, its authors not named on the reprint seen',
  url: 'https://liquisearch.com/thermal_expansion/thermal_expansion_coefficients_for_various_materials',
  note: 'Undated article, seen as a reprint.',
};
