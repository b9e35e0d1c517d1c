import { spawnSync } from 'node:child_process';
import { cpSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { repositoryFiles, root } from '../src/guards/workspace.ts';
import { ruleChecks } from '../src/index.ts';
import { temporaryFolder } from './temporary-folder.ts';

// All of it happens in a copy, so whatever fails leaves nothing behind.
const { path: copy } = temporaryFolder('new-rule');
const ruleFile = join(copy, 'packages/movement/src/rules/share-of-length.ts');
const indexFile = join(copy, 'packages/movement/src/index.ts');

function run(program: string, args: readonly string[]) {
  const env = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(VITEST|npm_)/.test(name)),
  );
  const { status, stdout, stderr } = spawnSync(program, args, { cwd: copy, env, encoding: 'utf8' });
  return { status, stdout, stderr };
}

const newRule = (...args: string[]) => run('npm', ['run', '--silent', 'new-rule', '--', ...args]);

interface Report {
  readonly testResults: readonly {
    readonly assertionResults: readonly { ancestorTitles: string[]; title: string; status: string }[];
  }[];
}

/** How many checks the new rule has, which of them fail, and which other tests of the package fail. */
function rulesSuite() {
  const vitest = join(root, 'node_modules/vitest/vitest.mjs');
  const reportFile = join(copy, 'report.json');
  const report = ['--reporter=json', `--outputFile=${reportFile}`];
  run(process.execPath, [vitest, 'run', 'packages/movement/test/rules.test.ts', ...report]);
  const { testResults } = JSON.parse(readFileSync(reportFile, 'utf8')) as Report;
  rmSync(reportFile);
  const results = testResults.flatMap(({ assertionResults }) => assertionResults);
  const own = results.filter(({ ancestorTitles }) => ancestorTitles.includes('movement/share-of-length'));
  const failed = (some: typeof results) =>
    some.filter(({ status }) => status !== 'passed').map(({ title }) => title);
  return {
    checks: own.length,
    failed: failed(own),
    others: results.length - own.length,
    elsewhere: failed(results.filter((one) => !own.includes(one))),
  };
}

beforeAll(() => {
  const wanted =
    /^(package\.json|vitest\.config\.ts|tsconfig[^/]*\.json|biome\.json|scripts\/new-rule\.ts|packages\/movement\/(?!accuracy|bench).*)$/;
  // What compares the package with tables and times it reaches beyond what is copied.
  for (const file of repositoryFiles().filter((one) => wanted.test(one))) {
    cpSync(join(root, file), join(copy, file));
  }
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'), 'dir');
});

describe('npm run new-rule', { timeout: 60_000 }, () => {
  test.each([
    [[], 'Say which: npm run new-rule -- movement/my-rule'],
    [['share-of-length'], 'Say which'],
    [['movement/deep/er'], 'Say which'],
    [['cabinets/share-of-length'], 'There is no package of rules "cabinets": choose one of '],
    [['movement/ShareOfLength'], "A rule's name is in small letters"],
    [['movement/../../escape'], 'Say which'],
    [['movement/-'], "A rule's name is in small letters"],
    [['movement/width-change'], 'packages/movement/src/rules/width-change.ts is already there.'],
  ])('refuses %s, and writes nothing', (args, message) => {
    const before = readFileSync(indexFile, 'utf8');
    const { status, stdout, stderr } = newRule(...args);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr.trim().split('\n')).toEqual([expect.stringContaining(message)]);
    expect(readFileSync(indexFile, 'utf8')).toBe(before);
  });

  describe('for a rule that is not there yet', () => {
    let written: ReturnType<typeof run>;
    beforeAll(() => {
      written = newRule('movement/share-of-length');
    });

    test('says which file it wrote', () => {
      expect(written).toMatchObject({ status: 0, stderr: '' });
      expect(written.stdout).toContain('packages/movement/src/rules/share-of-length.ts');
    });

    test('refuses to write it twice', () => {
      expect(newRule('movement/share-of-length').status).toBe(1);
    });

    test('writes files that the formatter and the compiler take as they are', () => {
      const biome = [join(root, 'node_modules/@biomejs/biome/bin/biome'), 'ci', '--vcs-enabled=false'];
      const format = run(process.execPath, [...biome, ruleFile, indexFile]);
      expect(format, format.stderr).toMatchObject({ status: 0 });
      const tsc = join(root, 'node_modules/typescript/bin/tsc');
      const types = run(process.execPath, [
        tsc,
        '--noEmit',
        '--listFiles',
        '-p',
        join(copy, 'tsconfig.json'),
      ]);
      expect(types.stdout).toContain(basename(ruleFile));
      expect(types.stdout.split('\n').filter((line) => line.includes('error TS'))).toEqual([]);
    });

    test('leaves gaps that alone are red, and green when they are filled', () => {
      const scaffold = rulesSuite();
      expect(scaffold).toEqual({
        checks: Object.keys(ruleChecks).length,
        failed: [
          'its card is whole',
          'reproduces its published examples',
          'asks its examples for a close agreement',
          'shows arithmetic that comes out',
        ],
        others: expect.any(Number),
        elsewhere: [],
      });
      expect(scaffold.others).toBeGreaterThan(0);

      const filled = readFileSync(ruleFile, 'utf8')
        .replace("title: ''", "title: 'Share of a length'")
        .replace("summary: ''", "summary: 'How long a given share of a length is.'")
        .replace("basis: 'derived'", "basis: 'convention'")
        .replace("partMm: ''", "partMm: '150.0'")
        .replace("workedByHand: ''", "workedByHand: '600 × 0.25 = 150.0 mm'");
      writeFileSync(ruleFile, filled);
      expect(rulesSuite()).toEqual({ ...scaffold, failed: [] });
    });
  });
});
