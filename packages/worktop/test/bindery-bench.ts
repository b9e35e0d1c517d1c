import { readFileSync } from 'node:fs';
import type { Plan } from '../src/index.ts';
import { parsePlan } from '../src/schema.ts';

export const benchFile = new URL('../examples/bindery-bench.json', import.meta.url);

type Content = { [key: string]: unknown };

/** The file's content, anew each time, so that a test may spoil its own copy. */
export const benchContent = (): Content => JSON.parse(readFileSync(benchFile, 'utf8')) as Content;

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
