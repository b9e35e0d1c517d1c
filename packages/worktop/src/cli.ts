#!/usr/bin/env node
import { explain, readJson, UserError, writeFiles } from './cli/files.ts';
import { type CliOptions, cliOptions, USAGE } from './cli/options.ts';
import { outputs } from './cli/outputs.ts';
import { littleChanges, whatIfReport } from './cli/what-if-report.ts';
import * as examples from './examples.ts';
import { planReport, planWorktop, recheckPlan, type WorktopPlan } from './index.ts';

/** The plan can't be built from: its report has said why. */
class FailedPlan extends UserError {
  override readonly exitCode = 1;
}

/** Another computation does not bear the plan out: a fault of ours. */
class Disagreement extends UserError {
  override readonly exitCode = 3;
}

/** Plan files are a few kilobytes, finished plans up to some megabytes; anything larger is another kind of file. */
const MOST_PLAN_BYTES = 1_000_000;
const MOST_RESULT_BYTES = 100_000_000;

/** Plan files are read with zod, which people who only compute don't install. */
const loadSchema = () =>
  import('./schema.ts').catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'ERR_MODULE_NOT_FOUND') throw error;
    throw new UserError('Reading a plan file needs zod: npm install zod');
  });

/** `binderyBench` is `bindery-bench` on the command line. */
const named = Object.entries(examples).map(
  ([name, content]) => [name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), content] as const,
);

/** Where editors find the schema once this package is installed. */
const SCHEMA = './node_modules/@scantling/worktop/plan.schema.json';

function printExample(name: string): void {
  const found = named.find(([example]) => example === name);
  if (found) console.log(JSON.stringify({ ...(found[1] as object), $schema: SCHEMA }, null, 2));
  else if (name === '') console.log(named.map(([example]) => example).join('\n'));
  else {
    throw new UserError(
      `--example: expected one of ${named.map(([example]) => example).join(', ')}, got ${name}`,
    );
  }
}

function requireBorneOut(result: WorktopPlan): void {
  const { agrees, findings } = recheckPlan(result);
  if (!agrees) {
    throw new Disagreement(
      ['The plan does not bear its recheck:', ...findings.map(({ says }) => says)].join('\n'),
    );
  }
}

async function recheckFile(file: string): Promise<void> {
  const content = await readJson(file, MOST_RESULT_BYTES);
  try {
    requireBorneOut(content as WorktopPlan);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new UserError(`${file}: is not a finished plan of this release`);
  }
  console.log(`${file}: every claim is borne out.`);
}

function print(result: WorktopPlan, { json, quiet, whatIf }: CliOptions): void {
  if (json) {
    const changes = whatIf ? { whatIf: littleChanges(result) } : {};
    console.log(JSON.stringify({ ...result, ...changes }, null, 2));
  } else if (!quiet) console.log(planReport(result));
  if (whatIf && !json) console.log(whatIfReport(result));
}

function requireBuildable({ checks }: WorktopPlan, name: string): void {
  const failed = checks.filter(({ status }) => status === 'fail');
  if (failed.length === 0) return;
  const count = `${failed.length} of ${checks.length} checks failed; nothing was written.`;
  throw new FailedPlan([`${name}: ${count}`, ...failed.map(({ says }) => says)].join('\n'));
}

/** What a terminal needs to write over its last line. */
const CLEARED = '\r\u001b[K';

/** Takes back what a terminal was told of progress, so that nothing is written behind it. */
const clear = () => {
  if (process.stderr.isTTY) process.stderr.write(CLEARED);
};

async function planFile(options: CliOptions): Promise<void> {
  const { file, out, paper, progress, json, quiet } = options;
  const tell = (doing: string) => {
    if (progress) console.error(doing);
    else if (process.stderr.isTTY) process.stderr.write(`${CLEARED}${doing}`);
  };
  tell('reading the plan');
  const { parsePlan } = await loadSchema();
  const content = file === undefined ? examples.binderyBench : await readJson(file, MOST_PLAN_BYTES);
  const plan = parsePlan(content);
  tell('planning');
  const result = planWorktop(plan);
  tell('rechecking');
  requireBorneOut(result);
  clear();
  print(result, options);
  requireBuildable(result, file ?? 'bindery bench');
  const files: Record<string, string | Uint8Array | null> = {};
  for (const { name, doing, content: make } of outputs) {
    tell(`writing ${name}: ${doing}`);
    files[name] = await make(result, paper, (says) => {
      clear();
      console.error(says);
    });
  }
  clear();
  const { written, removed } = await writeFiles(out, files);
  if (json || quiet) return;
  console.log(`Written to ${out}: ${written.join(', ')}`);
  if (removed.length > 0) console.log(`Removed, since this plan has none: ${removed.join(', ')}`);
}

async function main(): Promise<void> {
  const options = cliOptions(process.argv.slice(2));
  if (options.help) console.log(USAGE);
  else if (options.example !== undefined) printExample(options.example);
  else if (options.recheck !== undefined) await recheckFile(options.recheck);
  else await planFile(options);
}

// Whoever reads only the first lines, as with `| head`, closes the pipe: the rest of the report goes nowhere.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

main().catch((error: unknown) => {
  const { says, exitCode } = explain(error);
  clear();
  console.error(says);
  process.exitCode = exitCode;
});
