import { parseArgs } from 'node:util';
import { UserError } from './files.ts';

export const USAGE = `Plans a work top from a file, checks the plan, and writes what the shop needs.

Usage: scantling-plan [FILE] [--out DIR] [--paper SIZE]
       scantling-plan --example NAME
       scantling-plan --recheck FILE

  FILE            a plan file (JSON); without it, the bindery bench
  --out DIR       folder for the results (default: shop-plan)
  --paper SIZE    a4, a3 or letter, for what is printed (default: a4)
  --what-if       also say what happens if wood, pitch or base turn out a little different
  --json          print every figure as JSON instead of the report, with --what-if those changes too
  --quiet         print nothing but what is wrong
  --progress      say on standard error what is being done; a terminal is told anyhow
  --example NAME  print an example plan file to start from; NAME may be left out to list them
  --recheck FILE  recompute the claims of a plan.json written earlier, by other code
  --help, -h      this text

Writes a scale drawing, a drilling template at full size, the holes as a table, a drawing and a drilling
program, cut list, shopping list, work sheet, and every figure as plan.json.

Exit code: 0 the plan can be built from; 1 it can't, and nothing is written; 2 the command or a file is
not as it should be; 3 the plan does not bear its own recheck, which is a fault of this program.
`;

const papers = ['a4', 'a3', 'letter'] as const;
export type PaperName = (typeof papers)[number];

export interface CliOptions {
  readonly file: string | undefined;
  readonly out: string;
  readonly paper: PaperName;
  readonly whatIf: boolean;
  readonly json: boolean;
  readonly quiet: boolean;
  readonly progress: boolean;
  readonly example: string | undefined;
  readonly recheck: string | undefined;
  readonly help: boolean;
}

const flag = { type: 'boolean', default: false } as const;

/** `--example` may stand alone; a parser of options wants a value, so it gets one. */
const withValue = (args: readonly string[]) =>
  args.flatMap((arg, i) =>
    arg === '--example' && (args[i + 1] === undefined || args[i + 1]?.startsWith('-'))
      ? ['--example=']
      : [arg],
  );

/** What was asked for on the command line. */
export function cliOptions(args: readonly string[]): CliOptions {
  const { values, positionals } = parseArgs({
    args: withValue(args),
    options: {
      out: { type: 'string', default: 'shop-plan' },
      paper: { type: 'string', default: 'a4' },
      'what-if': flag,
      json: flag,
      quiet: flag,
      progress: flag,
      example: { type: 'string' },
      recheck: { type: 'string' },
      help: { ...flag, short: 'h' },
    },
    allowPositionals: true,
  });
  if (positionals.length > 1) throw new UserError(`expected one plan file, got ${positionals.length}`);
  const paper = papers.find((name) => name === values.paper.toLowerCase());
  if (!paper) throw new UserError(`--paper: expected one of ${papers.join(', ')}, got ${values.paper}`);
  const { out, json, quiet, progress, example, recheck, help } = values;
  if (out === '') throw new UserError('--out: expected a folder, got nothing');
  const doesNotGoWith = (one: string, other: string) =>
    new UserError(`--${one} and ${other}: expected one of them, got both`);
  if (quiet && json) throw doesNotGoWith('json', '--quiet');
  if (quiet && values['what-if']) throw doesNotGoWith('what-if', '--quiet');
  if (recheck !== undefined && example !== undefined) throw doesNotGoWith('recheck', '--example');
  for (const [name, value] of Object.entries({ example, recheck })) {
    if (value !== undefined && positionals.length) throw doesNotGoWith(name, 'a plan file');
  }
  return {
    ...{ file: positionals[0], out, paper, whatIf: values['what-if'] },
    ...{ json, quiet, progress, example, recheck, help },
  };
}
