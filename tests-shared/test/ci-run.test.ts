import { execFileSync } from 'node:child_process';
import { chmodSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readText, root } from '../src/guards/workspace.ts';
import { temporaryFolder } from './temporary-folder.ts';

const { folder } = temporaryFolder('ci');

/** What `.ci/run` calls on a machine that has these programs; each only says that it was called. */
function calls(machine: string, programs: readonly string[], { uid = 0, env = {} } = {}): string[] {
  const said = Object.fromEntries(programs.map((name) => [name, `#!/bin/sh\necho "$(basename "$0") $*"\n`]));
  const bin = folder(machine, { ...said, id: `#!/bin/sh\necho ${uid}\n` });
  for (const name of [...programs, 'id']) chmodSync(join(bin, name), 0o755);
  for (const name of ['bash', 'dirname', 'basename', 'sh']) {
    symlinkSync(
      execFileSync('sh', ['-c', `command -v ${name}`], { encoding: 'utf8' }).trim(),
      join(bin, name),
    );
  }
  const output = execFileSync(join(root, '.ci/run'), { env: { ...env, PATH: bin }, encoding: 'utf8' });
  return output.trim().split('\n');
}

const checks = ['npm ci', 'npm test'];

test('calls the README’s test command', () => {
  expect(readText('README.md')).toMatch(/^npm ci && npm test\b/m);
  expect(calls('ready', ['npm', 'apt-get', 'chromium'])).toEqual(checks);
});

test('has a Chromium installed where root finds none', () => {
  const said = calls('bare', ['npm', 'apt-get']);
  expect(said.slice(-2)).toEqual(checks);
  expect(said.slice(0, -2)).toEqual([
    expect.stringMatching(/^apt-get .* update$/),
    expect.stringMatching(/^apt-get .* install --yes .* chromium$/),
  ]);
});

test('installs nothing where it may not, cannot, or need not', () => {
  expect(calls('user', ['npm', 'apt-get'], { uid: 1000 })).toEqual(checks);
  expect(calls('other', ['npm'])).toEqual(checks);
  expect(calls('named', ['npm', 'apt-get'], { env: { CHROMIUM_PATH: '/opt/chromium' } })).toEqual(checks);
});
