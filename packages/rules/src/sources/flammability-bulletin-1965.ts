import type { Source } from '../citation.ts';

export const flammabilityBulletin1965: Source = {
  id: 'flammability-bulletin-1965',
  title: 'Flammability Characteristics of Combustible Gases and Vapors',
  author: 'M. G. Zabetakis, U.S. Bureau of Mines',
  year: 1965,
  identifier: 'Bulletin 627',
  note: 'Recalled.',
};
