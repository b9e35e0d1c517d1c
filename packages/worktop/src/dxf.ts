/**
 * The top with its holes as a DXF drawing. A subpath of its own, so that nobody else carries the library that writes it.
 *
 * @module worktop/dxf
 */
import { holeDxf } from '@scantling/grids/export/dxf';
import { keepOutsOf } from './parts/holes.ts';
import type { WorktopPlan } from './result.ts';

/**
 * The top as a DXF drawing at full size in millimetres, y up, the datum corner at the origin: the outline, every hole with
 * its centre mark, the passage for cables, and what holes miss. Layers: `PANEL`, `HOLES`, `CENTRE_MARKS`, `KEEP_OUTS`.
 *
 * @param result - A computed plan.
 * @returns The text of a DXF file.
 * @example
 * ```ts
 * import { planWorktop } from '@scantling/worktop';
 * import { planDxf } from '@scantling/worktop/dxf';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const result = planWorktop({ ...parsePlan(binderyBench), cables: undefined });
 * planDxf(result).match(/^HOLES$/gm).length === result.holes.length + 1 // => true
 * ```
 */
export function planDxf({ plan, holes }: WorktopPlan): string {
  const { top, cables } = plan;
  const { diameterMm } = plan.holes;
  const onTop = ({ xMm, yMm }: { readonly xMm: number; readonly yMm: number }) =>
    xMm >= 0 && xMm <= top.lengthMm && yMm >= 0 && yMm <= top.widthMm;
  const passage = cables && onTop(cables) ? [{ ...cables, diameterMm: cables.holeDiameterMm }] : [];
  return holeDxf({
    title: plan.name,
    panel: { lengthMm: top.lengthMm, widthMm: top.widthMm },
    holes: [...holes.map((hole) => ({ ...hole, diameterMm })), ...passage],
    keepOuts: keepOutsOf(plan),
  });
}
