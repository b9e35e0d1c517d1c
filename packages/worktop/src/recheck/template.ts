import type { HolePlace } from '../parts/accessories.ts';
import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';

const key = ({ row, column }: HolePlace) => `${row}/${column}`;

/** The template is put down step by step: what its holes stand over, what is drilled already, what the pins go into. */
export function recheckTemplate({ plan, template, holes }: WorktopPlan): Finding[] {
  const asked = plan.template;
  if (!template || !asked) return same('template', template === null, asked == null);
  const { columns, rows, pitchXMm, pitchYMm } = plan.holes;
  const wanted = new Map(holes.map((hole) => [key(hole), hole]));
  const drilled = new Set<string>();
  const inTemplate = (step: HolePlace, place: HolePlace) =>
    place.column >= step.column &&
    place.column < step.column + asked.columns &&
    place.row >= step.row &&
    place.row < step.row + asked.rows;
  const findings = template.steps.flatMap((step, i) => {
    const path = `template.steps[${i}]`;
    const [a, b] = step.pins;
    const spanMm = a && b ? Math.hypot((a.column - b.column) * pitchXMm, (a.row - b.row) * pitchYMm) : null;
    const onGrid =
      step.column >= 1 &&
      step.row >= 1 &&
      step.column + asked.columns - 1 <= columns &&
      step.row + asked.rows - 1 <= rows;
    const found = [
      ...holds(path, onGrid, 'lies beyond the grid'),
      ...holds(`${path}.pins`, step.pins.length === (i === 0 ? 0 : 2), 'has not the two pins that place it'),
      ...holds(
        `${path}.pins`,
        step.pins.every((pin) => drilled.has(key(pin)) && inTemplate(step, pin)),
        'a pin is in no finished hole under the template',
      ),
      ...(spanMm === null
        ? same(`${path}.pinSpanMm`, step.pinSpanMm, null)
        : [
            ...agree(`${path}.pinSpanMm`, step.pinSpanMm ?? Number.NaN, spanMm),
            ...holds(
              `${path}.pins`,
              spanMm >= asked.leastPinSpanMm - 1e-6,
              'the pins are too near to each other',
            ),
          ]),
      ...step.drilled.flatMap((place, j) =>
        holds(
          `${path}.drilled[${j}]`,
          wanted.has(key(place)) && !drilled.has(key(place)) && inTemplate(step, place),
          'is no hole under the template that is still to be drilled',
        ),
      ),
      ...holds(`${path}.drilled`, step.drilled.length > 0, 'drills nothing'),
    ];
    for (const place of step.drilled) drilled.add(key(place));
    return found;
  });
  const unreached = [...wanted.keys()].filter((place) => !drilled.has(place));
  const worst = Math.max(0, ...template.steps.map(({ worstCaseMm }) => worstCaseMm));
  return [
    ...findings,
    ...same('template.unreached', template.unreached.map(key).sort().join(), unreached.sort().join()),
    ...holds(
      'template.why',
      template.why !== null || unreached.length === 0,
      'says nothing of what is not reached',
    ),
    // A template drills no more holes at a time than it has.
    ...holds(
      'template.leastStepCount',
      template.leastStepCount >= Math.ceil(drilled.size / (asked.columns * asked.rows)) &&
        template.leastStepCount <= template.steps.length,
      'is no bound for these holes',
    ),
    ...same('template.proven', template.proven, template.leastStepCount === template.steps.length),
    ...recheckErrors('template.farthestOff', template.farthestOff, wanted, drilled.size),
    ...recheckErrors('template.tightest', template.tightest, wanted, drilled.size),
    ...agree('template.farthestOff.worstCaseMm', template.farthestOff?.worstCaseMm ?? 0, worst),
  ];
}

type SteppedError = NonNullable<WorktopPlan['template']>['farthestOff'];

function recheckErrors(
  path: string,
  error: SteppedError,
  wanted: ReadonlyMap<string, WorktopPlan['holes'][number]>,
  drilledCount: number,
): Finding[] {
  if (!error) return holds(path, drilledCount === 0, 'is missing');
  const hole = wanted.get(key(error));
  return [
    ...agree(`${path}.leftMm`, error.leftMm, (hole?.clearanceMm ?? Number.NaN) - error.worstCaseMm),
    ...same(`${path}.nearest`, error.nearest, hole?.nearest),
    ...holds(
      `${path}.rootSumSquareMm`,
      error.rootSumSquareMm >= 0 && error.rootSumSquareMm <= error.worstCaseMm + 1e-9,
      'errors that vary independently cannot add up to more than the worst case',
    ),
  ];
}
