/**
 * What wood and bar stock to buy, and how to cut it.
 *
 * @module stock
 */

export { type BoardFeet, type BoardFeetInput, boardFeet, boardFeetRule } from './rules/board-feet.ts';
