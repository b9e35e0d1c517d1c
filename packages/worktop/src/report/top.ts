import { bothUnits, needed, signedMillimetres, thereIs } from '../lengths.ts';
import type { WorktopPlan } from '../result.ts';
import { columns, section } from './text.ts';

export const topSection = ({ plan: { top }, movement }: WorktopPlan): string =>
  section('Top', [
    ...columns([
      ['length', bothUnits(top.lengthMm)],
      ['width', bothUnits(top.widthMm)],
      ['thickness', bothUnits(top.thicknessMm)],
    ]),
    `${movement.species}, ${top.cut}, ${top.moisturePct} % moisture content on building day`,
  ]);

/** `null` where the plan leaves nothing open. */
export const chosenSection = ({ chosen }: WorktopPlan): string | null =>
  chosen.length === 0
    ? null
    : section(
        'Chosen',
        chosen.map(
          ({ path, says, proven }) => `${path}: ${says}${proven ? '' : ' (Not proven to be the best.)'}`,
        ),
      );

export function yearSection({ movement }: WorktopPlan): string {
  const { driestMoisturePct, wettestMoisturePct, driestChangeMm, wettestChangeMm } = movement;
  return section('Width through the year', [
    `driest,  ${driestMoisturePct.toFixed(1)} % moisture content: ${signedMillimetres(driestChangeMm)}`,
    `wettest, ${wettestMoisturePct.toFixed(1)} % moisture content: ${signedMillimetres(wettestChangeMm)}`,
  ]);
}

/** `null` where the plan does not say how the top is glued up. */
export function glueUpSection({ plan, glueUp }: WorktopPlan): string | null {
  if (!glueUp || !plan.glueUp) return null;
  const { boardCount, boards, stages, glueMassG, glueLineM2, clamping } = glueUp;
  const { glue, clampForceN } = plan.glueUp;
  const widths = boards.map(({ heart, widthMm }) => `${needed(widthMm)} heart ${heart}`);
  return section('Glue-up', [
    `${boardCount} boards, each rough at least ${needed(glueUp.roughLengthMm)} × ${needed(glueUp.roughWidthMm)}, ${needed(glueUp.roughThicknessMm)} thick`,
    `planed to ${needed(glueUp.gluedThicknessMm)}, jointed to ${needed(glueUp.jointedWidthMm)}`,
    `in the finished top, from the front: ${widths.join(', ')}`,
    ...(clamping
      ? [
          `${glue.name}: ${Math.ceil(glueMassG)} g for ${glueLineM2.toFixed(2)} m² of joints, ${glue.lossPct} % lost`,
          `${clamping.clampCount} clamps of ${(clampForceN / 1000).toFixed(1)} kN, ${thereIs(clamping.spacingMm)} apart, the first half of that from the end: ${glue.pressureMPa} MPa on the joints`,
        ]
      : []),
    ...columns(
      stages.map(({ name, volumeM3, massKg }) => [
        name,
        `${(volumeM3 * 1000).toFixed(1)} L`,
        massKg === null ? 'mass not known' : `${massKg.toFixed(1)} kg`,
      ]),
    ),
  ]);
}
