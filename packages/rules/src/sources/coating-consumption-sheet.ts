import type { Source } from '../citation.ts';

export const coatingConsumptionSheet: Source = {
  id: 'coating-consumption-sheet',
  title: 'Theoretical Spreading Rate',
  author: 'a coating maker, not named on the copy seen',
  url: 'https://www.scribd.com/document/457535557/THEORETICAL-SPREADING-RATE',
  note: 'Undated note, seen as a copy.',
};
