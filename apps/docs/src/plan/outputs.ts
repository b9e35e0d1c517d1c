import type { WorktopPlan } from '@scantling/worktop';
import { planContent, type Sheet } from './work.ts';

/** Paper to print on. */
export const papers = { A4: 'A4', A3: 'A3', Letter: 'Letter' } as const;
export type PaperName = keyof typeof papers;

export const isPaper = (name: string): name is PaperName => Object.hasOwn(papers, name);

/** What a file is made of. */
export interface Made {
  readonly result: WorktopPlan;
  readonly sheet: Sheet;
  readonly paper: PaperName;
}

/** A file to take away. */
export interface Output {
  readonly file: string;
  readonly label: string;
  readonly type: string;
  /** `null` where the plan has none. */
  make(from: Made): Promise<string | Uint8Array | null>;
}

/** Common printers leave no more blank than this. */
const PRINTER_MARGIN_MM = 10;

const SVG = 'image/svg+xml';
const PDF = 'application/pdf';
const CSV = 'text/csv';
const JSON_TYPE = 'application/json';

const json = (content: object) => `${JSON.stringify(content, null, 2)}\n`;

const onDemand = () => import('./on-demand.ts');

/** Everything there is to take away, in the order of the work. What writes it is loaded when it is asked for. */
export const outputs: Readonly<Record<string, Output>> = {
  plan: {
    file: 'plan.json',
    label: 'Plan file',
    type: JSON_TYPE,
    make: async ({ sheet }) => json(planContent(sheet)),
  },
  workSheet: {
    file: 'work-sheet.pdf',
    label: 'Work sheet',
    type: PDF,
    make: async ({ result, paper }) => {
      const [{ workSheet }, { printWorkSheet }] = await Promise.all([
        onDemand(),
        import('@scantling/worktop/print'),
      ]);
      return printWorkSheet(workSheet(result), { paper }).pdf;
    },
  },
  template: {
    file: 'template.pdf',
    label: 'Drilling template at full size',
    type: PDF,
    make: async ({ result, paper }) => {
      const { printTemplate } = await import('@scantling/worktop/print');
      return printTemplate(result, { paper, marginMm: PRINTER_MARGIN_MM }).pdf;
    },
  },
  drawing: {
    file: 'drawing.svg',
    label: 'Drawing to scale',
    type: SVG,
    make: async ({ result }) => (await onDemand()).planDrawing(result),
  },
  dxf: {
    file: 'holes.dxf',
    label: 'Drawing for other programs (DXF)',
    type: 'image/vnd.dxf',
    make: async ({ result }) => (await import('@scantling/worktop/dxf')).planDxf(result),
  },
  holes: {
    file: 'holes.csv',
    label: 'Table of holes',
    type: CSV,
    make: async ({ result }) => (await onDemand()).holeTable(result),
  },
  drilling: {
    file: 'drilling.ngc',
    label: 'Drilling program',
    type: 'text/plain',
    make: async ({ result }) => (await onDemand()).drillingProgram(result),
  },
  shopping: {
    file: 'shopping-list.csv',
    label: 'Shopping list',
    type: CSV,
    make: async ({ result }) => (await onDemand()).shoppingList(result),
  },
  cuts: {
    file: 'cut-list.csv',
    label: 'Cut list',
    type: CSV,
    make: async ({ result }) => (await onDemand()).cutList(result),
  },
  finished: {
    file: 'finished-plan.json',
    label: 'Every figure',
    type: JSON_TYPE,
    make: async ({ result }) => json(result),
  },
};

/** What a file of a plan is called: `bindery-bench-plan.json`. */
export function fileName(planName: string, file: string): string {
  const stem = planName
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${stem || 'plan'}-${file}`;
}
