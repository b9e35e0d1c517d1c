import { type AnyRule, checkRange, type Unit } from '@scantling/rules';
import type { AnyCalculation, Fields, Figure, Outcome, Step } from './calculation.ts';
import { notAChoice, withUnit } from './field.ts';
import { type ReadForm, readForm, singleFields, type Texts } from './form.ts';
import {
  isLengthUnit,
  LENGTH_UNIT,
  type LengthUnit,
  lengthNumber,
  printLength,
  printOtherwise,
} from './lengths.ts';
import { printResult } from './numbers.ts';

/** One result as people read it. */
export interface Result {
  readonly name: string;
  readonly label: string;
  readonly text: string;
  /** A length once more, in the other unit. */
  readonly otherwise: string;
  /** Words, not numbers. */
  readonly words: boolean;
}

/** What a calculator shows for what its fields say. */
export interface Answer extends Pick<ReadForm, 'problems' | 'lengths'> {
  readonly lengthUnit: LengthUnit;
  /** One for each figure, or none where there is a problem. */
  readonly results: readonly Result[];
  /** What the results were printed from. */
  readonly computed: { readonly values: ReadForm['values']; readonly outcome: Outcome } | null;
  /** About the whole: out of a source's range, or values that do not go together. */
  readonly notes: readonly string[];
}

/** By the id of a rule, what of its card is needed to see whether its source covers a question. */
export type Ranges = Readonly<Record<string, Pick<AnyRule, 'inputs' | 'valid'>>>;

type Value = number | readonly number[];

/** One or several numbers and, once, their unit. */
export function printValue(value: Value, unit: Unit, exact: boolean, lengthUnit: LengthUnit): string {
  const number = (one: number) =>
    unit === 'mm' ? lengthNumber(one, lengthUnit, exact) : printResult(one, exact);
  return withUnit([value].flat().map(number).join(', '), unit === 'mm' ? lengthUnit : unit);
}

function printFigure(figure: Figure, lengthUnit: LengthUnit): Result {
  const { name, label } = figure;
  if ('text' in figure) return { name, label, text: figure.text, otherwise: '', words: true };
  const { value, unit, exact = false } = figure;
  if (value === null) return { name, label, text: 'no answer', otherwise: '', words: false };
  const otherwise = unit === 'mm' ? printOtherwise(value, lengthUnit, exact) : '';
  return { name, label, text: printValue(value, unit, exact, lengthUnit), otherwise, words: false };
}

/** A function's refusal in the words of its form: `saw requires cutMm above 0` becomes `This requires Cut above 0`. */
function inWords(message: string, fields: Fields, texts: Texts): string {
  const labels = new Map(
    singleFields(fields, texts).map(([name, { label }]) => [name.split('.').at(-1) as string, label]),
  );
  const named = [...labels].reduce(
    (text, [name, label]) => text.replaceAll(new RegExp(`\\b${name}\\b`, 'g'), label),
    message.replace(/^\w+ requires/, 'This requires'),
  );
  return `${named}.`;
}

const rangeNotes = (steps: readonly Step[], ranges: Ranges): string[] =>
  steps.flatMap(({ rule, given }) => {
    const card = ranges[rule];
    return card ? checkRange(card, given).map(({ message }) => message) : [];
  });

/** The answer with this outcome. */
export function withOutcome<A extends Pick<Answer, 'computed' | 'lengthUnit'>>(
  shown: A,
  outcome: Outcome,
  ranges: Ranges,
) {
  const results = outcome.figures.map((figure) => printFigure(figure, shown.lengthUnit));
  const notes = new Set([...(outcome.notes ?? []), ...rangeNotes(outcome.steps, ranges)]);
  return { ...shown, results, computed: shown.computed && { ...shown.computed, outcome }, notes: [...notes] };
}

/** The answer where a function refuses the values; any other error is a fault of ours, and thrown on. */
export function refused(
  shown: Pick<Answer, 'problems' | 'lengths' | 'lengthUnit'>,
  error: unknown,
  fields: Fields,
  texts: Texts,
): Answer {
  if (!(error instanceof RangeError)) throw error;
  return { ...shown, results: [], computed: null, notes: [inWords(error.message, fields, texts)] };
}

/** Reads the fields of a calculator, computes, and puts everything into words. Needs no page. */
export function answer(calculation: AnyCalculation, texts: Texts, ranges: Ranges = {}): Answer {
  const chosen = texts[LENGTH_UNIT] ?? 'mm';
  const lengthUnit = isLengthUnit(chosen) ? chosen : 'mm';
  const { problems, lengths, values } = readForm(calculation, texts, lengthUnit);
  if (!isLengthUnit(chosen)) problems[LENGTH_UNIT] = notAChoice(chosen);
  const about = { problems, lengths, lengthUnit };
  if (Object.keys(problems).length > 0) return { ...about, results: [], computed: null, notes: [] };

  try {
    const outcome = calculation.compute(values, (mm) => printLength(mm, lengthUnit));
    return withOutcome({ ...about, computed: { values, outcome } }, outcome, ranges);
  } catch (error) {
    return refused(about, error, calculation.fields, texts);
  }
}
