import { forestInventorySpecies, woodHandbook2010 } from '@scantling/rules/sources';
import type { PrintedTable } from './citation.ts';

/** Where botanical names stand that no table of figures prints: as seen, and as recalled. */
export const speciesList: PrintedTable = {
  source: forestInventorySpecies,
  at: 'columns COMMON_NAME and SCIENTIFIC_NAME',
};
export const woodDescriptions: PrintedTable = { source: woodHandbook2010, at: 'ch. 2' };
