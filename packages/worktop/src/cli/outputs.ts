import {
  cutList,
  drillingProgram,
  holeTable,
  planDrawing,
  shoppingList,
  type WorktopPlan,
  workSheet,
} from '../index.ts';
import type { Paper } from '../pdf.ts';
import { UserError } from './files.ts';
import type { PaperName } from './options.ts';

/** A file for the shop. */
export interface Output {
  readonly name: string;
  /** What is being done, for whoever waits. */
  readonly doing: string;
  /** `null` where there is none, for want of a section in the plan or for a reason that it warns of. */
  readonly content: (
    result: WorktopPlan,
    paper: PaperName,
    warn: (says: string) => void,
  ) => Promise<string | Uint8Array | null>;
}

const sheets: Readonly<Record<PaperName, Paper>> = { a4: 'A4', a3: 'A3', letter: 'Letter' };

/** Common printers leave no more blank than this. */
const PRINTER_MARGIN_MM = 10;

/** Sheets are printed with jspdf, which people who only compute don't install. */
const loadPrint = () =>
  import('../print.ts').catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'ERR_MODULE_NOT_FOUND') throw error;
    throw new UserError('Writing sheets to print needs jspdf: npm install jspdf');
  });

/** Everything that is written, in the order of the work. */
export const outputs: readonly Output[] = [
  { name: 'drawing.svg', doing: 'drawing to scale', content: async (result) => planDrawing(result) },
  { name: 'holes.csv', doing: 'table of holes', content: async (result) => holeTable(result) },
  {
    name: 'holes.dxf',
    doing: 'drawing for other programs',
    content: async (result) => (await import('../dxf.ts')).planDxf(result),
  },
  {
    name: 'drilling.ngc',
    doing: 'drilling program',
    content: async (result) => drillingProgram(result),
  },
  {
    name: 'template.pdf',
    doing: 'drilling template at full size',
    content: async (result, paper, warn) => {
      const { printTemplate } = await loadPrint();
      try {
        return printTemplate(result, { paper: sheets[paper], marginMm: PRINTER_MARGIN_MM }).pdf;
      } catch (error) {
        // Too large a top for such paper: the plan can be built without.
        if (!(error instanceof RangeError)) throw error;
        warn(`template.pdf is left out: ${error.message}`);
        return null;
      }
    },
  },
  { name: 'cut-list.csv', doing: 'cut list', content: async (result) => cutList(result) },
  { name: 'shopping-list.csv', doing: 'shopping list', content: async (result) => shoppingList(result) },
  {
    name: 'work-sheet.pdf',
    doing: 'work sheet',
    content: async (result, paper) => {
      const { printWorkSheet } = await loadPrint();
      return printWorkSheet(workSheet(result), { paper: sheets[paper] }).pdf;
    },
  },
  {
    name: 'plan.json',
    doing: 'every figure',
    content: async (result) => `${JSON.stringify(result, null, 2)}\n`,
  },
];
