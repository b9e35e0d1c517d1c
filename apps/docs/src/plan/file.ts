import { type Sheet, sheetOf } from './work.ts';

/** A plan file of the longest plan is a hundredth of this. */
export const MOST_FILE_BYTES = 1_000_000;

const MOST_TOLD = 12;

/** What a file is to whoever opens it. */
export interface PlanFile {
  readonly size: number;
  text(): Promise<string>;
}

/** Why a file is not a plan: a line for each place that is wrong. */
export class FileRefused extends Error {
  readonly lines: readonly string[];

  constructor(lines: readonly string[]) {
    super(lines.join('\n'));
    const more = lines.length - MOST_TOLD;
    this.lines = more > 0 ? [...lines.slice(0, MOST_TOLD), `and ${more} more`] : lines;
  }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    throw new FileRefused(['This is not a plan file: its content is not JSON.']);
  }
}

/** Reads a plan file; what checks it is loaded only here. */
export async function sheetInFile(file: PlanFile): Promise<Sheet> {
  if (file.size > MOST_FILE_BYTES) {
    throw new FileRefused([
      `This is no plan file: it has ${file.size} bytes, and at most ${MOST_FILE_BYTES} are allowed.`,
    ]);
  }
  const content = jsonOf(await file.text());
  const { PlanFileError, parsePlan } = await import('@scantling/worktop/schema');
  try {
    parsePlan(content);
  } catch (error) {
    if (!(error instanceof PlanFileError)) throw error;
    throw new FileRefused(error.problems);
  }
  return sheetOf(content);
}
