import { holeTable, planDrawing, type WorktopPlan } from '../index.ts';
import type { PaperName } from './options.ts';

/** A file for the shop. */
export interface Output {
  readonly name: string;
  /** What is being done, for whoever waits. */
  readonly doing: string;
  readonly content: (result: WorktopPlan, paper: PaperName) => Promise<string | Uint8Array>;
}

/** Everything that is written, in the order of the work. */
export const outputs: readonly Output[] = [
  { name: 'drawing.svg', doing: 'drawing to scale', content: async (result) => planDrawing(result) },
  { name: 'holes.csv', doing: 'table of holes', content: async (result) => holeTable(result) },
  {
    name: 'plan.json',
    doing: 'every figure',
    content: async (result) => `${JSON.stringify(result, null, 2)}\n`,
  },
];
