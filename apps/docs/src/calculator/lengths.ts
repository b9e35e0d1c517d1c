import { formatFraction, LengthSyntaxError, parseLength } from '@scantling/units';
import { printNumber, type Reading } from './numbers.ts';

/** Which unit a number without one is in, and in which a length is said first. */
export type LengthUnit = 'mm' | 'in';

export const lengthUnits: Readonly<Record<LengthUnit, string>> = { mm: 'mm', in: 'inches' };

export const isLengthUnit = (text: string): text is LengthUnit => Object.hasOwn(lengthUnits, text);

/** Name of the field that chooses between them. No input can be called so. */
export const LENGTH_UNIT = 'length-unit';

const mmPer: Readonly<Record<LengthUnit, number>> = { mm: 1, in: 25.4 };

/** Reads a length as it stands on a tape, a number without a unit in the unit chosen. */
export function readLength(text: string, bareUnit?: LengthUnit): Reading<number> {
  if (text.trim() === '') return { problem: 'Give a length.' };
  try {
    return { value: parseLength(text, bareUnit ? { bareUnit } : {}) };
  } catch (error) {
    if (!(error instanceof LengthSyntaxError)) throw error;
    const where =
      error.position < text.length ? `at “${text.slice(error.position, error.position + 12)}”` : 'at the end';
    return { problem: `Not a length: expected ${error.expected} ${where}.` };
  }
}

/** Less is rounding, not length. */
const NANOMETRE = 1e-6;

/** A length as a number: to 0.01 mm or 0.001 in, small ones to three digits; to nine digits where it is exact. */
export function lengthNumber(mm: number, unit: LengthUnit, exact = false): string {
  const value = Math.abs(mm) < NANOMETRE ? 0 : mm / mmPer[unit];
  const decimals = unit === 'mm' ? 2 : 3;
  return printNumber(value, exact ? 9 : Math.max(3, Math.ceil(Math.log10(Math.abs(value))) + decimals));
}

/** The same with its unit. */
export const printLength = (mm: number, unit: LengthUnit, exact = false): string =>
  `${lengthNumber(mm, unit, exact)} ${unit}`;

const SIXTY_FOURTH_MM = 25.4 / 64;

/** The nearest mark on an inch tape, for lengths that reach one; "about" where the length is beside it. */
function nearestMark(mm: number): string {
  const ticks = mm / SIXTY_FOURTH_MM;
  if (Math.abs(ticks) < 0.5 || Math.abs(mm) > 1e6) return '';
  const mark = formatFraction(mm, { unit: 'in', denominator: 64 }).replace('-', '−');
  return Math.abs(ticks - Math.round(ticks)) < 1e-6 ? mark : `about ${mark}`;
}

/** A length once more in the unit that was not chosen, and as a mark on an inch tape; of several, only their numbers. */
export function printOtherwise(mm: number | readonly number[], chosen: LengthUnit, exact = false): string {
  const unit = chosen === 'mm' ? 'in' : 'mm';
  if (typeof mm !== 'number') return `${mm.map((one) => lengthNumber(one, unit, exact)).join(', ')} ${unit}`;
  const other = printLength(mm, unit, exact);
  const mark = nearestMark(mm);
  return mark === '' || mark === printLength(mm, 'in', exact) ? other : `${other}, ${mark}`;
}

/** Limits of a length. */
export const lengthLimits = (minMm: number, maxMm: number, unit: LengthUnit): string =>
  `${lengthNumber(minMm, unit)} to ${printLength(maxMm, unit)}`;

/** A length typed without a unit, said again in another unit; any other text stays as it is. */
export function restateLength(text: string, from: LengthUnit, to: LengthUnit): string {
  const hasUnit = 'value' in readLength(text);
  const reading = readLength(text, from);
  if (hasUnit || 'problem' in reading) return text;
  return printNumber(reading.value / mmPer[to], 7).replaceAll('−', '-');
}

const SIXTEENTH_MM = 25.4 / 16;

/** A length as somebody would type it who does not need it finer than to a millimetre or a sixteenth of an inch. */
export function printTyped(mm: number, unit: LengthUnit): string {
  const text =
    unit === 'mm' ? printNumber(Math.round(mm), 15) : printNumber(Math.round(mm / SIXTEENTH_MM) / 16, 15);
  return text.replaceAll('−', '-');
}
