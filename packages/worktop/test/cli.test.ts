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
  expect(readdirSync(join(dir, 'shop-plan')).sort()).toEqual(['drawing.svg', 'holes.csv', 'plan.json']);
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
  expect(readdirSync(dir).sort()).toEqual(['drawing.svg', 'holes.csv', 'mine.txt', 'plan.json']);
});

test.each<[string, () => string, RegExp]>([
  ['a missing field', () => planFile(changed('top.width', undefined)), /^top\.width: expected a length/],
  ['a wrong unit', () => planFile(changed('top.width', '27 kg')), /^top\.width: .*got "27 kg"/],
  ['a hole pitch of 0', () => planFile(changed('holes.pitchX', 0)), /^holes\.pitchX: .*got 0/],
  ['a hole over a rail', () => planFile(changed('holes.first.x', 100)), /right leg frame/],
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
])('%s ends with exit code 1 and a message, and writes nothing', (_, file, message) => {
  const { status, stderr } = run(file(), '--out', 'out');
  expect(stderr).toMatch(message);
  expect(stderr).not.toMatch(/\n\s+at /);
  expect(status).toBe(1);
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
  expect(blocked.status).toBe(1);
  expect(readFileSync(join(dir, 'out', 'holes.csv'))).toEqual(before);
  expect(readFileSync(join(dir, 'out', 'drawing.svg'), 'utf8')).not.toContain('Another bench');
  expect(readdirSync(join(dir, 'out')).sort()).toEqual(['drawing.svg', 'holes.csv', 'plan.json']);

  const onFile = run(file, '--out', 'bench.json');
  expect(onFile.stderr).toMatch(/^--out bench\.json: can't be written, /);
  expect(onFile.stderr).not.toMatch(/\n\s+at /);
  expect(onFile.status).toBe(1);
});

test('a byte order mark in front of a file is no mistake of its maker', () => {
  expect(run(planFile(`\ufeff${JSON.stringify(benchContent())}`)).status).toBe(0);
});

test('an unknown option and a second file are refused', () => {
  expect(run('--colour').stderr).toContain('--colour');
  expect(run('--colour').status).toBe(1);
  expect(run('a.json', 'b.json').stderr).toContain('expected one plan file, got 2');
});

test('--help says how to call it', () => {
  const { status, stdout } = run('--help');
  expect(status).toBe(0);
  expect(stdout).toContain('--out DIR');
});
