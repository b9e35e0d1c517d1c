import {
  type Amount,
  type Change,
  type WhatIf,
  type WhatIfSteps,
  type WorktopPlan,
  whatIf,
} from '../index.ts';

/** Wood a point of moisture off, a pitch read a millimetre wrong, a base set half a centimetre off. */
const steps: WhatIfSteps = { moisturePct: 1, pitchMm: 1, spreadMm: 5 };

const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;

/** Less is not worth a line. */
const LEAST_TOLD = 0.05;

const told = ({ value, unit }: Amount) => {
  if (Math.abs(value) < LEAST_TOLD) return '';
  return `, ${Math.abs(value).toFixed(1)} ${unit} ${value < 0 ? 'less' : 'more'} to spare`;
};

/** `12 % to spare`, or `12 % short` where a check is not met. */
const spare = (percent: number | null) => {
  if (percent === null) return 'not met';
  const whole = Math.round(percent);
  return whole < 0 ? `${-whole} % short` : `${Math.abs(whole)} % to spare`;
};

function changeLines({ what, by, status, checks }: Change, titles: ReadonlyMap<string, string>): string[] {
  const worse = checks
    .filter(({ status: now, gain }) => now !== 'pass' || (gain !== null && gain.value <= -LEAST_TOLD))
    .map(
      ({ id, status: now, gain }) =>
        `  ${now.padEnd(4)}  ${titles.get(id) ?? id}${gain === null ? '' : told(gain)}`,
    );
  return [`${what} ${signed(by.value)} ${by.unit}: ${status}`, ...worse];
}

export const littleChanges = (result: WorktopPlan): WhatIf => whatIf(result, steps);

/** What is tightest, and what happens where things turn out a little different. */
export function whatIfReport(result: WorktopPlan): string {
  const { tightest, changes, notTried } = littleChanges(result);
  const titles = new Map(result.checks.map(({ id, title }) => [id, title]));
  return [
    'Tightest',
    ...tightest.map(({ title, status, sparePct }) => `  ${status.padEnd(4)}  ${title}: ${spare(sparePct)}`),
    '',
    'What if',
    ...changes.flatMap((change) => changeLines(change, titles)).map((line) => `  ${line}`),
    ...notTried.map((why) => `  not tried: ${why}`),
    '',
  ].join('\n');
}
