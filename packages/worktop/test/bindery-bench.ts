import { readFileSync } from 'node:fs';
import type { Plan } from '../src/index.ts';
import { baseField } from '../src/plan/base.ts';
import type { Section } from '../src/plan/field.ts';
import { planField } from '../src/plan/plan.ts';
import { parsePlan } from '../src/schema.ts';

export const benchFile = new URL('../examples/bindery-bench.json', import.meta.url);

type Content = { [key: string]: unknown };

/** What every plan has of a section. */
const needed = (content: Content, { fields }: Section): Content =>
  Object.fromEntries(Object.entries(content).filter(([key]) => !fields[key]?.optional));

/**
 * The file's content without what may be left out, anew each time, so that a test may add sections of its own and spoil
 * its copy.
 */
export function benchContent(): Content {
  const { $schema, ...content } = JSON.parse(readFileSync(benchFile, 'utf8')) as Content;
  const plain = needed(content, planField);
  return { ...plain, base: needed(plain.base as Content, baseField) };
}

/** The content with one place changed: `changed('base.members.0.width', '27 kg')`. */
export function changed(path: string, value: unknown): Content {
  const content = benchContent();
  const keys = path.split('.');
  const last = keys.pop() as string;
  const parent = keys.reduce((at, key) => at[key] as Content, content);
  if (value === undefined) delete parent[last];
  else parent[last] = value;
  return content;
}

export const bench = (): Plan => parsePlan(benchContent());

/** The plan with one place of its file changed. */
export const planned = (path: string, value: unknown): Plan => parsePlan(changed(path, value));
