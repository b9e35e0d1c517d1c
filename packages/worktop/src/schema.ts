/**
 * Reads plan files. Needs `zod`, an optional peer of this package.
 *
 * @module worktop/schema
 */
import { LengthSyntaxError, parseLength } from '@scantling/units';
import * as z from 'zod/mini';
import type { Plan } from './plan.ts';

/** What is wrong with a plan file: one message for each place, naming the path, what is there and what is allowed. */
export class PlanFileError extends Error {
  override readonly name = 'PlanFileError';
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(problems.join('\n'));
    this.problems = problems;
  }
}

const number = (min: number, max: number, whole = false) => {
  const error = `expected ${whole ? 'a whole number' : 'a number'} between ${min} and ${max}`;
  return z
    .number({ error })
    .check(z.refine((x) => x >= min && x <= max && (!whole || Number.isInteger(x)), error));
};

const text = () =>
  z
    .string({ error: 'expected text' })
    .check(z.minLength(1, 'expected text'), z.maxLength(80, 'expected at most 80 characters'));

const choice = <const T extends readonly string[]>(...names: T) =>
  z.enum(names, { error: `expected one of ${names.map((name) => `"${name}"`).join(', ')}` });

/** A length: millimetres as a number, or text that carries its unit. Comes out as millimetres. */
function length(minMm: number, maxMm: number) {
  const allowed = `a length between ${minMm} and ${maxMm} mm, such as 35 or "1 3/8 in"`;
  const refuse = (payload: z.core.ParsePayload<unknown>, why: string) => {
    payload.issues.push({ code: 'custom', message: `expected ${allowed}${why}`, input: payload.value });
    return z.NEVER;
  };
  return z.pipe(
    z.union([z.number(), z.string()], { error: `expected ${allowed}` }),
    z.transform((given, payload) => {
      try {
        const mm = typeof given === 'number' ? given : parseLength(given);
        return mm >= minMm && mm <= maxMm ? mm : refuse(payload, '');
      } catch (error) {
        if (error instanceof LengthSyntaxError) return refuse(payload, `: ${error.message}`);
        throw error;
      }
    }),
  );
}

const side = () => length(1, 10_000);
const place = () => length(-10_000, 10_000);
const small = () => length(0, 1000);
const list = <T extends z.core.SomeType>(item: T, least: number, most: number) =>
  z
    .array(item, { error: 'expected a list' })
    .check(z.minLength(least, `expected at least ${least}`), z.maxLength(most, `expected at most ${most}`));

const object = <T extends z.core.$ZodLooseShape>(shape: T) => {
  const known = Object.keys(shape).join(', ');
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `unknown key ${(issue.keys as string[]).map((key) => `"${key.slice(0, 40)}"`).join(', ')}; known here: ${known}`
        : `expected an object with ${known}`,
  });
};

const point = z.pipe(
  object({ x: place(), y: place() }),
  z.transform(({ x, y }) => ({ xMm: x, yMm: y })),
);

const obstacle = z.pipe(
  object({ name: text(), x: place(), y: place(), length: side(), width: side(), clearance: small() }),
  z.transform(({ name, x, y, length, width, clearance }) => ({
    name,
    xMm: x,
    yMm: y,
    lengthMm: length,
    widthMm: width,
    clearanceMm: clearance,
  })),
);

const air = object({ temperatureC: number(-10, 60), relativeHumidityPct: number(0, 99) });

const top = z.pipe(
  object({
    length: side(),
    width: side(),
    thickness: length(5, 300),
    species: text(),
    cut: choice('flatsawn', 'quartersawn'),
    moisturePct: number(0, 30),
    inlays: list(obstacle, 0, 20),
  }),
  z.transform(({ length, width, thickness, ...rest }) => ({
    lengthMm: length,
    widthMm: width,
    thicknessMm: thickness,
    ...rest,
  })),
);

const fixing = z.pipe(
  object({ name: text(), x: place(), y: place(), slot: length(1, 200) }),
  z.transform(({ name, x, y, slot }) => ({ name, xMm: x, yMm: y, slotMm: slot })),
);

const base = z.pipe(
  object({
    members: list(obstacle, 0, 100),
    fixedLine: place(),
    shankDiameter: length(1, 20),
    slotClearance: small(),
    screwClearance: small(),
    fixings: list(fixing, 1, 100),
  }),
  z.transform(({ members, fixedLine, shankDiameter, slotClearance, screwClearance, fixings }) => ({
    members,
    fixedLineMm: fixedLine,
    shankDiameterMm: shankDiameter,
    slotClearanceMm: slotClearance,
    screwClearanceMm: screwClearance,
    fixings,
  })),
);

const holes = z
  .pipe(
    object({
      diameter: length(1, 200),
      pitchX: length(1, 2000),
      pitchY: length(1, 2000),
      first: point,
      columns: number(1, 500, true),
      rows: number(1, 500, true),
      edgeMargin: small(),
      blocked: choice('fail', 'leave out'),
    }),
    z.transform(({ diameter, pitchX, pitchY, edgeMargin, ...rest }) => ({
      diameterMm: diameter,
      pitchXMm: pitchX,
      pitchYMm: pitchY,
      edgeMarginMm: edgeMargin,
      ...rest,
    })),
  )
  .check(({ value, issues }) => {
    for (const [path, pitchMm] of [
      ['pitchX', value.pitchXMm],
      ['pitchY', value.pitchYMm],
    ] as const) {
      if (pitchMm >= value.diameterMm) continue;
      const message = `expected at least the diameter of a hole, ${value.diameterMm} mm`;
      issues.push({ code: 'custom', path: [path], message, input: pitchMm });
    }
  });

const liquid = { name: text(), parts: number(0.01, 1000), onHandMl: number(0, 100_000) };

const finish = object({
  coats: number(1, 20, true),
  product: object({ ...liquid, volumeSolidsPct: number(1, 100) }),
  thinner: z.optional(object(liquid)),
  dryFilmUm: number(1, 500),
  lossPct: number(0, 90),
});

const plan = object({
  version: z.literal(1, { error: 'expected 1, the version of plan files that this release reads' }),
  name: text(),
  top,
  seasons: object({ driest: air, wettest: air }),
  base,
  holes,
  finish,
}).check(({ value: { top, base }, issues }) => {
  const taken = new Set<string>();
  const named = [
    ...base.members.map(({ name }, i) => ({ name, path: ['base', 'members', i, 'name'] })),
    ...top.inlays.map(({ name }, i) => ({ name, path: ['top', 'inlays', i, 'name'] })),
    ...base.fixings.map(({ name }, i) => ({ name, path: ['base', 'fixings', i, 'name'] })),
  ];
  for (const { name, path } of named) {
    if (taken.has(name))
      issues.push({ code: 'custom', path, message: 'expected a name of its own', input: name });
    taken.add(name);
  }
});

const dotted = (path: readonly PropertyKey[]) =>
  path.map((key, i) => (typeof key === 'number' ? `[${key}]` : `${i ? '.' : ''}${String(key)}`)).join('');

function given(root: unknown, path: readonly PropertyKey[]): string {
  const value = path.reduce<unknown>((at, key) => (at as Record<PropertyKey, unknown> | null)?.[key], root);
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
 * parsePlan({ version: 2 }) // throws version: expected 1
 * ```
 */
export function parsePlan(content: unknown): Plan {
  const result = plan.safeParse(content);
  if (result.success) return result.data;
  throw new PlanFileError(
    result.error.issues.map(({ path, message, code }) => {
      const where = dotted(path) || 'the plan';
      return code === 'unrecognized_keys'
        ? `${where}: ${message}`
        : `${where}: ${message}, got ${given(content, path)}`;
    }),
  );
}
