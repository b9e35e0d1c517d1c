import type { Check, Margin, Status, WorktopPlan } from '../result.ts';
import { type Finding, holds, same } from './finding.ts';

/** Rounding that a verdict leaves room for. */
const ROUNDING = 1e-6;

const gravity: Readonly<Record<Status, number>> = { pass: 0, warn: 1, fail: 2 };

const kept = ({ thereIs, atLeast, atMost }: Margin) =>
  atLeast === undefined ? thereIs <= (atMost as number) + ROUNDING : thereIs >= atLeast - ROUNDING;

function recheckVerdict(path: string, { status, margin, figures }: Check): Finding[] {
  return [
    ...holds(`${path}.status`, status in gravity, `"${status}" is no verdict`),
    ...figures.flatMap(({ value, name }, i) =>
      holds(`${path}.figures[${i}]`, Number.isFinite(value), `${name} is ${value}`),
    ),
    ...(margin
      ? [
          ...holds(
            `${path}.margin`,
            (margin.atLeast === undefined) !== (margin.atMost === undefined),
            'is neither at least nor at most',
          ),
          ...holds(`${path}.status`, kept(margin) || status !== 'pass', 'passes, but its margin is not kept'),
        ]
      : []),
  ];
}

/** Each verdict follows from its margin, and the gravest is that of the plan. */
export function recheckVerdicts({ checks, status }: WorktopPlan): Finding[] {
  const gravest = checks.reduce((worst, check) => Math.max(worst, gravity[check.status] ?? 3), 0);
  const ids = checks.map(({ id }) => id);
  return [
    ...same('status', gravity[status], gravest),
    ...holds(
      'checks',
      checks.length > 0 && new Set(ids).size === ids.length,
      'two ask the same, or none asks',
    ),
    ...checks.flatMap((check, i) => recheckVerdict(`checks[${i}]`, check)),
  ];
}
