#!/usr/bin/env node
import { parseArgs } from 'node:util';
import { explain, readPlanFile, UserError, writeFiles } from './cli/files.ts';
import { binderyBench } from './examples.ts';
import { holeTable, planDrawing, planReport, planWorktop } from './index.ts';

const USAGE = `Plans a work top from a file and writes what the shop needs.

Usage: scantling-plan [FILE] [--out DIR]

  FILE        a plan file (JSON); without it, the bindery bench
  --out DIR   folder for the results (default: shop-plan)
  --help      this text

Writes drawing.svg (to scale), holes.csv (mm and inches) and plan.json (every figure).
Exit code: 0 the plan can be built from, 1 it can't, and nothing is written.
`;

/** Plan files are read with zod, which people who only compute don't install. */
const loadSchema = () =>
  import('./schema.ts').catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'ERR_MODULE_NOT_FOUND') throw error;
    throw new UserError('Reading a plan file needs zod: npm install zod');
  });

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
  const { parsePlan } = await loadSchema();
  const result = planWorktop(parsePlan(file === undefined ? binderyBench : await readPlanFile(file)));
  console.log(planReport(result));
  const failed = result.checks.filter(({ status }) => status === 'fail');
  if (failed.length > 0) {
    const count = `${failed.length} of ${result.checks.length} checks failed; nothing was written.`;
    throw new UserError(
      [`${file ?? 'bindery bench'}: ${count}`, ...failed.map(({ says }) => says)].join('\n'),
    );
  }
  const files = {
    'drawing.svg': planDrawing(result),
    'holes.csv': holeTable(result),
    'plan.json': `${JSON.stringify(result, null, 2)}\n`,
  };
  await writeFiles(values.out, files);
  console.log(`Written to ${values.out}: ${Object.keys(files).join(', ')}`);
}

// Whoever reads only the first lines, as with `| head`, closes the pipe: the rest of the report goes nowhere.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

main().catch((error: unknown) => {
  console.error(explain(error));
  process.exitCode = 1;
});
