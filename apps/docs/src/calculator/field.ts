import type { AnyRule, NumberInput, NumberListInput, Unit } from '@scantling/rules';
import type { SimpleField } from './calculation.ts';
import { type LengthUnit, lengthLimits, readLength, restateLength } from './lengths.ts';
import { printNumber, type Reading, readNumber } from './numbers.ts';

/** A value of a field; `null` where it may be blank and is. */
export type FieldValue = number | readonly number[] | string | null;

const LONGEST_LIST = 2000;

/** A unit as people say it: `1/%` is "per %"; a price is in whatever money its reader pays with. */
export const unitInWords = (unit: Unit): string => (unit === '¤' ? '' : unit.replace(/^1\//, 'per '));

/** A printed number with its unit. */
export const withUnit = (text: string, unit: Unit): string =>
  unit === '1' || unit === '¤' ? text : `${text} ${unitInWords(unit)}`;

/** The allowed range as people read it. */
export function limitsText(
  { min, max, unit, integer }: NumberInput | NumberListInput,
  lengthUnit: LengthUnit,
): string {
  if (unit === 'mm') return lengthLimits(min, max, lengthUnit);
  return `${integer ? 'a whole number ' : ''}${printNumber(min, 9)} to ${withUnit(printNumber(max, 9), unit)}`;
}

function readOne(spec: NumberInput | NumberListInput, text: string, lengthUnit: LengthUnit): Reading<number> {
  const { unit, min, max, integer } = spec;
  const bare = unit !== '1' && text.trim().endsWith(unit) ? text.trim().slice(0, -unit.length) : text;
  const reading = unit === 'mm' ? readLength(text, lengthUnit) : readNumber(bare);
  if ('problem' in reading) return reading;
  const { value } = reading;
  if (value >= min && value <= max && !(integer && value % 1)) return reading;
  return { problem: `Must be ${limitsText(spec, lengthUnit)}.` };
}

/** Splits at semicolons where there are any, else at commas, else at spaces: so a list may hold "12,5" or "5 3/8". */
function items(text: string): string[] {
  const separator = [';', ',', '\n'].find((mark) => text.includes(mark)) ?? /\s+/;
  return text
    .split(separator)
    .map((item) => item.trim())
    .filter((item) => item !== '');
}

function readList(spec: NumberListInput, text: string, lengthUnit: LengthUnit): Reading<readonly number[]> {
  if (text.length > LONGEST_LIST) return { problem: `Longer than ${LONGEST_LIST} characters.` };
  const parts = items(text);
  if (parts.length < spec.minItems || parts.length > spec.maxItems) {
    return { problem: `Give ${spec.minItems} to ${spec.maxItems} numbers, not ${parts.length}.` };
  }
  const values: number[] = [];
  for (const [i, part] of parts.entries()) {
    const reading = readOne(spec, part, lengthUnit);
    if ('problem' in reading) return { problem: `Number ${i + 1}: ${reading.problem}` };
    values.push(reading.value);
  }
  return { value: values };
}

export const notAChoice = (text: string): string => `“${text.slice(0, 40)}” is not one of the choices.`;

/** Reads what was typed into a field. */
export function readField(field: SimpleField, text: string, lengthUnit: LengthUnit): Reading<FieldValue> {
  if (field.kind === 'number') {
    if ('blank' in field && text.trim() === '') return { value: null };
    return readOne(field, text, lengthUnit);
  }
  if (field.kind === 'numbers') return readList(field, text, lengthUnit);
  if (field.kind === 'choice')
    return Object.hasOwn(field.options, text) ? { value: text } : { problem: notAChoice(text) };
  const line = text.trim();
  return line.length <= field.longest
    ? { value: line }
    : { problem: `Longer than ${field.longest} characters.` };
}

/** What is typed into the field of a length or of several, with bare numbers said again in another unit. */
export function restateField(field: SimpleField, text: string, from: LengthUnit, to: LengthUnit): string {
  if (!('unit' in field) || field.unit !== 'mm') return text;
  const parts = field.kind === 'numbers' ? items(text) : [text];
  return parts.map((part) => restateLength(part, from, to)).join('; ');
}

/** What the field of one input says for a value, lengths in millimetres. */
function fieldText(value: number | readonly number[] | string): string {
  return typeof value === 'string'
    ? value
    : [value]
        .flat()
        .map((one) => printNumber(one, 10).replaceAll('−', '-'))
        .join('; ');
}

/** The texts of all fields for the inputs of a worked example. */
export function fieldTexts(rule: AnyRule, given: object): Record<string, string> {
  return Object.fromEntries(
    Object.keys(rule.inputs).map((name) => [name, fieldText(given[name as keyof object])]),
  );
}
