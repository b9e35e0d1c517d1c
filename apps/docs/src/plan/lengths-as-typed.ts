import type { Field } from '@scantling/worktop/fields';
import { type LengthUnit, readLength } from '../calculator/lengths.ts';
import { CHOOSE, type Draft, isSection, typedNumber } from './draft.ts';
import { readPart } from './read.ts';

/** The longest text that a plan file takes for a length. */
const LONGEST_LENGTH = 64;

const isLength = (key: string) => key.endsWith('Mm');

const millimetres = (text: string, bareUnit?: LengthUnit): number | null => {
  const reading = readLength(text, bareUnit);
  return 'value' in reading ? reading.value : null;
};

/** A length that was typed without its unit, with it, where that says the same; any other text as it is. */
function withUnit(text: string, unit: LengthUnit): string {
  const named = `${text.trim()} ${unit}`;
  const bare = millimetres(text) === null && millimetres(text, unit) !== null;
  return bare && millimetres(named) === millimetres(text, unit) ? named : text;
}

/** A length as a plan file has it: as it was typed, with its unit unless that is the millimetre. */
export function lengthContent(text: string, unit: LengthUnit): string | number {
  const typed = unit === 'mm' ? text.trim() : withUnit(text, unit);
  return millimetres(typed) !== null && typed.length <= LONGEST_LENGTH
    ? typed
    : (millimetres(text, unit) ?? text);
}

/** A part of a form in which every length that was typed without a unit has it, so that another may be the one left out. */
export function withUnits(
  key: string,
  field: Field,
  draft: Draft | undefined,
  unit: LengthUnit,
): Draft | undefined {
  if (draft === undefined || draft === CHOOSE) return draft;
  if (field.kind === 'list' && Array.isArray(draft)) {
    return draft.map((row) => withUnits('', field.of, row, unit) ?? '');
  }
  if (field.kind === 'section' && isSection(draft)) {
    return Object.fromEntries(
      Object.entries(field.fields).map(([name, inner]) => [name, withUnits(name, inner, draft[name], unit)]),
    );
  }
  if (typeof draft !== 'string' || !isLength(key)) return draft;
  if (field.kind === 'figure') return withUnit(draft, unit);
  const { value } = readPart(key, field, draft, unit);
  // Without a space between: where nothing else parts the items of a list, spaces do.
  return Array.isArray(value) ? value.map((mm) => `${typedNumber(mm)}mm`).join('; ') : draft;
}
