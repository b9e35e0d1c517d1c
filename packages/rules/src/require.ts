/** Physical limits of a number: outside them the question makes no sense and the function throws. */
export interface Limits {
  readonly min: number;
  readonly max: number;
  /** Only whole numbers are allowed. */
  readonly integer?: true;
}

/** Limits of a list of numbers: of each number, and of how many there may be. */
export interface ListLimits extends Limits {
  readonly minItems: number;
  readonly maxItems: number;
}

type NumericKeys<I> = { [K in keyof I]: I[K] extends number ? K : never }[keyof I];

function refuse(caller: string, name: string, allowed: string, given: unknown): never {
  const got =
    typeof given === 'string'
      ? `"${given.slice(0, 40)}"`
      : Object(given) === given
        ? typeof given
        : String(given);
  throw new RangeError(`${caller} requires ${name} ${allowed}, got ${got}`);
}

/**
 * Throws unless a number lies within its limits. A function that is called by the million asks for each of its inputs
 * by itself: `requireInputs`, which serves every shape of input, takes several times as long.
 *
 * @param caller - Name of the calling function, for the message.
 * @param name - The input.
 * @param given - What was given.
 * @param limits - What is allowed.
 * @throws RangeError naming the input, what is allowed and what was given.
 * @example
 * ```ts
 * import { requireNumber } from '@scantling/rules';
 * requireNumber('half', 'widthMm', Number.NaN, { min: 0, max: 100 }) // throws half requires widthMm between 0 and 100, got NaN
 * ```
 */
export function requireNumber(
  caller: string,
  name: string,
  given: unknown,
  { min, max, integer }: Limits,
): void {
  // A chain of comparisons that NaN, ±Infinity, missing values and other types all fail.
  if (typeof given === 'number' && given >= min && given <= max && !(integer && given % 1)) return;
  refuse(caller, name, `${integer ? 'a whole number ' : ''}between ${min} and ${max}`, given);
}

/**
 * Throws unless every number lies within its limits.
 *
 * @param caller - Name of the calling function, for the message.
 * @param input - The options object that the caller was given.
 * @param limits - Limits of each numeric property.
 * @throws RangeError naming the property, what is allowed and what was given.
 * @example
 * ```ts
 * import { requireInputs } from '@scantling/rules';
 * requireInputs('half', { widthMm: -1 }, { widthMm: { min: 0, max: 100 } }) // throws half requires widthMm between 0 and 100, got -1
 * ```
 */
export function requireInputs<I extends object>(
  caller: string,
  input: I,
  limits: { readonly [K in NumericKeys<I>]: Limits },
): void {
  for (const name in limits) {
    requireNumber(caller, name, input?.[name as keyof I], limits[name as NumericKeys<I>]);
  }
}

/**
 * Throws unless every number of an object that lies inside the input is within its limits.
 *
 * @param caller - Name of the calling function, for the message.
 * @param path - How the reader gets to the object: `boards[2]`.
 * @param given - The object.
 * @param limits - Limits of its numeric properties.
 * @throws RangeError naming the path and the property, what is allowed and what was given.
 * @example
 * ```ts
 * import { requireFields } from '@scantling/rules';
 * requireFields('half', 'boards[2]', { widthMm: -1 }, { widthMm: { min: 0, max: 100 } }) // throws half requires boards[2].widthMm between 0 and 100, got -1
 * ```
 */
export function requireFields(
  caller: string,
  path: string,
  given: unknown,
  limits: Readonly<Record<string, Limits>>,
): void {
  for (const [name, limit] of Object.entries(limits)) {
    const value = (given as Record<string, unknown> | null | undefined)?.[name];
    requireNumber(caller, `${path}.${name}`, value, limit);
  }
}

/**
 * Throws unless a list has an allowed number of numbers, each within its limits.
 *
 * @param caller - Name of the calling function, for the message.
 * @param name - Name of the property, for the message.
 * @param given - The list.
 * @param limits - Limits of each number and of their count.
 * @throws RangeError naming the property or the item, what is allowed and what was given.
 * @example
 * ```ts
 * import { requireList } from '@scantling/rules';
 * requireList('sum', 'readingsMm', [1, -2], { min: 0, max: 9, minItems: 1, maxItems: 5 }) // throws sum requires readingsMm[1] between 0 and 9, got -2
 * ```
 */
export function requireList(caller: string, name: string, given: unknown, limits: ListLimits): void {
  const { minItems, maxItems } = limits;
  if (!Array.isArray(given)) refuse(caller, name, 'to be a list of numbers', given);
  if (given.length < minItems || given.length > maxItems) {
    refuse(caller, name, `to have ${minItems} to ${maxItems} numbers`, given.length);
  }
  for (const [i, item] of given.entries()) requireNumber(caller, `${name}[${i}]`, item, limits);
}

/**
 * Throws unless a name is one of those allowed.
 *
 * @param caller - Name of the calling function, for the message.
 * @param name - Name of the property, for the message.
 * @param given - The name chosen.
 * @param choices - The names allowed.
 * @throws RangeError naming the property, what is allowed and what was given.
 * @example
 * ```ts
 * import { requireChoice } from '@scantling/rules';
 * requireChoice('saw', 'cut', 'curly', ['flatsawn', 'quartersawn']) // throws saw requires cut to be one of flatsawn, quartersawn, got "curly"
 * ```
 */
export function requireChoice(
  caller: string,
  name: string,
  given: unknown,
  choices: readonly string[],
): void {
  if (!choices.includes(given as string)) refuse(caller, name, `to be one of ${choices.join(', ')}`, given);
}

/**
 * Throws unless a condition between inputs holds.
 *
 * @param caller - Name of the calling function, for the message.
 * @param holds - The condition.
 * @param what - What is required, and what was given.
 * @throws RangeError with the caller and the requirement.
 * @example
 * ```ts
 * import { requireThat } from '@scantling/rules';
 * requireThat('gap', 5 < 3, 'minMm below maxMm, got 5 and 3') // throws gap requires minMm below maxMm, got 5 and 3
 * ```
 */
export function requireThat(caller: string, holds: boolean, what: string): void {
  if (!holds) throw new RangeError(`${caller} requires ${what}`);
}

/**
 * The same number with −0 turned into 0, so that no result ever prints as "-0".
 *
 * @param value - Any number.
 * @returns The number; 0 for −0.
 * @example
 * ```ts
 * import { plusZero } from '@scantling/rules';
 * Object.is(plusZero(-0), 0) // => true
 * ```
 */
export const plusZero = (value: number): number => value + 0;
