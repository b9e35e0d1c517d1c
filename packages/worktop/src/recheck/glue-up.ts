import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';
import { densityKgPerM3 } from './wood.ts';

/** The boards laid side by side and worked down, stage by stage. */
export function recheckGlueUp(result: WorktopPlan): Finding[] {
  const { plan, glueUp } = result;
  const asked = plan.glueUp;
  if (!glueUp || !asked) return same('glueUp', glueUp === null, asked == null);
  const { top } = plan;
  const { boards, boardCount: count, stages } = glueUp;
  const gluedWidthMm = top.widthMm + asked.trimWidthMm;
  const eachMm = gluedWidthMm / count;
  const lengthMm = top.lengthMm + asked.trimLengthMm;
  const gluedMm = top.thicknessMm + asked.flatteningMm;
  const boughtMm = Math.max(eachMm + asked.jointingMm, asked.leastWidthMm);
  const joints = count - 1;
  const volumes = [
    lengthMm * boughtMm * count * (gluedMm + asked.planingMm),
    lengthMm * gluedWidthMm * gluedMm,
    lengthMm * gluedWidthMm * top.thicknessMm,
    top.lengthMm * top.widthMm * top.thicknessMm,
  ].map((mm3) => mm3 / 1e9);
  const density = densityKgPerM3(result);
  const { glue, clampForceN } = asked;
  const forceN = glue.pressureMPa * lengthMm * gluedMm;
  // Pressure spreads at 45° from each pad, so that a clamp presses twice its distance from the joint.
  const clamps = Math.max(
    1,
    Math.ceil(forceN / clampForceN - 1e-9),
    Math.ceil(lengthMm / (2 * eachMm) - 1e-9),
  );
  const angle = top.cut === 'quartersawn' ? 90 : 0;
  const ends = boards.map((board) => board.fromFrontMm + board.widthMm);
  return [
    ...holds('glueUp.boardCount', count >= asked.boardCount, `is less than ${asked.boardCount}`),
    ...holds(
      'glueUp.boardCount',
      eachMm + asked.jointingMm <= asked.mostWidthMm + 1e-6,
      'needs wider boards',
    ),
    ...agree('glueUp.boards', boards.length, count, 0),
    ...boards.flatMap((board, i) => {
      const path = `glueUp.boards[${i}]`;
      const joint = Math.min(top.widthMm, (i + 1) * eachMm - asked.trimWidthMm / 2);
      return [
        ...agree(`${path}.fromFrontMm`, board.fromFrontMm, i === 0 ? 0 : (ends[i - 1] as number)),
        ...agree(`${path}.widthMm`, ends[i] as number, joint),
        ...agree(`${path}.thicknessMm`, board.thicknessMm, top.thicknessMm),
        ...agree(`${path}.ringAngleDeg`, board.ringAngleDeg, angle, 0),
        ...same(`${path}.heart`, board.heart, asked.order === 'alternate' && i % 2 ? 'down' : 'up'),
      ];
    }),
    ...agree('glueUp.roughLengthMm', glueUp.roughLengthMm, lengthMm),
    ...agree('glueUp.roughWidthMm', glueUp.roughWidthMm, eachMm + asked.jointingMm),
    ...agree('glueUp.roughThicknessMm', glueUp.roughThicknessMm, gluedMm + asked.planingMm),
    ...agree('glueUp.jointedWidthMm', glueUp.jointedWidthMm, eachMm),
    ...agree('glueUp.gluedThicknessMm', glueUp.gluedThicknessMm, gluedMm),
    ...(density === null
      ? same('glueUp.densityKgPerM3', glueUp.densityKgPerM3, null)
      : agree('glueUp.densityKgPerM3', glueUp.densityKgPerM3 ?? Number.NaN, density, 0.01)),
    ...agree('glueUp.stages', stages.length, volumes.length, 0),
    ...volumes.flatMap((volumeM3, i) => {
      const stage = stages[i];
      const massKg = density === null ? 0 : volumeM3 * density;
      return [
        ...agree(`glueUp.stages[${i}].volumeM3`, stage?.volumeM3 ?? Number.NaN, volumeM3),
        ...agree(
          `glueUp.stages[${i}].massKg`,
          stage?.massKg ?? (density === null ? 0 : Number.NaN),
          massKg,
          1e-3,
        ),
      ];
    }),
    ...agree('glueUp.glueLineM2', glueUp.glueLineM2, (joints * lengthMm * gluedMm) / 1e6),
    ...agree(
      'glueUp.glueMassG',
      glueUp.glueMassG,
      (((joints * lengthMm * gluedMm) / 1e6) * glue.spreadGPerM2) / (1 - glue.lossPct / 100),
    ),
    ...same('glueUp.clamping', glueUp.clamping !== null, joints > 0),
    ...(glueUp.clamping
      ? [
          ...agree('glueUp.clamping.forceN', glueUp.clamping.forceN, forceN),
          ...agree('glueUp.clamping.clampCount', glueUp.clamping.clampCount, clamps, 0),
          ...agree('glueUp.clamping.spacingMm', glueUp.clamping.spacingMm, lengthMm / clamps),
        ]
      : []),
  ];
}
