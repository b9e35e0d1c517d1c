import { type Change, type WhatIfSteps, type WorktopPlan, whatIf } from '../index.ts';

/** Wood a point of moisture off, a pitch read a millimetre wrong, a base set half a centimetre off. */
const steps: WhatIfSteps = { moisturePct: 1, pitchMm: 1, spreadMm: 5 };

const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;

function changeLines({ what, by, status, checks }: Change, titles: ReadonlyMap<string, string>): string[] {
  const worse = checks
    .filter(({ status: now, gain }) => now !== 'pass' || (gain !== null && gain.value < -0.05))
    .map(({ id, status: now, gain }) => {
      const change = gain === null ? '' : `, ${signed(gain.value)} ${gain.unit} to spare`;
      return `  ${now.padEnd(4)}  ${titles.get(id) ?? id}${change}`;
    });
  return [`${what} ${signed(by.value)} ${by.unit}: ${status}`, ...worse];
}

/** What is tightest, and what happens where things turn out a little different. */
export function whatIfReport(result: WorktopPlan): string {
  const { tightest, changes, notTried } = whatIf(result, steps);
  const titles = new Map(result.checks.map(({ id, title }) => [id, title]));
  return [
    'Tightest',
    ...tightest.map(({ title, sparePct }) => `  ${sparePct.toFixed(0)} % to spare: ${title}`),
    '',
    'What if',
    ...changes.flatMap((change) => changeLines(change, titles)).map((line) => `  ${line}`),
    ...notTried.map((why) => `  not tried: ${why}`),
    '',
  ].join('\n');
}
