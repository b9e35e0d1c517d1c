import { createHash } from 'node:crypto';
import { globSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build } from 'esbuild';

const source = (name: string) => fileURLToPath(new URL(`../src/offline/${name}`, import.meta.url));

const WORKER = 'offline.js';

/** Not kept unasked: what a browser never asks for, and what is large and read at a desk. */
const notKept = [
  WORKER,
  '404.html',
  'api/**',
  'sources/*/**',
  'pagefind/{pagefind-component-ui,pagefind-highlight,pagefind-modular-ui,pagefind-ui}.*',
  'pagefind/wasm.unknown.pagefind',
];

const sha256 = (content: Buffer | string) => createHash('sha256').update(content).digest('base64');

/** The files of a built site that work without a network, and the bytes they take. */
function filesOf(site: string) {
  const files = globSync('**/*.*', { cwd: site, exclude: notKept }).sort();
  if (!files.includes('index.html')) throw new Error(`There is no site in ${site}.`);
  return {
    bytes: files.reduce((sum, file) => sum + statSync(`${site}${file}`).size, 0),
    list: files.map((file): [url: string, sha256?: string] => {
      const url = `/${file.replace(/(^|\/)index\.html$/, '$1')}`;
      return url.startsWith('/_astro/') ? [url] : [url, sha256(readFileSync(`${site}${file}`))];
    }),
  };
}

/** Writes the worker that keeps a built site, whose directory ends in a slash. */
export async function writeWorker(site: string) {
  const { list, bytes } = filesOf(site);
  const files = JSON.stringify(list);
  await build({
    entryPoints: [source('worker.ts')],
    outfile: `${site}${WORKER}`,
    bundle: true,
    minify: true,
    target: 'es2022',
    define: { FILES: files, VERSION: JSON.stringify(sha256(files)), 'process.env.NODE_ENV': '"production"' },
  });
  return { count: list.length, bytes };
}

/** The site works without a network once a page of it was read. Comes after everything that changes files. */
export function offline(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:config:setup': ({ command, injectScript }) => {
        if (command === 'build') injectScript('page', `import ${JSON.stringify(source('register.ts'))};`);
      },
      'astro:build:done': async ({ dir, logger }) => {
        const { count, bytes } = await writeWorker(fileURLToPath(dir));
        logger.info(`${count} files, ${(bytes / 1e6).toFixed(1)} MB, are kept for reading without a network`);
      },
    },
  };
}
