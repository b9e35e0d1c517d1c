/**
 * The publications that rules and tables rest on, one file each.
 *
 * @module rules/sources
 */
export { woodHandbook2010 } from './sources/wood-handbook-2010.ts';
