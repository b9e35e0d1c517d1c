/**
 * Reads plan files. Needs `zod`, an optional peer of this package.
 *
 * @module worktop/schema
 */
import type { Limits } from '@scantling/rules';
import { LengthSyntaxError, parseLength } from '@scantling/units';
import * as z from 'zod/mini';
import { conflictsOf } from './plan/conflicts.ts';
import type { Field, Fields } from './plan/field.ts';
import { type Plan, planField } from './plan/plan.ts';
import { dotted, isLine } from './plan/require-plan.ts';

/** What is wrong with a plan file: one message for each place, naming the path, what is there and what is allowed. */
export class PlanFileError extends Error {
  override readonly name = 'PlanFileError';
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(problems.join('\n'));
    this.problems = problems;
  }
}

const within = (value: number, { min, max, integer }: Limits) =>
  value >= min && value <= max && (!integer || Number.isInteger(value));

function number(limits: Limits) {
  const error = `expected a ${limits.integer ? 'whole ' : ''}number between ${limits.min} and ${limits.max}`;
  return z.number({ error }).check(z.refine((value) => within(value, limits), error));
}

/** A length: millimetres as a number, or text that carries its unit. Comes out as millimetres. */
function length(limits: Limits) {
  const allowed = `expected a length between ${limits.min} and ${limits.max} mm, such as 35 or "1 3/8 in"`;
  const refuse = (payload: z.core.ParsePayload<unknown>, why = '') => {
    payload.issues.push({ code: 'custom', message: `${allowed}${why}`, input: payload.value });
    return z.NEVER;
  };
  return z.pipe(
    z.union([z.number(), z.string()], { error: allowed }),
    z.transform((given, payload) => {
      try {
        const mm = typeof given === 'number' ? given : parseLength(given);
        return within(mm, limits) ? mm : refuse(payload);
      } catch (error) {
        if (error instanceof LengthSyntaxError)
          return refuse(payload, `; at position ${error.position}: ${error.expected}`);
        throw error;
      }
    }),
  );
}

/** Text on one line: it goes into reports and drawings. */
const text = () => {
  const error = 'expected text of 1 to 60 characters on one line, not blanks alone';
  return z.string({ error }).check(z.refine(isLine, error));
};

const choice = (names: readonly string[]) =>
  z.enum(names as [string, ...string[]], {
    error: `expected one of ${quoted(names)}`,
  });

const quoted = (names: readonly string[]) => names.map((name) => `"${name}"`).join(', ');

const list = (item: z.ZodMiniType, least: number, most: number) => {
  const error = `expected a list of ${least} to ${most}`;
  return z.array(item, { error }).check(z.minLength(least, error), z.maxLength(most, error));
};

const object = (shape: Record<string, z.ZodMiniType>) => {
  const known = Object.keys(shape).join(', ');
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `unknown key ${(issue.keys as string[]).map((key) => `"${key.slice(0, 40)}"`).join(', ')}; known here: ${known}`
        : `expected an object with ${known}`,
  });
};

/** A length carries its unit in a file's value, in a program's property name: `width` becomes `widthMm`. */
const fileKey = (key: PropertyKey) => (typeof key === 'string' ? key.replace(/Mm$/, '') : key);

/** A part of the plan: its figures by their limits, and what else it has. */
function section(fields: Fields) {
  const keys = Object.entries(fields).map(([key, field]) => [fileKey(key) as string, key, field] as const);
  const planKeys = new Map(keys.map(([inFile, key]) => [inFile, key]));
  return z.pipe(
    object(Object.fromEntries(keys.map(([inFile, key, field]) => [inFile, schemaOf(key, field)]))),
    z.transform((content) =>
      Object.fromEntries(Object.entries(content).map(([key, value]) => [planKeys.get(key) ?? key, value])),
    ),
  );
}

function bareSchema(key: string, field: Field): z.ZodMiniType {
  const amount = key.endsWith('Mm') ? length : number;
  switch (field.kind) {
    case 'figure':
      return amount(field.limits);
    case 'figures':
      return list(amount(field.limits), field.least, field.most);
    case 'text':
      return text();
    case 'choice':
      return choice(field.names);
    case 'list':
      return list(bareSchema('', field.of), field.least, field.most);
    case 'section':
      return section(field.fields);
  }
}

/** What may be left open may be `choose`, whatever else it is. */
function schemaOf(key: string, field: Field): z.ZodMiniType {
  const bare = bareSchema(key, field);
  const chosen = field.open ? orChoose(bare) : bare;
  return field.optional ? z.optional(chosen) : chosen;
}

const orChoose = (bare: z.ZodMiniType) =>
  z.pipe(
    z.unknown(),
    z.transform((given, payload) => {
      if (given === 'choose') return given;
      const result = bare.safeParse(given);
      if (result.success) return result.data;
      for (const { path, message } of result.error.issues) {
        const said = path.length === 0 ? `${message}, or "choose"` : message;
        payload.issues.push({ code: 'custom', message: said, path: [...path], input: given });
      }
      return z.NEVER;
    }),
  );

const planFile = object({
  version: z.literal(2, { error: 'expected 2, the version of plan files that this release reads' }),
  ...Object.fromEntries(Object.entries(planField.fields).map(([key, field]) => [key, schemaOf(key, field)])),
});

function shown(content: unknown, path: readonly PropertyKey[]): string {
  const value = path.reduce<unknown>(
    (at, key) => (at as Record<PropertyKey, unknown> | null)?.[key],
    content,
  );
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  return typeof value === 'string' ? JSON.stringify(value.slice(0, 60)) : String(value);
}

/**
 * Reads the content of a plan file: checks it and turns every length into millimetres.
 *
 * @param content - What `JSON.parse` gave.
 * @returns The plan.
 * @throws PlanFileError with one message for each place that is wrong.
 * @example
 * ```ts
 * import { parsePlan } from '@scantling/worktop/schema';
 * parsePlan({ version: 7 }) // throws version: expected 2
 * ```
 */
export function parsePlan(content: unknown): Plan {
  const result = planFile.safeParse(content);
  if (!result.success) {
    throw new PlanFileError(
      result.error.issues.map(({ path, message, code }) => {
        const problem = `${dotted(path) || 'the plan'}: ${message}`;
        return code === 'unrecognized_keys' ? problem : `${problem}, got ${shown(content, path)}`;
      }),
    );
  }
  const plan = result.data as unknown as Plan;
  const conflicts = conflictsOf(plan).map(({ path, allowed }) => {
    const inFile = path.map(fileKey);
    return `${dotted(inFile)}: expected ${allowed}, got ${shown(content, inFile)}`;
  });
  if (conflicts.length > 0) throw new PlanFileError(conflicts);
  return plan;
}
