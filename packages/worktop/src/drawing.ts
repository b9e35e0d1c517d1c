import { sceneSvg } from './drawing/svg.ts';
import { worktopDrawing } from './drawing/worktop-drawing.ts';
import type { WorktopPlan } from './result.ts';

/**
 * The top to scale on an A3 sheet: seen from above with its holes, what is let in and the base underneath, and cut
 * across the grain where that shows most.
 *
 * @param result - A computed plan.
 * @returns An SVG file, one user unit a millimetre on paper.
 * @example
 * ```ts
 * import { planDrawing, planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * planDrawing(planWorktop(parsePlan(binderyBench))).startsWith('<svg') // => true
 * ```
 */
export function planDrawing(result: WorktopPlan): string {
  return sceneSvg(worktopDrawing(result));
}
