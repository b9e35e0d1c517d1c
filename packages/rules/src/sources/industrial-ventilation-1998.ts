import type { Source } from '../citation.ts';

export const industrialVentilation1998: Source = {
  id: 'industrial-ventilation-1998',
  title: 'Industrial Ventilation: A Manual of Recommended Practice',
  author: 'American Conference of Governmental Industrial Hygienists',
  year: 1998,
  identifier: '23rd edition',
  note: 'Recalled; the chapter on general ventilation was not seen.',
};
