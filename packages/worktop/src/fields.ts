/**
 * What may stand in each place of a plan: kinds, limits and a sentence about it. For forms and editors.
 *
 * @module worktop/fields
 */
export type { Choice, Field, Fields, Figure, Figures, List, Section, Text } from './plan/field.ts';
export { planField } from './plan/plan.ts';
