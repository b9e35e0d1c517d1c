import type { Source } from '../citation.ts';

export const coatingConversionChart: Source = {
  id: 'coating-conversion-chart',
  title: 'Estimating Guide: Calculation/Conversion Chart',
  author: 'a coating maker, not named on the copy seen',
  url: 'https://www.scribd.com/document/104802451/Calculation-DFT-WFT-Measurement',
  note: 'Undated bulletin, seen as a copy with misprints: the table gives 527 ft²/gal for 72 % at 2 mil, where its own formula gives 577; the example of thinning gives 2.8 mil, where 8 × 35 % / 110 % is 2.5.',
};
