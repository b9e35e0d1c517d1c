import type { Source } from '../citation.ts';

export const cylinderPackings1967: Source = {
  id: 'cylinder-packings-1967',
  title: 'Packing Cylinders into Cylindrical Containers',
  author: 'S. Kravitz',
  year: 1967,
  identifier: 'Mathematics Magazine 40, pp. 65–70',
  note: 'Its radii were seen as quoted in a model of an optimization library; that of ten circles, 0.26222, and of seventeen, 0.20866, have been bettered since.',
};
