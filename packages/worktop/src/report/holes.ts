import { bothUnits, millimetres, needed, thereIs } from '../lengths.ts';
import type { HolePlace } from '../parts/accessories.ts';
import type { WorktopPlan } from '../result.ts';
import { columns, section } from './text.ts';

export const holeName = ({ row, column }: HolePlace): string => `row ${row}, column ${column}`;

export function holesSection({ plan: { holes: grid }, holes, blockedHoles }: WorktopPlan): string {
  const word = grid.blocked === 'leave out' ? 'left out' : 'blocked';
  const rest = blockedHoles.length ? `, ${blockedHoles.length} ${word}` : '';
  return section('Holes', [
    `${holes.length} holes ⌀ ${bothUnits(grid.diameterMm)}${rest}`,
    ...columns([
      ['first, along the grain', bothUnits(grid.first.xMm)],
      ['first, across the grain', bothUnits(grid.first.yMm)],
      ['pitch along the grain', bothUnits(grid.pitchXMm)],
      ['pitch across the grain', bothUnits(grid.pitchYMm)],
    ]),
    'measured from the front-left corner seen from above; every hole stands in holes.csv',
  ]);
}

/** `null` where no template is stepped. */
export function templateSection({ template, plan }: WorktopPlan): string | null {
  if (!template || !plan.template) return null;
  const { columns: across, rows } = plan.template;
  const steps = template.steps.map(({ column, row, pins, drilled, worstCaseMm }, i) => [
    `${i + 1}.`,
    `first hole on ${holeName({ column, row })}`,
    pins.length ? `pins in ${pins.map(holeName).join(' and ')}` : 'against the front and left edges',
    `${drilled.length} holes`,
    `off by at most ${needed(worstCaseMm, 2)}`,
  ]);
  const { steps: placements, leastStepCount, proven } = template;
  const proof = proven ? 'none needs fewer' : `at least ${leastStepCount} are needed`;
  return section('Template', [
    `${across} × ${rows} guide holes, ${placements.length} placements; ${proof}`,
    ...columns(steps),
    ...(template.why ? [template.why] : []),
  ]);
}

/** `null` where the plan names nothing that stands in the holes. */
export function accessoriesSection({ accessories }: WorktopPlan): string | null {
  if (!accessories?.length) return null;
  return section(
    'What stands in the holes',
    accessories.map(({ name, placeCount, holes, fit }) => {
      if (!holes || !fit) return `${name}: there is no place for all its pins`;
      const verdict = fit.alwaysGoesIn ? 'goes in all year' : 'does not go in all year';
      return `${name}: ${placeCount} places, the first with ${holes.map(holeName).join('; ')}; ${verdict}`;
    }),
  );
}

/** `null` where no cables pass through the top. */
export function cablesSection({ cables, plan }: WorktopPlan): string | null {
  if (!cables || !plan.cables) return null;
  const { holeDiameterMm, xMm, yMm, cableLengthMm } = plan.cables;
  const { clearanceMm, nearest } = cables;
  const clear =
    clearanceMm === null
      ? ''
      : clearanceMm < 0
        ? `, ${needed(-clearanceMm)} into ${nearest}`
        : `, ${thereIs(clearanceMm)} from ${nearest}`;
  return section('Cables', [
    `hole ⌀ ${bothUnits(holeDiameterMm)} at x ${millimetres(xMm)}, y ${millimetres(yMm)}${clear}; at least ⌀ ${needed(cables.neededHoleMm)} is needed`,
    `${cables.cableCount} cables fill ${cables.fillPct.toFixed(0)} % of it`,
    `from the hole to where they are held: ${needed(cables.farthestMm)} at the farthest; ${needed(cables.neededLengthMm)} of cable is needed, ${thereIs(cableLengthMm)} is there`,
  ]);
}
