import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Field } from '../src/calculator/calculation.ts';
import { jobHref, jobs } from '../src/job-registry.ts';

const site = join(import.meta.dirname, '../dist');
// Cards of rules have texts of their own.
const scripts = globSync('_astro/*.js', { cwd: site })
  .map((file) => readFileSync(join(site, file), 'utf8'))
  .filter((script) => !script.includes('formula:'));

describe.each(jobs.map((named) => [named.name, named] as const))('%s', (_name, named) => {
  const { job } = named;
  const html = readFileSync(join(site, jobHref(named), 'index.html'), 'utf8');
  const words = (text: string) => text.split(/[^\w ,;:]/)[0] as string;

  test('its summary and help stand in its page, and in no script', () => {
    const helps = Object.values<Field>(job.fields).flatMap(({ help }) => (help ? [words(help)] : []));
    for (const text of [words(job.summary), ...helps].filter((one) => one.length > 20)) {
      expect(html).toContain(text);
      expect(
        scripts.filter((script) => script.includes(text)),
        text,
      ).toEqual([]);
    }
  });

  test('its labels stand in a script: what is wrong is said with them', () => {
    for (const { label } of Object.values<Field>(job.fields)) {
      expect(scripts.some((script) => script.includes(words(label)))).toBe(true);
    }
  });
});
