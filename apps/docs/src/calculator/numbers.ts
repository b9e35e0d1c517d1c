/** What was read from a text: a value, or what is wrong with the text. */
export type Reading<T> = { readonly value: T } | { readonly problem: string };

const LONGEST_NUMBER = 64;

/**
 * Reads a plain decimal number, with a point or a comma as decimal mark, as people type it. What could mean two
 * numbers ("1,000") is refused.
 */
export function readNumber(text: string): Reading<number> {
  const typed = text.trim().replaceAll('−', '-');
  if (typed === '') return { problem: 'Give a number.' };
  if (typed.length > LONGEST_NUMBER) return { problem: `Longer than ${LONGEST_NUMBER} characters.` };
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(typed)) {
    return { problem: `“${typed}” can be read in two ways: write it without the comma.` };
  }
  if (!/^[+-]?(\d+[.,]?\d*|[.,]\d+)(e[+-]?\d+)?$/i.test(typed))
    return { problem: `“${typed}” is not a number.` };
  const value = Number(typed.replace(',', '.'));
  return Number.isFinite(value) ? { value } : { problem: `“${typed}” is too large.` };
}

/**
 * A result as text: whole numbers whole, others to four significant digits and no finer than to whole numbers
 * above a thousand; to nine digits where the rule is exact.
 */
export function printResult(value: number, exact: boolean): string {
  if (Number.isInteger(value)) return printNumber(value, 15);
  if (exact) return printNumber(value, 9);
  return printNumber(value, Math.max(4, Math.ceil(Math.log10(Math.abs(value)))));
}

/**
 * A number as text: at most so many significant digits, no grouping, a point as decimal mark, an exponent only
 * where it would be unreadable without.
 */
export function printNumber(value: number, digits: number): string {
  // Rounded from the number itself: a formatter may round the shortest text of it, and once more up from a five.
  const rounded = Number(value.toPrecision(digits)) + 0;
  const size = Math.abs(rounded);
  const plain = size === 0 || (size >= 1e-9 && size < 1e15);
  const text = plain
    ? new Intl.NumberFormat('en', { maximumSignificantDigits: digits, useGrouping: false }).format(rounded)
    : `${rounded}`;
  return text.replaceAll('-', '−');
}
