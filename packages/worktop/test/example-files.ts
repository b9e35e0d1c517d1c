import { readdirSync, readFileSync } from 'node:fs';

const folder = new URL('../examples/', import.meta.url);

/** The content of every file in the folder of examples, by its name. */
export const exampleContents = (): ReadonlyMap<string, unknown> =>
  new Map(readdirSync(folder).map((file) => [file, JSON.parse(readFileSync(new URL(file, folder), 'utf8'))]));
