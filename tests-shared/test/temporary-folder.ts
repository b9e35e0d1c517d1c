import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll } from 'vitest';

/** A folder that is gone after the tests of a file, and a way to write files below it. */
export function temporaryFolder(name: string) {
  const path = mkdtempSync(join(tmpdir(), `scantling-${name}-`));
  afterAll(() => rmSync(path, { recursive: true, force: true }));

  /** Writes files into a folder of that name and gives its path; what is not text is written as JSON. */
  function folder(name: string, files: Readonly<Record<string, string | object>>): string {
    const dir = join(path, name);
    for (const [file, content] of Object.entries(files)) {
      mkdirSync(dirname(join(dir, file)), { recursive: true });
      writeFileSync(join(dir, file), typeof content === 'string' ? content : JSON.stringify(content));
    }
    return dir;
  }

  return { path, folder };
}
