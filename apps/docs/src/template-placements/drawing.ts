import type { TemplatePlan, TemplateSteppingInput } from '@scantling/grids';
import type { Drawing } from '../calculator/calculation.ts';
import { piece } from '../calculator/piece.ts';
import { label } from '../drawing/marks.ts';
import { SHEET_WIDTH, short, viewOf } from '../drawing/sheet.ts';

const EDGE = 16;
const MOST_HEIGHT = 380;
/** Outlines of placements that follow each other are so far within each other that all can be seen. */
const STEPS = [0.5, 0.42, 0.34];
/** A number has room in a hole of this radius on the sheet. */
const NUMBER = 9;

/** The grid from above: in each hole the number of the placement that bores it, round them the placements. */
export function drawPlacements(
  { columns, rows, pitchXMm, pitchYMm, template }: TemplateSteppingInput,
  { placements, holes, unreached }: TemplatePlan,
): Drawing {
  const [lengthMm, widthMm] = [columns * pitchXMm, rows * pitchYMm];
  const width = SHEET_WIDTH - 2 * EDGE;
  const height = Math.min(MOST_HEIGHT, (width * widthMm) / lengthMm);
  const { at, scale } = viewOf({ left: EDGE, top: EDGE, width, height }, 0, 0, lengthMm, widthMm);
  const centre = (column: number, row: number) => at((column + 0.5) * pitchXMm, (row + 0.5) * pitchYMm);
  const pitch = scale * Math.min(pitchXMm, pitchYMm);
  const radius = Math.min(12, 0.32 * pitch);
  const outlines = placements.map(({ column, row }, i) => {
    const out = STEPS[i % STEPS.length] as number;
    const [x1, y1] = centre(column - out, row + template.rows - 1 + out);
    const [x2, y2] = centre(column + template.columns - 1 + out, row - out);
    return piece('rect', {
      class: `placement placement-${i % STEPS.length}`,
      ...{ x: short(x1), y: short(y1), width: short(x2 - x1), height: short(y2 - y1), rx: 4 },
    });
  });
  const circle = (column: number, row: number, style: string) => {
    const [cx, cy] = centre(column, row);
    return piece('circle', { class: style, cx: short(cx), cy: short(cy), r: short(radius) });
  };
  return {
    title: `The grid from above, front edge below: ${columns} by ${rows} holes, bored in ${placements.length} numbered placements of a template of ${template.columns} by ${template.rows}.`,
    box: [0, 0, SHEET_WIDTH, height + 2 * EDGE + 22],
    shapes: [
      ...outlines,
      ...holes.map(({ column, row, placementIndex }) =>
        circle(column, row, `hole placement-${placementIndex % STEPS.length}`),
      ),
      ...unreached.map(({ column, row }) => circle(column, row, 'lost')),
      ...(radius < NUMBER
        ? []
        : holes.map(({ column, row, placementIndex }) => {
            const [x, y] = centre(column, row);
            return label([x, y + 4], `${placementIndex + 1}`, 'middle', 'count');
          })),
      label([SHEET_WIDTH - EDGE, height + 2 * EDGE + 14], 'from above, front edge below', 'end', 'remark'),
    ],
  };
}
