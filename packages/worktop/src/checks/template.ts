import { needed, thereIs } from '../lengths.ts';
import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

/** Whether the template gets everywhere, and how far it may be off by then. */
export function checkTemplate({ plan, template, holes }: Computed): Check | null {
  if (!template) return null;
  const { steps, leastStepCount, proven, unreached, why, farthestOff, tightest } = template;
  const many = `${steps.length} ${steps.length === 1 ? 'placement' : 'placements'} of a template of ${plan.template?.columns} × ${plan.template?.rows} holes`;
  const shortest = proven ? 'no plan has fewer' : `${leastStepCount} at least`;
  const meets = tightest !== null && !(tightest.leftMm >= -1e-9);
  const reached = `${many} drill ${holes.length - unreached.length} of ${holes.length} holes; ${shortest}.`;
  const off = farthestOff
    ? `Row ${farthestOff.row}, column ${farthestOff.column} may be farthest off: ${needed(farthestOff.worstCaseMm, 2)} with every error at its limit, ${needed(farthestOff.rootSumSquareMm, 2)} where they vary independently.`
    : 'No hole is drilled through it.';
  const left = tightest
    ? meets
      ? `template: row ${tightest.row}, column ${tightest.column} may be off by ${needed(tightest.worstCaseMm, 2)} and then run ${needed(-tightest.leftMm, 2)} into ${tightest.nearest}. Take less play, a longer pin span or a larger template, or move holes.first`
      : `Row ${tightest.row}, column ${tightest.column} still keeps ${thereIs(tightest.leftMm, 2)} from ${tightest.nearest} then.`
    : '';
  return {
    id: 'template',
    title: 'The template reaches every hole',
    status: unreached.length || steps.length === 0 ? 'fail' : meets ? 'warn' : 'pass',
    says: [reached, ...(why ? [`template: ${why}`] : []), off, left].filter(Boolean).join('\n'),
    figures: [
      figure('placements', steps.length, '1'),
      figure('proved least', leastStepCount, '1'),
      figure('not reached', unreached.length, '1'),
      ...(farthestOff
        ? [
            figure('farthest off, worst case', farthestOff.worstCaseMm, 'mm'),
            figure('farthest off, root-sum-square', farthestOff.rootSumSquareMm, 'mm'),
          ]
        : []),
      ...(tightest ? [figure('left beside the tightest hole', tightest.leftMm, 'mm')] : []),
    ],
    ...(tightest && unreached.length === 0
      ? { margin: { given: tightest.leftMm, min: 0, unit: 'mm' } as const }
      : {}),
    rules: ['grids/clearance-over-seasons'],
  };
}
