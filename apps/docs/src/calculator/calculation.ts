import type { ChoiceInput, InputSpec, NumberInput, NumberListInput, Unit } from '@scantling/rules';
import type { Piece } from './piece.ts';

/** A number that may be left blank; the value is then `null`. */
export type BlankNumber = NumberInput & { readonly blank: true };

/** A text of one line. */
export interface TextField {
  readonly kind: 'text';
  readonly label: string;
  readonly help?: string;
  readonly longest: number;
}

export type SimpleField = InputSpec | BlankNumber | TextField;

/** Fields that are asked for once in each of several rows. */
export interface RowsField {
  readonly kind: 'rows';
  /** All of them: "Rails". */
  readonly label: string;
  /** One of them: "Rail". */
  readonly row: string;
  readonly help?: string;
  readonly minRows: number;
  readonly maxRows: number;
  readonly fields: Readonly<Record<string, SimpleField>>;
}

export type Field = SimpleField | RowsField;
export type Fields = Readonly<Record<string, Field>>;

type SimpleValue<F> = F extends BlankNumber
  ? number | null
  : F extends NumberInput
    ? number
    : F extends NumberListInput
      ? readonly number[]
      : F extends ChoiceInput
        ? keyof F['options'] & string
        : F extends TextField
          ? string
          : never;

/** What is read from fields: lengths in millimetres. */
export type Values<F extends Fields> = {
  readonly [K in keyof F]: F[K] extends RowsField
    ? readonly { readonly [C in keyof F[K]['fields']]: SimpleValue<F[K]['fields'][C]> }[]
    : SimpleValue<F[K]>;
};

/** One figure of an answer: numbers with their unit, or words. */
export type Figure = { readonly name: string; readonly label: string } & (
  | { readonly value: number | readonly number[] | null; readonly unit: Unit; readonly exact?: boolean }
  | { readonly text: string }
);

/** A table of an answer. Numbers in a column with a unit are printed in it, lengths in both units. */
export interface Table {
  readonly caption: string;
  readonly columns: readonly { readonly label: string; readonly unit?: Unit }[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/**
 * A drawing, in whatever unit its box has. A shape with `data-drag-x` and `data-drag-y` moves the fields of those
 * names when it is dragged, by as many millimetres as it is dragged in the coordinates of the group that it is in.
 */
export interface Drawing {
  /** What it shows, for who cannot see it. */
  readonly title: string;
  /** Left, top, width and height. */
  readonly box: readonly [number, number, number, number];
  readonly shapes: readonly Piece[];
}

/** One rule put to use, for who wants to see the working. */
export interface Step {
  /** What is computed: "Change from the driest to the wettest month". */
  readonly what: string;
  /** The id of the rule. */
  readonly rule: string;
  readonly given: object;
  readonly gives: object;
}

/** What a calculation gives. */
export interface Outcome {
  readonly figures: readonly Figure[];
  /** Whether it will do, where that is the question. */
  readonly verdict?: { readonly good: boolean; readonly says: string };
  readonly drawing?: Drawing;
  readonly tables?: readonly Table[];
  /** How it was found and what is proven of it. */
  readonly reasons?: readonly string[];
  /** What deserves a second look. */
  readonly notes?: readonly string[];
  /** What can hurt, besides what the rules say of it. The page shows those of the first answer. */
  readonly cautions?: readonly string[];
  readonly steps: readonly Step[];
  /** What takes its time, or has to be loaded first: gives the outcome that takes the place of this one. */
  readonly later?: () => Promise<Outcome>;
}

/** A length with its unit, in the unit that was chosen. */
export type Say = (mm: number) => string;

/** Texts of the fields to begin with; of rows, one object each. */
export type FirstTexts = Readonly<Record<string, string | readonly Readonly<Record<string, string>>[]>>;

/** What is asked, and how it is answered. Needs no page. */
export interface Calculation<F extends Fields = Fields> {
  readonly fields: F;
  readonly first: FirstTexts;
  /** @throws RangeError where the values do not go together: its message is shown. */
  compute(values: Values<F>, say: Say): Outcome;
}

/** A calculator for one job at the bench, which may use several rules. */
export interface Job<F extends Fields = Fields> extends Calculation<F> {
  readonly title: string;
  /** One or two sentences: the question it answers. */
  readonly summary: string;
  /** Under which heading it is listed. */
  readonly group: JobGroup;
  /** Ids of the rules that its steps may name. */
  readonly rules: readonly string[];
  /** What can hurt, besides what its rules say of it. */
  readonly cautions?: readonly string[];
}

export const jobGroups = ['Measure and buy', 'Wood and seasons', 'Holes', 'Hold it down', 'Finish'] as const;
export type JobGroup = (typeof jobGroups)[number];

/** A calculation whose fields are not known to the type checker. */
// biome-ignore lint/suspicious/noExplicitAny: only `any` both takes and gives the values of whatever fields
export type AnyCalculation = Calculation<any>;

/** Ties the fields of a job to the types of their values. */
export const defineJob = <const F extends Fields>(job: Job<F>): Job<F> => job;

/** A field for a length, with its limits in millimetres. */
export const mm = (label: string, min: number, max: number, help?: string) =>
  ({ kind: 'number', label, unit: 'mm', min, max, ...(help && { help }) }) as const;
