import type { Source } from '../citation.ts';

export const metalFurnitureCoatingRule: Source = {
  id: 'metal-furniture-coating-rule',
  title: 'Standards of Performance for Surface Coating of Metal Furniture',
  author: 'Wisconsin Department of Natural Resources, after the U.S. Environmental Protection Agency',
  identifier: 'Wis. Admin. Code NR 440.48; 40 CFR 60.313',
  url: 'https://d1tvxue8o4w0fl.cloudfront.net/regulation/wisconsin-administrative-code/agency-department-of-natural-resources/environmental-protection-air-pollution-control/chapter-nr-440-standards-of-performance-for-new-stationary-sources/subchapter-ii-standards-of-performance/section-nr-44048-surface-coating-of-metal-furniture',
  note: 'Undated text of a rule in force, which repeats the federal one. Wood is another base, and a small shop another place.',
};
