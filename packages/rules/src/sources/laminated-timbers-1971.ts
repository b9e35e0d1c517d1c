import type { Source } from '../citation.ts';

export const laminatedTimbers1971: Source = {
  id: 'laminated-timbers-1971',
  title: 'Moisture Content of Laminated Timbers in Use in the Rocky Mountain Area',
  author: 'L. A. Mueller, D. C. Markstrom, R. L. Barger',
  year: 1971,
  identifier: 'USDA Forest Service Research Paper RM-73',
  note: 'Its abstract was seen in a text stored at archive.org.',
};
