import type { Source } from '../citation.ts';

export const oshaWoodDustPage: Source = {
  id: 'osha-wood-dust-page',
  title: 'Wood Dust: Evaluating Exposure',
  author: 'Occupational Safety and Health Administration',
  url: 'https://www.osha.gov/SLTC/wooddust/evaluation.html',
  note: 'Undated page; its ACGIH limits are of 2007.',
};
