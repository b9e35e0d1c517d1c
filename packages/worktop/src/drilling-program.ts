import { drillingProgram as programFor } from '@scantling/grids/export';
import type { WorktopPlan } from './result.ts';

/**
 * A program that drills the holes of the grid, in words of RS-274 (NGC): each through the top and as far into the backing
 * board as the plan says, with its heights, feed and speed. The passage for cables is none of them.
 *
 * Nothing here knows your machine: its manual and the cautions in the program's first lines come before it.
 *
 * @param result - A computed plan.
 * @returns The text of the program; `null` where the plan has no section `drilling`, or no hole.
 * @example
 * ```ts
 * import { drillingProgram, planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const plan = parsePlan(binderyBench);
 * const drilling = {
 *   safeHeightMm: 25,
 *   retractPlaneMm: 3,
 *   betweenHolesAt: 'safe height',
 *   belowUndersideMm: 3,
 *   feedMmPerMin: 300,
 *   speedRpm: 1500,
 * };
 * drillingProgram(planWorktop({ ...plan, drilling })).includes('S1500 M3') // => true
 * drillingProgram(planWorktop({ ...plan, drilling: undefined })) // => null
 * ```
 */
export function drillingProgram({ plan, holes }: WorktopPlan): string | null {
  const { drilling, top } = plan;
  if (!drilling || holes.length === 0) return null;
  const { belowUndersideMm, peckMm, spindleStartMs, ...settings } = drilling;
  const { diameterMm } = plan.holes;
  const depthMm = top.thicknessMm + belowUndersideMm;
  return programFor({
    ...settings,
    title: plan.name,
    panel: { lengthMm: top.lengthMm, widthMm: top.widthMm },
    holes: holes.map(({ xMm, yMm }) => ({ xMm, yMm, diameterMm })),
    depthMm,
    ...(peckMm == null ? {} : { peckMm: Math.min(peckMm, depthMm) }),
    ...(spindleStartMs == null ? {} : { spindleStartMs }),
  });
}
