import { spawnSync } from 'node:child_process';
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
import { afterEach, beforeEach, expect, test } from 'vitest';
import { benchContent, changed } from './bindery-bench.ts';

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
let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'scantling-'));
});
afterEach(() => rmSync(dir, { recursive: true }));

const run = (...args: string[]) =>
  spawnSync(process.execPath, ['--conditions=@scantling/source', cli, ...args], {
    cwd: dir,
    encoding: 'utf8',
  });

const planFile = (content: unknown) => {
  writeFileSync(join(dir, 'bench.json'), typeof content === 'string' ? content : JSON.stringify(content));
  return 'bench.json';
};

test('plans the bindery bench and writes drawing, table and result', () => {
  const { status, stdout, stderr } = run();
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toContain('Bindery bench');
  expect(readdirSync(join(dir, 'shop-plan')).sort()).toEqual(written);
});

test('gives the same bytes for the same input', () => {
  const file = planFile(benchContent());
  expect(run(file, '--out', 'a').status).toBe(0);
  expect(run(file, '--out', 'b').status).toBe(0);
  for (const name of readdirSync(join(dir, 'a'))) {
    expect(readFileSync(join(dir, 'a', name))).toEqual(readFileSync(join(dir, 'b', name)));
  }
});

test('leaves other files in the folder alone', () => {
  expect(run('--out', '.').status).toBe(0);
  writeFileSync(join(dir, 'mine.txt'), 'mine');
  expect(run('--out', '.').status).toBe(0);
  expect(readdirSync(dir).sort()).toEqual([...written, 'mine.txt'].sort());
});

test.each<[string, () => string, RegExp, status?: number]>([
  ['a missing field', () => planFile(changed('top.width', undefined)), /^top\.width: expected a length/],
  ['a wrong unit', () => planFile(changed('top.width', '27 kg')), /^top\.width: .*got "27 kg"/],
  ['a hole pitch of 0', () => planFile(changed('holes.pitchX', 0)), /^holes\.pitchX: .*got 0/],
  ['a hole over a rail', () => planFile(changed('holes.first.x', 100)), /right leg frame/, 1],
  [
    'a file of 10 MB',
    () => planFile(`"${'x'.repeat(10_000_000)}"`),
    /^bench\.json: 10000002 bytes is too large.*at most 1000000/,
  ],
  ['a file that is not JSON', () => planFile('{"version": 1,'), /^bench\.json: is not JSON: /],
  ['a file that is not there', () => 'nowhere.json', /^nowhere\.json: can't be read, there is no such file/],
  ['a folder instead of a file', () => '.', /^\.: can't be read, it is a folder/],
  [
    'an unknown species',
    () => planFile(changed('top.species', 'moon cheese')),
    /top\.species.*"moon cheese"/,
  ],
  [
    'nesting without end',
    () => planFile(`${'['.repeat(200_000)}${']'.repeat(200_000)}`),
    /^(the plan|bench\.json): /,
  ],
])('%s ends with a message and its exit code, and writes nothing', (_, file, message, exitCode = 2) => {
  const { status, stderr } = run(file(), '--out', 'out');
  expect(stderr).toMatch(message);
  expect(stderr).not.toMatch(/\n\s+at /);
  expect(status).toBe(exitCode);
  expect(existsSync(join(dir, 'out'))).toBe(false);
});

test('a folder that cannot be written is named, and nothing in it is replaced', () => {
  expect(run('--out', 'out').status).toBe(0);
  const before = readFileSync(join(dir, 'out', 'holes.csv'));
  rmSync(join(dir, 'out', 'plan.json'));
  mkdirSync(join(dir, 'out', 'plan.json'));
  const file = planFile(changed('name', 'Another bench'));
  const blocked = run(file, '--out', 'out');
  expect(blocked.stderr).toMatch(/^--out: out\/plan\.json is not a file that could be replaced/);
  expect(blocked.status).toBe(2);
  expect(readFileSync(join(dir, 'out', 'holes.csv'))).toEqual(before);
  expect(readFileSync(join(dir, 'out', 'drawing.svg'), 'utf8')).not.toContain('Another bench');
  expect(readdirSync(join(dir, 'out')).sort()).toEqual(written);

  const onFile = run(file, '--out', 'bench.json');
  expect(onFile.stderr).toMatch(/^--out bench\.json: can't be written, /);
  expect(onFile.stderr).not.toMatch(/\n\s+at /);
  expect(onFile.status).toBe(2);
});

test('a byte order mark in front of a file is no mistake of its maker', () => {
  expect(run(planFile(`\ufeff${JSON.stringify(benchContent())}`)).status).toBe(0);
});

test('an unknown option and a second file are refused', () => {
  expect(run('--colour').stderr).toContain('--colour');
  expect(run('--colour').status).toBe(2);
  expect(run('a.json', 'b.json').stderr).toContain('expected one plan file, got 2');
});

test('--help says how to call it', () => {
  const { status, stdout } = run('--help');
  expect(status).toBe(0);
  expect(stdout).toContain('--out DIR');
});

test('--json prints every figure, --quiet nothing; both write the files', () => {
  const { status, stdout } = run('--json', '--out', 'a');
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toEqual(JSON.parse(readFileSync(join(dir, 'a', 'plan.json'), 'utf8')));
  expect(run('--quiet', '--out', 'b').stdout).toBe('');
  expect(readdirSync(join(dir, 'b'))).toEqual(readdirSync(join(dir, 'a')));
  expect(run('--quiet', '--json').stderr).toBe('--json and --quiet: expected one of them, got both\n');
});

test('--progress says on standard error what is being done', () => {
  const { stdout, stderr } = run('--progress', '--quiet');
  expect(stdout).toBe('');
  expect(stderr.split('\n')).toEqual(
    expect.arrayContaining(['planning', 'writing holes.csv: table of holes']),
  );
});

test('--example lists the examples and prints one, which plans', () => {
  const names = run('--example').stdout.trim().split('\n');
  expect(names).toContain('bindery-bench');
  writeFileSync(join(dir, 'copy.json'), run('--example', 'bindery-bench').stdout);
  expect(run('copy.json').status).toBe(0);
  expect(run('--example', 'cathedral')).toMatchObject({
    status: 2,
    stderr: expect.stringMatching(/^--example: expected one of .*bindery-bench.*, got cathedral/),
  });
});

test('--recheck bears out a finished plan, finds a broken one, and refuses what is none', () => {
  expect(run('--out', 'out').status).toBe(0);
  const finished = join('out', 'plan.json');
  expect(run('--recheck', finished)).toMatchObject({
    status: 0,
    stdout: expect.stringContaining('borne out'),
  });
  const content = JSON.parse(readFileSync(join(dir, finished), 'utf8')) as { holes: { xMm: number }[] };
  (content.holes[3] as { xMm: number }).xMm += 0.01;
  const broken = run('--recheck', planFile(content));
  expect(broken.status).toBe(3);
  expect(broken.stderr).toMatch(/holes\[3\]\.xMm is claimed to be/);
  for (const none of ['[]', 'null', '{"holes":[]}', '{"plan":{}}']) {
    expect(run('--recheck', planFile(none))).toMatchObject({
      status: 2,
      stderr: 'bench.json: is not a finished plan of this release\n',
    });
  }
});

test('--what-if names what is tightest, and what little changes do', () => {
  const { stdout } = run('--what-if');
  expect(stdout).toMatch(/^Tightest\n {2}-?\d+ % to spare: /m);
  expect(stdout).toMatch(/^ {2}moisture on building day −1\.0 %: (pass|warn|fail)$/m);
});

test('--paper is one of three', () => {
  expect(run('--paper', 'a0').stderr).toBe('--paper: expected one of a4, a3, letter, got a0\n');
});
