import { describe, expect, test } from 'vitest';
import { codeFences, saysResults } from '../src/documentation/code-fences.ts';
import { runCode } from '../src/documentation/run-code.ts';
import { readText, repositoryFiles } from '../src/guards/workspace.ts';

const sources = repositoryFiles().filter((file) => /^packages\/[^/]+\/src\/.*\.ts$/.test(file));
const pages = repositoryFiles().filter((file) =>
  /^(?:[^/]+|packages\/[^/]+\/[^/]+|apps\/docs\/src\/.*)\.mdx?$/.test(file),
);
const inDocstrings = sources.flatMap((file) => codeFences(file, readText(file)));
const inPages = pages.flatMap((file) => codeFences(file, readText(file))).filter(saysResults);

test('sources, pages and examples were found', () => {
  expect(sources.length).toBeGreaterThan(0);
  expect(pages).toContain('README.md');
  expect(inDocstrings.length).toBeGreaterThan(0);
});

describe.each([
  ['docstrings', inDocstrings],
  ['pages', inPages],
])('examples in %s do what they say', (_, fences) => {
  for (const { file, line, code } of fences) {
    test(`${file}:${line}`, async () => {
      expect(await runCode(code)).toBeGreaterThan(0);
    });
  }
});
