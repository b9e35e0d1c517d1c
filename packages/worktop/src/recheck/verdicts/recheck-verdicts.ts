import type { Check, Status, WorktopPlan } from '../../result.ts';
import { agree, type Finding, holds, same } from '../finding.ts';
import type { Expected } from './expected.ts';
import { inUse } from './in-use.ts';
import { onBase } from './on-base.ts';
import { onWood } from './on-wood.ts';

const gravity: Readonly<Record<Status, number>> = { pass: 0, warn: 1, fail: 2 };

function recheckVerdict(path: string, check: Check, expected: Expected): Finding[] {
  const { figures, margin, status } = check;
  const limit = margin?.min ?? margin?.max;
  return [
    ...same(`${path}.status`, status, expected.status),
    ...agree(`${path}.figures`, figures.length, expected.figures.length, 0),
    ...expected.figures.flatMap((value, i) =>
      agree(`${path}.figures[${i}].value`, figures[i]?.value ?? Number.NaN, value),
    ),
    ...same(`${path}.margin`, margin !== undefined, expected.margin !== undefined),
    ...(expected.margin
      ? [
          ...agree(`${path}.margin.given`, margin?.given ?? Number.NaN, expected.margin[0]),
          ...agree(`${path}.margin`, limit ?? Number.NaN, expected.margin[1]),
        ]
      : []),
  ];
}

/** Every question is asked that the plan calls for, each verdict follows from the claims, and the gravest is the plan's. */
export function recheckVerdicts(result: WorktopPlan): Finding[] {
  const { checks, status } = result;
  const expected = Object.entries({ ...onWood, ...onBase, ...inUse }).flatMap(([id, verdict]) => {
    const says = verdict(result);
    return says ? [{ id, says }] : [];
  });
  const asked = (ids: readonly string[]) => [...ids].sort().join();
  const gravest = checks.reduce((worst, check) => Math.max(worst, gravity[check.status] ?? 3), 0);
  return [
    ...same('checks', asked(checks.map(({ id }) => id)), asked(expected.map(({ id }) => id))),
    ...holds('status', gravity[status] === gravest, `"${status}" is not the gravest verdict`),
    ...expected.flatMap(({ id, says }) => {
      const i = checks.findIndex((check) => check.id === id);
      const check = checks[i];
      return check ? recheckVerdict(`checks[${i}]`, check, says) : [];
    }),
  ];
}
