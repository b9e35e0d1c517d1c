import { requireChoice } from '@scantling/rules';
import { fitted } from './drawing/lettering.ts';
import { drawShapes } from './drawing/pdf.ts';
import type { Shape, Spot } from './drawing/scene.ts';
import { newPdf, type Paper, papers, pdfBytes, printable } from './pdf.ts';
import { blocksOf } from './work-sheet/blocks.ts';
import type { WorkSheet } from './work-sheet/model.ts';
import { MARGIN, pageShapes, paginate } from './work-sheet/pages.ts';

/** A work sheet on paper. */
export interface PrintedWorkSheet {
  /** A PDF file. */
  readonly pdf: Uint8Array;
  readonly pageCount: number;
}

const FOOT = 2;

/** Name, page and a line above them. */
function foot(name: string, [width, height]: Spot, page: number, pageCount: number): Shape[] {
  const y = height - 10;
  const right = width - MARGIN.right;
  return [
    { kind: 'line', from: [MARGIN.left, y - 5], to: [right, y - 5], line: 'thin' },
    {
      kind: 'text',
      at: [MARGIN.left, y],
      text: fitted(`${name}: work sheet`, FOOT, right - MARGIN.left - 40),
      height: FOOT,
      anchor: 'start',
    },
    { kind: 'text', at: [right, y], text: `page ${page} of ${pageCount}`, height: FOOT, anchor: 'end' },
  ];
}

const LOST =
  'Signs that the type of this sheet lacks stand as “?”: it has those of Western European languages. The report and the lists have them all.';

/** The sheet in the signs that the type has, with a note where some had to go. */
function inPrint(sheet: WorkSheet): WorkSheet {
  let lost = false;
  const print = (text: string) => {
    const printed = printable(text);
    lost ||= printed.split('?').length > text.split('?').length;
    return printed;
  };
  const printed = {
    name: print(sheet.name),
    steps: sheet.steps.map((step) => ({
      ...step,
      title: print(step.title),
      settings: step.settings.map(({ name, value }) => ({ name: print(name), value: print(value) })),
      tasks: step.tasks.map(print),
      decisions: step.decisions.map(print),
      cautions: step.cautions.map(print),
    })),
    cautions: sheet.cautions.map(print),
    says: print(sheet.says),
    warnings: sheet.warnings.map(print),
  };
  return lost ? { ...printed, warnings: [...printed.warnings, LOST] } : printed;
}

/**
 * A work sheet as pages to print, upright, with boxes to tick and room to write. Needs `jspdf`.
 *
 * @param sheet - What `workSheet` of the main entry gives.
 * @param on - The paper: A4 or A3 (ISO 216), or Letter (ANSI Y14.1).
 * @returns The PDF; the same sheet gives the same bytes. Its type is a standard font of PDF, which has the signs of
 * Western European languages: of others accents go, and letters stand as question marks, which the sheet then says.
 * @throws RangeError where the paper is none of these.
 * @example
 * ```ts
 * import { planWorktop, workSheet } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { printWorkSheet } from '@scantling/worktop/print';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const { pdf, pageCount } = printWorkSheet(workSheet(planWorktop(parsePlan(binderyBench))), { paper: 'A4' });
 * String.fromCharCode(...pdf.slice(0, 4)) // => '%PDF'
 * pageCount > 1 // => true
 * printWorkSheet(workSheet(planWorktop(parsePlan(binderyBench))), { paper: 'A9' }) // throws printWorkSheet requires paper
 * ```
 */
export function printWorkSheet(sheet: WorkSheet, { paper }: { readonly paper: Paper }): PrintedWorkSheet {
  requireChoice('printWorkSheet', 'paper', paper, Object.keys(papers));
  const [width, height] = papers[paper];
  const printed = inPrint(sheet);
  const blocks = blocksOf(printed, width - MARGIN.left - MARGIN.right);
  const pages = paginate(blocks, height - MARGIN.top - MARGIN.bottom);
  const pdf = newPdf(`${sheet.name}: work sheet`, paper);
  for (const [i, page] of pages.entries()) {
    if (i > 0) pdf.addPage([width, height]);
    drawShapes(pdf, [...pageShapes(page), ...foot(printed.name, [width, height], i + 1, pages.length)]);
  }
  return { pdf: pdfBytes(pdf), pageCount: pages.length };
}
