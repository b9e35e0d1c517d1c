import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { type PreviewServer, preview } from 'astro';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright';
import { afterAll, beforeAll, expect } from 'vitest';
import { chromiumFlags, findChromium } from '../../../scripts/chromium.ts';

const root = new URL('..', import.meta.url);

function requireBuiltSite(): void {
  if (!existsSync(new URL('dist/index.html', root))) {
    throw new Error('The site is not built: run `npm run build` first.');
  }
}

/** The built site as it is served, in a browser that keeps a record of what goes wrong. */
export interface OpenSite {
  readonly address: string;
  /** Every address that a page asked for. */
  readonly requested: string[];
  /** Errors of pages, and what they wrote to the console as such. */
  readonly errors: string[];
  /** For contexts that the record leaves out. */
  browser(): Browser;
  /** A visit, which keeps nothing for later unless it is to: that takes seconds. */
  visit(options?: BrowserContextOptions): Promise<BrowserContext>;
  open(path: string, options?: BrowserContextOptions): Promise<Page>;
  /** Goes there and waits until the calculator takes part. */
  goToCalculator(page: Page, path: string): Promise<void>;
  openCalculator(path: string): Promise<Page>;
}

/** Opens the site before the first test of a file, and closes it after the last. */
export function openSite(): OpenSite {
  let address = '';
  let server: PreviewServer | undefined;
  let launched: Browser | undefined;

  beforeAll(async () => {
    requireBuiltSite();
    server = await preview({
      root: fileURLToPath(root),
      logLevel: 'error',
      server: { host: '127.0.0.1', port: 0 },
    });
    address = `http://127.0.0.1:${server.port}`;
    launched = await chromium.launch({ executablePath: findChromium(), args: [...chromiumFlags] });
  }, 60_000);

  afterAll(async () => {
    await launched?.close();
    await server?.stop();
  });

  const requested: string[] = [];
  const errors: string[] = [];

  function browser(): Browser {
    if (!launched) throw new Error('The site opens with the first test of a file.');
    return launched;
  }

  async function visit(options?: BrowserContextOptions): Promise<BrowserContext> {
    const context = await browser().newContext({ baseURL: address, serviceWorkers: 'block', ...options });
    context.on('request', (request) => requested.push(request.url()));
    context.on('weberror', (error) => errors.push(`${error.error()}`));
    context.on('console', (message) => {
      if (message.type() === 'error') errors.push(`${message.location().url}: ${message.text()}`);
    });
    return context;
  }

  async function open(path: string, options?: BrowserContextOptions): Promise<Page> {
    const page = await (await visit(options)).newPage();
    await page.goto(path);
    return page;
  }

  async function goToCalculator(page: Page, path: string): Promise<void> {
    await page.goto(path);
    await page.locator('live-calculator[data-ready]').waitFor();
  }

  async function openCalculator(path: string): Promise<Page> {
    const page = await (await visit()).newPage();
    await goToCalculator(page, path);
    return page;
  }

  return {
    get address() {
      return address;
    },
    requested,
    errors,
    browser,
    visit,
    open,
    goToCalculator,
    openCalculator,
  };
}

/** Nothing came from, or went to, anywhere but the site itself, and no page reported an error. */
export function expectQuiet({ address, requested, errors }: OpenSite): void {
  expect(requested.length).toBeGreaterThan(100);
  expect(requested.filter((url) => new URL(url).origin !== address && !url.startsWith('data:'))).toEqual([]);
  expect(errors).toEqual([]);
}

const gzipped = (text: string | Buffer) => gzipSync(text, { level: 9 }).length;

/** Every script that a page has run by now, its size gzipped, by its address or, where it stands inline, its text. */
export async function scriptsOf(page: Page): Promise<Map<string, number>> {
  const { files, inline } = await page.evaluate(() => ({
    files: [
      ...performance.getEntriesByType('resource').map(({ name }) => name),
      ...[...document.scripts].map(({ src }) => src),
    ].filter((url) => new URL(url, location.href).pathname.endsWith('.js')),
    inline: [...document.scripts].flatMap(({ src, type, text }) =>
      src || type.includes('json') ? [] : [text],
    ),
  }));
  const paths = files.map((url) => new URL(url).pathname);
  return new Map([
    ...paths.map((path) => [path, gzipped(readFileSync(new URL(`dist${path}`, root)))] as const),
    ...inline.map((text) => [text, gzipped(text)] as const),
  ]);
}

const sum = (sizes: Iterable<number>) => [...sizes].reduce((total, size) => total + size, 0);

/** How many bytes of script a page ships beyond those of a page of text, gzipped. */
export async function addedScript(site: OpenSite, page: Page): Promise<number> {
  const plain = await site.open('/reading/');
  await plain.waitForLoadState('networkidle');
  const ofEvery = await scriptsOf(plain);
  await plain.context().close();
  return sum([...(await scriptsOf(page))].flatMap(([script, size]) => (ofEvery.has(script) ? [] : [size])));
}
