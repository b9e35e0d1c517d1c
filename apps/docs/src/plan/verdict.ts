import type { Check, Status } from '@scantling/worktop';
import { withUnit } from '../calculator/field.ts';
import type { LengthUnit } from '../calculator/lengths.ts';
import { printLength } from '../calculator/lengths.ts';
import { printResult } from '../calculator/numbers.ts';
import type { Outcome } from './work.ts';

/** How a plan stands: what its checks say, or that it can't be read yet. */
export type Standing = Status | 'unfinished';

export const standingOf = ({ result }: Outcome): Standing => result?.status ?? 'unfinished';

/** What each verdict is called. */
export const statusWords: Readonly<Record<Status, string>> = {
  fail: 'not met',
  warn: 'to judge',
  pass: 'met',
};

const many = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;

/** The verdict in a line. */
export function verdictOf({ result, problems }: Outcome): string {
  if (!result) return `Not planned yet: ${many(Object.keys(problems).length, 'field', 'fields')} to mend`;
  const count = (status: Status) => result.checks.filter((check) => check.status === status).length;
  if (result.status === 'fail')
    return `Not to be built from: ${many(count('fail'), 'check', 'checks')} not met`;
  if (result.status === 'warn') return `It goes together; ${many(count('warn'), 'check', 'checks')} to judge`;
  return `It goes together: all ${result.checks.length} checks met`;
}

const graveFirst: readonly Status[] = ['fail', 'warn', 'pass'];

/** What is wrong before what is not, else in the order of the work. */
export const inOrder = (checks: readonly Check[]): readonly Check[] =>
  [...checks].sort((a, b) => graveFirst.indexOf(a.status) - graveFirst.indexOf(b.status));

/** What there is, against what is needed or allowed. */
export function marginText({ margin }: Check, unit: LengthUnit): string {
  if (!margin) return '';
  const print = (value: number) =>
    margin.unit === 'mm' ? printLength(value, unit) : withUnit(printResult(value, false), margin.unit);
  const { given, min, max } = margin;
  return min === undefined
    ? `${print(given)}, at most ${print(max ?? given)} allowed`
    : `${print(given)}, at least ${print(min)} needed`;
}
