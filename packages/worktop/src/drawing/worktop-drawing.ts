import { dimensionText, inches } from '../lengths.ts';
import type { WorktopPlan } from '../result.ts';
import { fitted } from './lettering.ts';
import { planView } from './plan-view.ts';
import type { Scene, Shape } from './scene.ts';
import { chooseSection } from './section.ts';
import { sectionView } from './section-view.ts';
import { FRAME, SHEET, sheetShapes, TITLE_LEFT } from './sheet.ts';

const LINE = 4.6;
const FIRST_LINE = 254;

function notes({ plan, holes, strip }: WorktopPlan): Shape[] {
  const { diameterMm } = plan.holes;
  const { cables } = plan;
  const lines = [
    `${holes.length} holes ⌀ ${dimensionText(diameterMm)} mm (${inches(diameterMm)}), through`,
    ...(cables
      ? [
          `Passage for cables ⌀ ${dimensionText(cables.holeDiameterMm)} at x ${dimensionText(cables.xMm)}, y ${dimensionText(cables.yMm)}, through`,
        ]
      : []),
    'Positions from the datum: front-left corner, seen from above. x along the grain.',
    `Dashed: the base. Narrow: the slots for the screws in it.${strip ? ' Small crosses: screws of the strip.' : ''}`,
    'A–A is seen from the right end and turned, end grain hatched.',
    'The base is broken off: its depth is not in the plan.',
    'Do not measure from the drawing.',
  ];
  const left = FRAME.left + 4;
  return lines.map((text, i) => ({
    kind: 'text',
    at: [left, FIRST_LINE + i * LINE],
    text: fitted(text, 2.5, TITLE_LEFT - left - 4),
    height: 2.5,
    anchor: 'start',
  }));
}

/** Plan view and section of a top on one sheet. */
export function worktopDrawing(result: WorktopPlan): Scene {
  const { plan, movement } = result;
  const section = chooseSection(result);
  const above = planView(result, section.xMm);
  const cut = sectionView(result, section);
  return {
    size: SHEET,
    title: plan.name,
    description: `Plan view, 1:${above.scale}: the top with its holes, and the base under it. Section A–A across the grain, ${dimensionText(section.xMm)} mm from the left end, 1:${cut.scale}.`,
    shapes: [
      ...above.shapes,
      ...cut.shapes,
      ...notes(result),
      ...sheetShapes({
        title: plan.name,
        documentType: 'Plan view from above, section A–A',
        scale: above.scale === cut.scale ? `1:${above.scale}` : `1:${above.scale}, A–A 1:${cut.scale}`,
        material: `${movement.species}, ${dimensionText(plan.top.thicknessMm)} mm thick`,
      }),
    ],
  };
}
