import type { Limits } from '@scantling/rules';
import { LengthSyntaxError, parseLength } from '@scantling/units';
import * as z from 'zod/mini';
import type { Field, Fields } from '../plan/field.ts';
import { planField } from '../plan/plan.ts';
import { LINE } from '../plan/require-plan.ts';
import { unknownKeys } from './unknown-keys.ts';
import { CURRENT_VERSION, versionAllowed } from './upgrade.ts';

/** What the JSON Schema says of a place besides its shape. */
export const notes = z.registry<{
  id?: string;
  title?: string;
  description?: string;
  pattern?: string;
  maxLength?: number;
}>();

/** A length carries its unit in a file's value, in a program's property name: `width` becomes `widthMm`. */
export const fileKey = (key: PropertyKey) => (typeof key === 'string' ? key.replace(/Mm$/, '') : key);

const isLength = (key: string) => key.endsWith('Mm');

function number({ min, max, integer }: Limits, expected: string) {
  return (integer ? z.int({ error: expected }) : z.number({ error: expected })).check(
    z.minimum(min, expected),
    z.maximum(max, expected),
  );
}

/** Text that may be a length: a digit or a fraction sign, and something that is neither at the end. */
const lengthText = z.string().register(notes, {
  id: 'lengthText',
  pattern: '^(?=.*[0-9¼-¾⅐-⅞↉]).*[^0-9¼-¾⅐-⅞↉\\s.,/]\\.?\\s*$',
  maxLength: 64,
});

/** A length: millimetres as a number, or text that carries its unit. Comes out as millimetres. */
function length(limits: Limits, expected: string) {
  const millimetres = number(limits, expected);
  return z.pipe(
    z.union([lengthText, millimetres]),
    z.transform((given, payload) => {
      const refuse = (why = '') => {
        payload.issues.push({ code: 'custom', message: `${expected}${why}`, input: given });
        return z.NEVER;
      };
      if (typeof given === 'number') return given;
      try {
        const mm = parseLength(given);
        return millimetres.safeParse(mm).success ? mm : refuse();
      } catch (error) {
        if (!(error instanceof LengthSyntaxError)) throw error;
        return refuse(`; at position ${error.position}: ${error.expected}`);
      }
    }),
  );
}

/** A list is counted before it is read, so that a million items are refused as fast as one. */
function list(item: z.ZodMiniType, least: number, most: number) {
  const error = `expected a list of ${least} to ${most}`;
  return z.pipe(
    z.transform((given, payload) => {
      if (!Array.isArray(given) || given.length <= most) return given;
      payload.issues.push({ code: 'custom', message: error, input: given });
      return z.NEVER;
    }),
    z.array(item, { error }).check(z.minLength(least, error), z.maxLength(most, error)),
  );
}

function object(shape: Record<string, z.ZodMiniType>, orElse = '') {
  const known = Object.keys(shape).filter((key) => key !== '$schema');
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? unknownKeys(issue.keys as string[], known)
        : `expected an object with ${known.join(', ')}${orElse}`,
  });
}

const shapeOf = (fields: Fields) =>
  Object.fromEntries(
    Object.entries(fields).map(([key, field]) => [fileKey(key) as string, placeSchema(key, field)]),
  );

/** A part of the plan, with the names that programs know its fields by. */
function section(fields: Fields, orElse: string) {
  const planKeys = new Map(Object.keys(fields).map((key) => [fileKey(key), key]));
  return z.pipe(
    object(shapeOf(fields), orElse),
    z.transform((content) =>
      Object.fromEntries(Object.entries(content).map(([key, value]) => [planKeys.get(key) ?? key, value])),
    ),
  );
}

function amount(key: string, limits: Limits, orElse: string) {
  const { min, max, integer } = limits;
  return isLength(key)
    ? length(limits, `expected a length between ${min} and ${max} mm, such as 35 or "1 3/8 in"${orElse}`)
    : number(limits, `expected a ${integer ? 'whole ' : ''}number between ${min} and ${max}${orElse}`);
}

function valueSchema(key: string, field: Field): z.ZodMiniType {
  const orElse = field.open ? ', or "choose"' : '';
  switch (field.kind) {
    case 'figure':
      return amount(key, field.limits, orElse);
    case 'figures':
      return list(amount(key, field.limits, ''), field.minItems, field.maxItems);
    case 'text': {
      const error = 'expected text of 1 to 60 characters on one line, not blanks alone';
      return z.string({ error }).check(z.regex(LINE, error));
    }
    case 'choice': {
      const names = field.names.map((name) => `"${name}"`).join(', ');
      return z.enum(field.names as [string, ...string[]], { error: `expected one of ${names}` });
    }
    case 'list':
      return list(placeSchema('', field.of), field.minItems, field.maxItems);
    case 'section':
      return section(field.fields, orElse);
  }
}

/** How a place is explained to whoever edits a file. */
function description(key: string, field: Field): string {
  const figures = field.kind === 'figure' || field.kind === 'figures';
  if (!figures || !isLength(key)) return field.about;
  const { min, max } = field.limits;
  return `${field.about} From ${min} to ${max} mm: a number of millimetres, or text with its unit, such as "1 3/8 in".`;
}

/** What is left to the planner says `choose`; what is not planned is left out. */
function placeSchema(key: string, field: Field): z.ZodMiniType {
  const value = valueSchema(key, field);
  // What is refused is told by the last of the two.
  const place = field.open ? z.union([z.literal('choose'), value]) : value;
  place.register(notes, { description: description(key, field) });
  return field.optional ? z.optional(place) : place;
}

/** The content of a plan file of the current version. Editors find the JSON Schema by `$schema`. */
export const planFile = z
  .pipe(
    object({
      $schema: z.optional(z.string()).register(notes, { description: 'Where the schema for editors is.' }),
      version: z
        .literal(CURRENT_VERSION, { error: ({ input }) => versionAllowed(input) })
        .register(notes, { description: 'The version of plan files.' }),
      ...shapeOf(planField.fields),
    }),
    z.transform(({ $schema, ...plan }) => plan),
  )
  .register(notes, { title: 'Plan of a work top', description: planField.about });
