/**
 * The publications that rules and tables rest on, one file each.
 *
 * @module rules/sources
 */

export { concreteMathematics1994 } from './sources/concrete-mathematics-1994.ts';
export { geometryPrimer2011 } from './sources/geometry-primer-2011.ts';
export { woodHandbook2010 } from './sources/wood-handbook-2010.ts';
