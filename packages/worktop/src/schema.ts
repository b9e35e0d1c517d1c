/**
 * Reads plan files. Needs `zod`, an optional peer of this package.
 *
 * @module worktop/schema
 */
import type { core } from 'zod/mini';
import { conflictsOf } from './plan/conflicts.ts';
import type { Plan } from './plan/plan.ts';
import { dotted } from './plan/require-plan.ts';
import { fileKey, planFile } from './schema/plan-file.ts';
import { upgraded } from './schema/upgrade.ts';

/** What is wrong with a plan file: one message for each place, naming the path, what is there and what is allowed. */
export class PlanFileError extends Error {
  override readonly name = 'PlanFileError';
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(problems.join('\n'));
    this.problems = problems;
  }
}

/** What stands in a place, cut to what a line can hold. */
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

/** Of a place that may be one of several things, what the last of them would have to be. */
const plainIssues = (issue: core.$ZodIssue): readonly core.$ZodIssue[] =>
  issue.code === 'invalid_union'
    ? (issue.errors.at(-1) ?? [])
        .flatMap(plainIssues)
        .map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }))
    : [issue];

function problemsOf(content: unknown, issue: core.$ZodIssue): string[] {
  const { path, message, code } = issue;
  const got = code === 'unrecognized_keys' ? '' : `, got ${shown(content, path)}`;
  return message.split('\n').map((line) => `${dotted(path) || 'the plan'}: ${line}${got}`);
}

/** What one figure asks of another, by the names and the units of files. */
function conflictsIn(content: unknown, plan: Plan): string[] {
  return conflictsOf(plan).map(({ path, allowed }) => {
    const inFile = path.map(fileKey);
    const expected = allowed.replace(/(\.\w+)Mm\b/g, '$1');
    return `${dotted(inFile)}: expected ${expected}, got ${shown(content, inFile)}`;
  });
}

/**
 * Reads the content of a plan file: upgrades it where its version is an earlier one, checks it and turns every length
 * into millimetres.
 *
 * @param content - What `JSON.parse` gave.
 * @returns The plan.
 * @throws PlanFileError with one message for each place that is wrong.
 * @example
 * ```ts
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * parsePlan(binderyBench).top.widthMm // => 640
 * parsePlan({ version: 7 }) // throws version: expected at most 2
 * ```
 */
export function parsePlan(content: unknown): Plan {
  const current = upgraded(content);
  const result = planFile.safeParse(current);
  if (!result.success) {
    const problems = result.error.issues.flatMap(plainIssues).flatMap((issue) => problemsOf(current, issue));
    throw new PlanFileError([...new Set(problems)]);
  }
  const plan = result.data as unknown as Plan;
  const conflicts = conflictsIn(current, plan);
  if (conflicts.length > 0) throw new PlanFileError(conflicts);
  return plan;
}
