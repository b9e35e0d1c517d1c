/**
 * The contract for a trade rule: one documented function and the card that says what it takes, what it gives,
 * where it comes from, where it holds, and how it is checked.
 *
 * @module rules
 */
export { checkRange, type RangeNote, type RuleRange } from './check-range.ts';
export type { Citation, Confirmation, Source, Tier } from './citation.ts';
export {
  type AnyRule,
  type Basis,
  type ChoiceInput,
  type Constraint,
  defineRule,
  type InputSpec,
  type Law,
  type LawShape,
  type NumberInput,
  type NumberListInput,
  type OutputSpec,
  type Peer,
  type Rule,
  rulesIn,
} from './define-rule.ts';
export {
  type Limits,
  type ListLimits,
  plusZero,
  requireChoice,
  requireFields,
  requireInputs,
  requireList,
  requireNumber,
  requireThat,
} from './require.ts';
export { rowCitation, type TableErratum, type TableProvenance, type TableRow } from './table.ts';
export { type Unit, unitOf } from './unit.ts';
export {
  type Expected,
  type ExpectedValue,
  expectedValue,
  type Printed,
  type RuleExample,
} from './worked-example.ts';
