import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, globSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const pages = fileURLToPath(new URL('../src/content/docs/api', import.meta.url));
const writer = fileURLToPath(new URL('api-pages.ts', import.meta.url));
const stamp = join(pages, '.made-from');

/** What the pages are made from. */
function checksum(): string {
  const hash = createHash('sha256').update(readFileSync(writer));
  const files = globSync('packages/*/{package.json,src/**/*.ts}', { cwd: root }).sort();
  for (const file of files) hash.update(file).update(readFileSync(join(root, file)));
  return hash.digest('hex');
}

/** The API reference, written anew where the packages have changed. */
export function apiReference(): AstroIntegration {
  return {
    name: 'api-reference',
    hooks: {
      'astro:config:setup': ({ command, logger }) => {
        if (command !== 'build' && command !== 'dev') return;
        const wanted = checksum();
        if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
        rmSync(pages, { recursive: true, force: true });
        const start = performance.now();
        // A program of its own, as it takes much memory and most builds do not need it.
        execFileSync(process.execPath, [writer, pages], { stdio: 'inherit' });
        writeFileSync(stamp, wanted);
        logger.info(`written in ${((performance.now() - start) / 1000).toFixed(1)} s`);
      },
    },
  };
}
