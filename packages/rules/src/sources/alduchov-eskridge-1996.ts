import type { Source } from '../citation.ts';

export const alduchovEskridge1996: Source = {
  id: 'alduchov-eskridge-1996',
  title: 'Improved Magnus Form Approximation of Saturation Vapor Pressure',
  author: 'O. A. Alduchov and R. E. Eskridge',
  year: 1996,
  identifier: 'Journal of Applied Meteorology 35, 601–609',
  url: 'https://rdrr.io/github/laubblatt/phaselag/man/Magnus_Alduchov1996Improved.html',
  note: 'Seen as a function library states it.',
};
