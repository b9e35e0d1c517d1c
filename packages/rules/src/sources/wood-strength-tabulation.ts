import type { Source } from '../citation.ts';

export const woodStrengthTabulation: Source = {
  id: 'wood-strength-tabulation',
  title: 'Tree Species Strength Properties',
  author: 'not named on the page',
  url: 'http://synthmind.com/Tree_Species_Strength_Properties.htm',
  note: 'Undated page. Its figures equal those of the Wood Handbook at 12 % moisture content, though it heads its specific gravity ovendry.',
};
