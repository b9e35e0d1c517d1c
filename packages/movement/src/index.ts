/**
 * Equilibrium moisture content, and how wood shrinks and swells with it.
 *
 * @module movement
 */
export {
  type WidthChange,
  type WidthChangeInput,
  widthChange,
  widthChangeRule,
} from './rules/width-change.ts';
