#!/usr/bin/env node
import { mkdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { binderyBench } from './examples.ts';
import { holeTable, planDrawing, planReport, planWorktop, type WorktopPlan } from './index.ts';
import { PlanFileError, parsePlan } from './schema.ts';

const USAGE = `Plans a work top from a file and writes what the shop needs.

Usage: scantling-plan [FILE] [--out DIR]

  FILE        a plan file (JSON); without it, the bindery bench
  --out DIR   folder for the results (default: shop-plan)
  --help      this text

Writes drawing.svg (to scale), holes.csv (mm and inches) and plan.json (every figure).
Exit code: 0 the plan can be built from, 1 it can't, and nothing is written.
`;

/** Plans are a few kilobytes; anything near this is another kind of file. */
const MOST_BYTES = 1_000_000;

/** What a person can put right. Anything else is a fault of ours and keeps its stack. */
class UserError extends Error {}

async function readPlanFile(file: string): Promise<unknown> {
  const { size } = await stat(file).catch((error: NodeJS.ErrnoException) => {
    throw new UserError(`${file}: can't be read (${error.code})`);
  });
  if (size > MOST_BYTES) {
    throw new UserError(
      `${file}: ${size} bytes is too large for a plan file, at most ${MOST_BYTES} are allowed`,
    );
  }
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    throw new UserError(`${file}: can't be read (${error.code})`);
  });
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new UserError(`${file}: is not JSON: ${(error as Error).message}`);
  }
}

/** Every file is whole before the first one takes its place. */
async function writeAll(dir: string, files: Readonly<Record<string, string>>): Promise<void> {
  const drafts = join(dir, `.draft-${process.pid}`);
  try {
    await mkdir(drafts, { recursive: true });
    for (const [name, content] of Object.entries(files)) await writeFile(join(drafts, name), content);
    for (const name of Object.keys(files)) await rename(join(drafts, name), join(dir, name));
  } catch (error) {
    throw new UserError(`--out ${dir}: can't be written (${(error as NodeJS.ErrnoException).code})`);
  } finally {
    await rm(drafts, { recursive: true, force: true });
  }
}

function shopFiles(result: WorktopPlan): Record<string, string> {
  const drawing = planDrawing(result);
  return {
    ...(drawing ? { 'drawing.svg': drawing } : {}),
    'holes.csv': holeTable(result),
    'plan.json': `${JSON.stringify(result, null, 2)}\n`,
  };
}

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    options: { out: { type: 'string', default: 'shop-plan' }, help: { type: 'boolean', default: false } },
    allowPositionals: true,
  });
  if (values.help) {
    console.log(USAGE);
    return;
  }
  if (positionals.length > 1) throw new UserError(`expected one plan file, got ${positionals.length}`);
  const [file] = positionals;
  const content = file === undefined ? binderyBench : await readPlanFile(file);
  const result = planWorktop(parsePlan(content));
  console.log(planReport(result));
  const failed = result.checks.filter(({ status }) => status === 'fail');
  if (failed.length > 0) {
    throw new UserError(
      `${file ?? 'bindery bench'}: ${failed.length} of ${result.checks.length} checks failed; nothing was written.\n${failed.map(({ says }) => says).join('\n')}`,
    );
  }
  const files = shopFiles(result);
  await writeAll(resolve(values.out), files);
  console.log(`Written to ${values.out}: ${Object.keys(files).join(', ')}`);
}

main().catch((error: unknown) => {
  const parseArgsError =
    error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS');
  if (
    error instanceof UserError ||
    error instanceof PlanFileError ||
    error instanceof RangeError ||
    parseArgsError
  ) {
    console.error((error as Error).message);
  } else {
    console.error(error);
  }
  process.exitCode = 1;
});
