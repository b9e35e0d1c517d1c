import { execFile } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cliOptions } from '../src/cli/options.ts';
import { binderyBench } from '../src/examples.ts';
import { planWorktop } from '../src/index.ts';
import { parsePlan } from '../src/schema.ts';
import { bench, benchContent, changed } from './bindery-bench.ts';

/** Files for the bindery bench. */
const written = [
  'cut-list.csv',
  'drawing.svg',
  'drilling.ngc',
  'holes.csv',
  'holes.dxf',
  'plan.json',
  'shopping-list.csv',
  'template.pdf',
  'work-sheet.pdf',
];

const cli = new URL('../src/cli.ts', import.meta.url).pathname;
let root = '';
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'scantling-'));
});
afterAll(() => rmSync(root, { recursive: true }));

interface Ended {
  readonly status: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** A folder of its own, and the command in it. */
function shop() {
  const dir = mkdtempSync(join(root, 'shop-'));
  const run = (...args: string[]) =>
    new Promise<Ended>((resolve) => {
      const argv = ['--conditions=@scantling/source', cli, ...args];
      execFile(process.execPath, argv, { cwd: dir, maxBuffer: 100_000_000 }, (error, stdout, stderr) =>
        resolve({ status: error ? Number(error.code) : 0, stdout, stderr }),
      );
    });
  const put = (content: unknown, name = 'bench.json') => {
    writeFileSync(join(dir, name), typeof content === 'string' ? content : JSON.stringify(content));
    return name;
  };
  const read = (...path: string[]) => readFileSync(join(dir, ...path), 'utf8');
  const list = (...path: string[]) => readdirSync(join(dir, ...path)).sort();
  return { dir, run, put, read, list };
}

/** Starting a process takes a second, on a busy machine several: they start side by side, and may take their time. */
describe.concurrent('the command', { timeout: 90_000 }, () => {
  test('plans the bindery bench and writes every file', async () => {
    const { run, list } = shop();
    const { status, stdout, stderr } = await run();
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toContain('Bindery bench');
    expect(list('shop-plan')).toEqual(written);
  });

  test('gives the same bytes for the same input, and leaves the files of others alone', async () => {
    const { dir, run, put, read, list } = shop();
    mkdirSync(join(dir, 'b'));
    put('mine', 'b/mine.txt');
    const [a, b] = await Promise.all([run('--out', 'a'), run('--out', 'b')]);
    expect([a.status, b.status]).toEqual([0, 0]);
    expect(list('a')).toEqual(written);
    for (const name of written) {
      expect(readFileSync(join(dir, 'a', name))).toEqual(readFileSync(join(dir, 'b', name)));
    }
    expect(read('b', 'mine.txt')).toBe('mine');
  });

  test('removes a drilling program of an earlier plan, and says so', async () => {
    const { dir, run, put, list } = shop();
    mkdirSync(join(dir, 'out'));
    put('(for another top)', 'out/drilling.ngc');
    const file = put(benchContent());
    const { stdout } = await run(file, '--out', 'out');
    expect(stdout).toMatch(/^Removed, since this plan has none: drilling\.ngc$/m);
    expect(list('out')).toEqual(written.filter((name) => name !== 'drilling.ngc'));
  });

  test.each<[string, unknown, RegExp, status?: number]>([
    ['a missing field', changed('top.width', undefined), /^top\.width: expected a length/],
    ['a wrong unit', changed('top.width', '27 kg'), /^top\.width: .*got "27 kg"/],
    ['a hole pitch of 0', changed('holes.pitchX', 0), /^holes\.pitchX: .*got 0/],
    ['a hole over a rail', changed('holes.first.x', 100), /right leg frame/, 1],
    [
      'a file of 10 MB',
      `"${'x'.repeat(10_000_000)}"`,
      /^bench\.json: 10000002 bytes is too large.*at most 1000000/,
    ],
    ['a file that is not JSON', '{"version": 1,', /^bench\.json: is not JSON: /],
    ['an unknown species', changed('top.species', 'moon cheese'), /top\.species.*"moon cheese"/],
    ['nesting without end', `${'['.repeat(200_000)}${']'.repeat(200_000)}`, /^(the plan|bench\.json): /],
  ])(
    'ends with a message and its exit code over %s, and writes nothing',
    async (_, content, message, exitCode = 2) => {
      const { dir, run, put } = shop();
      const { status, stderr } = await run(put(content), '--out', 'out');
      expect(stderr).toMatch(message);
      expect(stderr).not.toMatch(/\n\s+at /);
      expect(status).toBe(exitCode);
      expect(existsSync(join(dir, 'out'))).toBe(false);
    },
  );

  test('names a file that is not there, and one that is a folder', async () => {
    const { run } = shop();
    const [nowhere, folder] = await Promise.all([run('nowhere.json'), run('.')]);
    expect(nowhere).toMatchObject({
      status: 2,
      stderr: "nowhere.json: can't be read, there is no such file\n",
    });
    expect(folder).toMatchObject({ status: 2, stderr: ".: can't be read, it is a folder\n" });
  });

  test('names a folder that cannot be written, and replaces nothing in it', async () => {
    const { dir, run, put, read, list } = shop();
    mkdirSync(join(dir, 'out', 'plan.json'), { recursive: true });
    put('earlier', 'out/holes.csv');
    const file = put(benchContent());
    const [blocked, onFile] = await Promise.all([
      run(file, '--out', 'out'),
      run(file, '--out', 'bench.json'),
    ]);
    expect(blocked.stderr).toMatch(/^--out: out\/plan\.json is not a file that could be replaced/);
    expect(blocked.status).toBe(2);
    expect(read('out', 'holes.csv')).toBe('earlier');
    expect(list('out')).toEqual(['holes.csv', 'plan.json']);
    expect(onFile.stderr).toMatch(/^--out bench\.json: can't be written, /);
    expect(onFile.stderr).not.toMatch(/\n\s+at /);
    expect(onFile.status).toBe(2);
  });

  test('takes a byte order mark in front of a file for no mistake of its maker', async () => {
    const { run, put } = shop();
    expect(await run(put(`\ufeff${JSON.stringify(benchContent())}`), '--quiet')).toEqual({
      status: 0,
      stdout: '',
      stderr: '',
    });
  });

  test('refuses what it does not know with exit code 2, and says how to call it', async () => {
    const { run } = shop();
    const [unknown, help] = await Promise.all([run('--colour'), run('-h')]);
    expect(unknown).toMatchObject({ status: 2, stderr: expect.stringContaining('--colour') });
    expect(help).toMatchObject({ status: 0, stdout: expect.stringContaining('--out DIR') });
  });

  test('--json prints every figure, with --what-if those of little changes too', async () => {
    const { run, read } = shop();
    const { status, stdout } = await run('--json', '--what-if', '--out', 'a');
    expect(status).toBe(0);
    const { whatIf, ...rest } = JSON.parse(stdout);
    expect(rest).toEqual(JSON.parse(read('a', 'plan.json')));
    expect(whatIf.tightest).toHaveLength(3);
    expect(whatIf.changes).toHaveLength(6);
  });

  test('--progress says on standard error, a line each, what is being done', async () => {
    const { stdout, stderr } = await shop().run('--progress', '--quiet');
    expect(stdout).toBe('');
    const lines = stderr.trimEnd().split('\n');
    expect(lines).toEqual(expect.arrayContaining(['planning', 'writing holes.csv: table of holes']));
    expect(lines.filter((line) => line.trim() === '')).toEqual([]);
  });

  test('--example lists the examples and prints one, with the schema where an editor finds it', async () => {
    const { run } = shop();
    const [all, one, none] = await Promise.all([
      run('--example'),
      run('--example', 'bindery-bench'),
      run('--example', 'cathedral'),
    ]);
    expect(all.stdout.trim().split('\n')).toContain('bindery-bench');
    const content = JSON.parse(one.stdout) as { $schema: string };
    expect(parsePlan(content)).toEqual(parsePlan(binderyBench));
    const [, name, file] = /^\.\/node_modules\/(@[^/]+\/[^/]+)\/(.+)$/.exec(content.$schema) ?? [];
    const manifest = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
    expect(name).toBe(manifest.name);
    expect(manifest.files).toContain(file);
    expect(none).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/^--example: expected one of .*bindery-bench.*, got cathedral/),
    });
  });

  test('--recheck bears out a finished plan, finds a broken one, and refuses what is none', async () => {
    const { run, put } = shop();
    const finished = planWorktop(bench());
    const broken = structuredClone(finished) as unknown as { holes: { xMm: number }[] };
    (broken.holes[3] as { xMm: number }).xMm += 0.01;
    const [fine, wrong, none, empty] = await Promise.all([
      run('--recheck', put(finished, 'fine.json')),
      run('--recheck', put(broken, 'broken.json')),
      run('--recheck', put('null', 'null.json')),
      run('--recheck', put('{"plan":{}}', 'empty.json')),
    ]);
    expect(fine).toMatchObject({ status: 0, stdout: expect.stringContaining('borne out') });
    expect(wrong).toMatchObject({
      status: 3,
      stderr: expect.stringMatching(/holes\[3\]\.xMm is claimed to be/),
    });
    for (const refused of [none, empty]) {
      expect(refused.status).toBe(2);
      expect(refused.stderr).toMatch(/^\w+\.json: is not a finished plan of this release\n$/);
    }
  });

  test('--what-if names what is tightest, and what little changes do', async () => {
    const { stdout } = await shop().run('--what-if');
    expect(stdout).toMatch(/^Tightest\n( {2}(pass|warn|fail) {2}.*: \d+ % to spare\n){3}\n/m);
    expect(stdout).toMatch(/^ {2}moisture on building day −1\.0 %: (pass|warn|fail)$/m);
    expect(stdout).not.toMatch(/[-−]0(\.0)? /);
  });
});

describe('its options', () => {
  test.each([
    [['a.json', 'b.json'], 'expected one plan file, got 2'],
    [['--paper', 'a0'], '--paper: expected one of a4, a3, letter, got a0'],
    [['--out', ''], '--out: expected a folder, got nothing'],
    [['--json', '--quiet'], '--json and --quiet: expected one of them, got both'],
    [['--what-if', '--quiet'], '--what-if and --quiet: expected one of them, got both'],
    [['--example', 'one', 'b.json'], '--example and a plan file: expected one of them, got both'],
    [['--recheck', 'a.json', 'b.json'], '--recheck and a plan file: expected one of them, got both'],
    [['--recheck', 'a.json', '--example'], '--recheck and --example: expected one of them, got both'],
  ])('%j are refused', (args, message) => {
    expect(() => cliOptions(args)).toThrow(message);
  });

  test.each([
    ['a4', 'a4'],
    ['A3', 'a3'],
    ['Letter', 'letter'],
  ])('paper may be named %s', (given, paper) => {
    expect(cliOptions(['--paper', given])).toMatchObject({ paper, out: 'shop-plan', file: undefined });
  });
});
