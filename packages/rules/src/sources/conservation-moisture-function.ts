import type { Source } from '../citation.ts';

export const conservationMoistureFunction: Source = {
  id: 'conservation-moisture-function',
  title: 'ConSciR, a package for conservation science: Calculate Equilibrium Moisture Content for wood (EMC)',
  author: 'B. Shah',
  url: 'https://bhavshah01.github.io/ConSciR/reference/calcEMC_wood.html',
  note: 'Undated reference page of an R package, which prints what its examples gave when the page was built. It cites Simpson 1998.',
};
