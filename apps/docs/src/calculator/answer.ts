import { type AnyRule, checkRange, type InputSpec, type OutputSpec, type Unit } from '@scantling/rules';
import { type InputValue, notAChoice, readField, withUnit } from './field.ts';
import { isLengthUnit, LENGTH_UNIT, type LengthUnit, lengthNumber, printOtherwise } from './lengths.ts';
import { printResult } from './numbers.ts';

/** One result as people read it. */
export interface Result {
  readonly name: string;
  readonly label: string;
  readonly text: string;
  /** A length once more, in the other unit. */
  readonly otherwise: string;
}

/** What a calculator shows for what its fields say. */
export interface Answer {
  /** What is wrong with a field, by the name of its input. */
  readonly problems: Readonly<Record<string, string>>;
  /** Each length that was read, in the other unit, by the name of its input. */
  readonly lengths: Readonly<Record<string, string>>;
  /** One for each output, or none where there is a problem. */
  readonly results: readonly Result[];
  /** The numbers behind the results. */
  readonly computed: {
    readonly input: Readonly<Record<string, InputValue>>;
    readonly output: Readonly<Record<string, unknown>>;
    readonly lengthUnit: LengthUnit;
  } | null;
  /** About the whole: out of a source's range, or inputs that do not go together. */
  readonly notes: readonly string[];
}

type Value = number | readonly number[];

/** One or several numbers and, once, their unit. */
function print(value: Value, unit: Unit, exact: boolean, lengthUnit: LengthUnit): string {
  const number = (one: number) =>
    unit === 'mm' ? lengthNumber(one, lengthUnit, exact) : printResult(one, exact);
  return withUnit([value].flat().map(number).join(', '), unit === 'mm' ? lengthUnit : unit);
}

/** Lengths once more in the other unit; nothing for other quantities. */
function printAgain(value: Value, unit: Unit, exact: boolean, lengthUnit: LengthUnit): string {
  if (unit !== 'mm') return '';
  if (typeof value === 'number') return printOtherwise(value, lengthUnit, exact);
  return print(value, unit, exact, lengthUnit === 'mm' ? 'in' : 'mm');
}

/** A function's refusal in the words of its form: `saw requires cutMm above 0` becomes `This requires Cut above 0`. */
function inWords(message: string, inputs: Readonly<Record<string, InputSpec>>): string {
  const named = Object.entries(inputs).reduce(
    (text, [name, { label }]) => text.replaceAll(new RegExp(`\\b${name}\\b`, 'g'), label),
    message.replace(/^\w+ requires/, 'This requires'),
  );
  return `${named}.`;
}

/** Reads the fields of a rule's calculator, computes, and puts everything into words. Needs no page. */
export function answer(rule: AnyRule, texts: Readonly<Record<string, string>>): Answer {
  const problems: Record<string, string> = {};
  const lengths: Record<string, string> = {};
  const input: Record<string, InputValue> = {};

  const chosen = texts[LENGTH_UNIT] ?? 'mm';
  if (!isLengthUnit(chosen)) problems[LENGTH_UNIT] = notAChoice(chosen);
  const lengthUnit = isLengthUnit(chosen) ? chosen : 'mm';

  for (const [name, spec] of Object.entries<InputSpec>(rule.inputs)) {
    const reading = readField(spec, texts[name] ?? '', lengthUnit);
    if ('problem' in reading) {
      problems[name] = reading.problem;
      continue;
    }
    input[name] = reading.value;
    if (spec.kind !== 'choice') {
      lengths[name] = printAgain(reading.value as Value, spec.unit, false, lengthUnit);
    }
  }
  const refused = (notes: string[]): Answer => ({ problems, lengths, results: [], computed: null, notes });
  if (Object.keys(problems).length > 0) return refused([]);

  try {
    const output = rule.compute(input);
    const exact = rule.basis === 'exact';
    const results = Object.entries<OutputSpec>(rule.outputs).map(([name, { label, unit }]) => {
      const value: Value | null = output[name];
      const [text, otherwise] =
        value === null
          ? ['no answer', '']
          : [print(value, unit, exact, lengthUnit), printAgain(value, unit, exact, lengthUnit)];
      return { name, label, text, otherwise };
    });
    const notes = checkRange(rule, input).map(({ message }) => message);
    return { problems, lengths, results, computed: { input, output, lengthUnit }, notes };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return refused([inWords(error.message, rule.inputs)]);
  }
}
