import type { Citation } from './citation.ts';
import type { Limits, ListLimits } from './require.ts';
import type { Unit } from './unit.ts';
import type { RuleExample } from './worked-example.ts';

/**
 * What a rule rests on: `exact` by definition, `derived` by algebra or geometry, `measured` in experiments,
 * `convention` of the trade.
 */
export type Basis = 'exact' | 'derived' | 'measured' | 'convention';

interface Labelled {
  /** What people call it, without the unit. */
  readonly label: string;
  /** One sentence for whoever has to fill it in. */
  readonly help?: string;
}

/** A number with its physical limits. */
export interface NumberInput extends Labelled, Limits {
  readonly kind: 'number';
  readonly unit: Unit;
}

/** A list of numbers with the limits of each. */
export interface NumberListInput extends Labelled, ListLimits {
  readonly kind: 'numbers';
  readonly unit: Unit;
}

/** One of a few names, each with what people call it. */
export interface ChoiceInput<T extends string = string> extends Labelled {
  readonly kind: 'choice';
  readonly options: { readonly [K in T]: string };
}

/** How an input is described. */
export type InputSpec = NumberInput | NumberListInput | ChoiceInput;

type InputSpecOf<T> = T extends number
  ? NumberInput
  : T extends readonly number[]
    ? NumberListInput
    : T extends string
      ? ChoiceInput<T>
      : never;

/** A result: a number, a list of numbers, or `null` for "no answer". */
export interface OutputSpec extends Labelled {
  readonly unit: Unit;
}

/**
 * How an output answers to one input while the others stay: it never falls (`increasing`), never rises
 * (`decreasing`), follows a straight line (`linear`), or scales with it (`proportional`).
 */
export type LawShape = 'increasing' | 'decreasing' | 'linear' | 'proportional';

/** A law that one output obeys. */
export interface Law<I, O> {
  readonly of: keyof O & string;
  readonly by: { readonly [K in keyof I]?: LawShape };
}

/** Another published way to the same number, and the agreement it must show. */
export interface Peer<I, O> {
  readonly name: string;
  readonly of: keyof O & string;
  compute(input: I): number;
  /** Largest difference, as a share of the larger of the two. */
  readonly relative?: number;
  /** Largest difference in the output's unit. */
  readonly absolute?: number;
  /** Where the agreement is claimed; elsewhere in the rule's limits it is not asked for. */
  readonly over?: { readonly [K in keyof I]?: readonly [number, number] };
  readonly source?: Citation;
}

/** A condition between several inputs; where it does not hold the function throws. */
export interface Constraint<I> {
  readonly says: string;
  holds(input: I): boolean;
}

/** The card of a trade rule, the unit that gets reviewed. */
export interface Rule<I, O> {
  /** `package/file-name`: `movement/width-change`. */
  readonly id: string;
  readonly title: string;
  /** One or two sentences for somebody who has never heard of it. */
  readonly summary: string;
  readonly basis: Basis;
  readonly inputs: { readonly [K in keyof I]-?: InputSpecOf<I[K]> };
  readonly outputs: { readonly [K in keyof O]-?: OutputSpec };
  /** The documented function itself. */
  readonly compute: (input: I) => O;
  /** TeX, in the source's symbols. */
  readonly formula: string;
  /** What each symbol of the formula is. */
  readonly symbols?: { readonly [symbol: string]: string };
  /**
   * The value of each symbol of the formula in one computation, in the units that the source's formula takes
   * (where those are not the rule's own, `symbols` names the unit). A symbol is TeX as it stands in the formula:
   * `D_I`, `\\Delta D`. What is a list, or an index of a sum, has no value and stays a symbol.
   */
  readonly inSymbols?: (input: I, output: O) => { readonly [symbol: string]: number };
  /** The range that the source claims, per input: outside it there is a number and a note. */
  readonly valid?: { readonly [K in keyof I]?: readonly [number, number] };
  readonly requires?: readonly Constraint<I>[];
  /** Empty only for a convention: "common practice, no source". */
  readonly sources: readonly Citation[];
  readonly examples: readonly RuleExample<I, O>[];
  readonly laws?: readonly Law<I, O>[];
  readonly peers?: readonly Peer<I, O>[];
  readonly cautions?: readonly string[];
}

/** A rule whose inputs and outputs are not known to the type checker, as in a list of all rules. */
// biome-ignore lint/suspicious/noExplicitAny: a rule both takes and gives its inputs, so only `any` holds them all
export type AnyRule = Rule<any, any>;

/**
 * Ties a function to its card and checks their types against each other. The card comes as a function, and
 * each call is annotated `@__PURE__`: a bundler then leaves the card out of programs that only compute.
 *
 * @param card - Gives the card.
 * @returns The card.
 * @example
 * ```ts
 * import { defineRule } from '@scantling/rules';
 * const half = ({ lengthMm }) => ({ halfMm: lengthMm / 2 });
 * defineRule(() => ({ id: 'demo/half', compute: half })).compute({ lengthMm: 3 }) // => { halfMm: 1.5 }
 * ```
 */
export function defineRule<I, O>(card: () => Rule<I, O>): Rule<I, O> {
  return card();
}

const isRule = (value: unknown): value is AnyRule =>
  typeof value === 'object' && value !== null && 'compute' in value && 'formula' in value && 'id' in value;

/**
 * The rules among a package's exports, in the order of their ids.
 *
 * @param exports - A module namespace: `import * as movement from '@scantling/movement'`.
 * @returns Every exported card.
 * @example
 * ```ts
 * import * as rules from '@scantling/rules';
 * rules.rulesIn(rules) // => []
 * ```
 */
export function rulesIn(exports: object): AnyRule[] {
  return Object.values(exports)
    .filter(isRule)
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}
