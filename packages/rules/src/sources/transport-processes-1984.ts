import type { Source } from '../citation.ts';

export const transportProcesses1984: Source = {
  id: 'transport-processes-1984',
  title: 'Transport Processes in Wood',
  author: 'J. F. Siau',
  year: 1984,
  identifier: 'Springer Series in Wood Science',
  note: 'Not seen itself: its equations, with their numbers, stand in the published finite element model of a drying slab that cites it.',
};
