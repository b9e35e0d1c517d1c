import type { Source } from '../citation.ts';

export const forestInventorySpecies: Source = {
  id: 'forest-inventory-species',
  title: 'Forest Inventory and Analysis: reference table of species',
  author: 'Forest Service, United States Department of Agriculture',
  url: 'https://research.fs.usda.gov/products/dataandtools/fia-datamart',
  note: 'Seen in part as a copy of the table. All names were seen in the source of a program for counting insects on trees: its list has the names of this table, and does not say where they come from.',
};
