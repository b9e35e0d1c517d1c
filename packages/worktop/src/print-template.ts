import { requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { drawShapes } from './drawing/pdf.ts';
import type { Box } from './full-size/box.ts';
import { type Content, contentOf, extentOf } from './full-size/content.ts';
import { overview } from './full-size/overview.ts';
import { tilePage } from './full-size/tile-page.ts';
import { MARK_REACH_MM, type Tiling, tilingOf } from './full-size/tiling.ts';
import { needed } from './lengths.ts';
import { newPdf, type Paper, papers, pdfBytes, printable } from './pdf.ts';
import type { WorktopPlan } from './result.ts';

/** What a template is printed on. */
export interface TemplatePaper {
  readonly paper: Paper;
  /** What the printer leaves blank on each side, mm, 0 to 20. */
  readonly marginMm: number;
}

/** A drilling template at full size, cut into tiles. */
export interface PrintedTemplate {
  /** A PDF file: an overview, then the tiles row by row from the front-left corner, one a page. */
  readonly pdf: Uint8Array;
  readonly pageCount: number;
  /** Tiles side by side along the grain. */
  readonly columns: number;
  /** Tiles across the grain. */
  readonly rows: number;
  /** How far a tile overlaps its neighbour, mm: so far that each hole is whole on one tile at least. */
  readonly overlapMm: number;
}

const CALLER = 'printTemplate';
/** Paper beyond the edges of the top, so that the edges can be seen. */
const RIM_MM = 6;
const LEAST_OVERLAP_MM = 2 * MARK_REACH_MM + 4;
/** More is no template any more, but a wallpaper. */
const MOST_PAGES = 600;

const sides = ({ left, front, right, back }: Box) => [right - left, back - front];

/** The least overlap with which everything that is drilled is whole on some tile. */
const overlapFor = ({ holes, screws }: Content): number =>
  [...holes, ...screws].reduce(
    (most, mark) => Math.max(most, ...sides(extentOf(mark)).map((side) => Math.ceil(side + 1))),
    LEAST_OVERLAP_MM,
  );

function requireTiling(content: Content, { paper, marginMm }: TemplatePaper): Tiling {
  const { left, front, right, back } = content.top;
  const extent = { left: left - RIM_MM, front: front - RIM_MM, right: right + RIM_MM, back: back + RIM_MM };
  const overlapMm = overlapFor(content);
  const tiling = tilingOf(extent, paper, marginMm, overlapMm);
  requireThat(
    CALLER,
    tiling !== null,
    `paper to have room for an overlap of ${needed(overlapMm)}, in which the widest hole with its number is whole, got ${paper} with a margin of ${marginMm} mm`,
  );
  const { columns, rows } = tiling as Tiling;
  requireThat(
    CALLER,
    columns * rows < MOST_PAGES,
    `at most ${MOST_PAGES} pages, got ${columns * rows + 1} of ${paper}: print on larger paper, or work from the table of holes`,
  );
  return tiling as Tiling;
}

/**
 * The drilling template at full size, tiled over sheets of paper: the holes with a cross in the middle of each, their
 * numbers, what is let in, the places of the screws, the datum edges, marks on the borders that meet on the neighbours,
 * and on each page bars of 100 mm and 4 in to check the printer by. Needs `jspdf`.
 *
 * @param result - A computed plan.
 * @param on - The paper, A4 or A3 (ISO 216) or Letter (ANSI Y14.1), and what the printer leaves blank, mm.
 * @returns The PDF and how it is tiled; the same plan gives the same bytes.
 * @throws RangeError where the paper is too small for the widest hole, or there would be more than 600 pages.
 * @example
 * ```ts
 * import { planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { printTemplate } from '@scantling/worktop/print';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const result = planWorktop(parsePlan(binderyBench));
 * const { columns, rows, pageCount } = printTemplate(result, { paper: 'A3', marginMm: 10 });
 * pageCount === columns * rows + 1 // => true
 * printTemplate(result, { paper: 'A4', marginMm: 40 }) // throws printTemplate requires marginMm between 0 and 20, got 40
 * ```
 */
export function printTemplate(result: WorktopPlan, on: TemplatePaper): PrintedTemplate {
  const { paper, marginMm } = on;
  requireChoice(CALLER, 'paper', paper, Object.keys(papers));
  requireInputs(CALLER, { marginMm }, { marginMm: { min: 0, max: 20 } });
  const content = contentOf(result);
  const tiling = requireTiling(content, on);
  const { columns, rows, lying, overlapMm } = tiling;
  const name = printable(result.plan.name);
  const pdf = newPdf(`${name}: drilling template`, paper, lying);
  pdf.viewerPreferences({ PrintScaling: 'None' });
  drawShapes(pdf, overview(name, content, tiling, paper, marginMm));
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      pdf.addPage([...papers[paper]], lying ? 'landscape' : 'portrait');
      drawShapes(pdf, tilePage(name, content, tiling, marginMm, [column, row]));
    }
  }
  return { pdf: pdfBytes(pdf), pageCount: columns * rows + 1, columns, rows, overlapMm };
}
