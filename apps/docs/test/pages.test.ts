import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import type { Response } from 'playwright';
import { describe, expect, test } from 'vitest';
import { ruleHref, rules } from '../src/registry.ts';
import { expectQuiet, openSite } from './site.ts';

const WIDTH_CHANGE = '/rules/movement/width-change/';

const site = openSite();

test('every link leads somewhere, and some link leads to the page of every rule', async () => {
  const page = await site.open('/');
  // Runs in the browser, which reads HTML as readers' browsers do.
  const { visited, broken } = await page.evaluate(async () => {
    const visited: Record<string, Set<string>> = {};
    const links: { from: string; to: URL }[] = [{ from: 'the start', to: new URL('/', location.origin) }];
    const broken: string[] = [];
    for (const { from, to } of links) {
      if (to.origin !== location.origin) continue;
      if (!visited[to.pathname]) {
        const response = await fetch(to.pathname);
        const parsed = new DOMParser().parseFromString(await response.text(), 'text/html');
        visited[to.pathname] = new Set([...parsed.querySelectorAll('[id]')].map(({ id }) => id));
        if (!response.ok) broken.push(`${from} links to ${to.pathname}`);
        for (const link of parsed.querySelectorAll('a[href]')) {
          const href = link.getAttribute('href') ?? '';
          links.push({ from: to.pathname, to: new URL(href, new URL(to.pathname, location.origin)) });
        }
      }
      const id = decodeURIComponent(to.hash.slice(1));
      if (id && !visited[to.pathname]?.has(id)) broken.push(`${from} links to ${to.pathname}#${id}`);
    }
    return { visited: Object.keys(visited), broken };
  });
  expect(broken).toEqual([]);
  const rulePages = visited.filter((path) => path.split('/').length === 5);
  expect(rulePages.length).toBeGreaterThan(0);
  expect(rulePages.sort()).toEqual(rules.map(ruleHref).sort());
  await page.context().close();
});

test('every expected figure on the page of worked examples is reproduced', async () => {
  const page = await site.open('/accuracy/');
  const rows = page.locator('[data-agrees]');
  const figures = rules.flatMap(({ examples }) =>
    examples.flatMap(({ expect: stated }) => Object.values(stated).flat()),
  );
  expect(figures.length).toBeGreaterThan(0);
  expect(await rows.count()).toBe(figures.length);
  expect(await page.locator('[data-agrees=false]').allTextContents()).toEqual([]);
  await page.context().close();
});

test('the page of a rule says of each citation what was seen of it', async () => {
  const page = await site.open(WIDTH_CHANGE);
  expect(await page.locator('#sources ~ ul').last().locator('li').allTextContents()).toEqual([
    expect.stringMatching(/Table 13-5.*: seen in a reprint\./),
    expect.stringMatching(/Eq\. 13-2: seen in the text\./),
    expect.stringMatching(/its page: 13-17: from memory\./),
  ]);
  const peer = page.locator('li', { hasText: 'the change by total shrinkage' });
  expect(await peer.textContent()).toMatch(/within 2\.5 % of the figure: .*Eq\. 13-3.*\(from memory\)/);
  await page.goto('/rules/movement/equilibrium-moisture/');
  const other = page.locator('li', { hasText: 'constants for °F' }).first();
  expect(await other.textContent()).toMatch(/within 0\.02 percentage points: .*\(from memory\)/);
  await page.context().close();
});

test('a calculator adds little script to its page', async () => {
  const scripts = async (path: string) => {
    const page = await (await site.visit()).newPage();
    const responses: Response[] = [];
    page.on('response', (response) => responses.push(response));
    await page.goto(path, { waitUntil: 'networkidle' });
    const loaded = responses.filter((response) => response.request().resourceType() === 'script');
    const sizes = loaded.map(async (one) => [one.url(), gzipSync(await one.body()).length] as const);
    const byUrl = new Map(await Promise.all(sizes));
    await page.context().close();
    return byUrl;
  };
  const plain = await scripts('/reading/');
  const withCalculator = await scripts(WIDTH_CHANGE);
  const added = [...withCalculator]
    .filter(([url]) => !plain.has(url))
    .reduce((sum, [, size]) => sum + size, 0);
  expect(added).toBeGreaterThan(1000);
  expect(added).toBeLessThan(15_000);
});

describe('axe finds nothing to object to', () => {
  const pages = [
    '/',
    WIDTH_CHANGE,
    '/rules/',
    '/accuracy/',
    '/sources/',
    '/reading/',
    '/in-code/',
    '/404.html',
    '/offline/',
  ];
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [390, 1280]) {
      test(`${colorScheme}, ${width} px wide`, async () => {
        const context = await site.visit({ colorScheme, viewport: { width, height: 800 } });
        const page = await context.newPage();
        for (const path of pages) {
          await page.goto(path);
          const { violations, passes } = await new AxeBuilder({ page }).analyze();
          expect(violations.map(({ id, nodes }) => [path, id, nodes[0]?.html])).toEqual([]);
          expect(passes.length).toBeGreaterThan(10);
          expect(
            await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
            path,
          ).toBeLessThan(1);
        }
        await site.goToCalculator(page, `${WIDTH_CHANGE}?fromMoisturePct=99`);
        expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
        await context.close();
      }, 120_000);
    }
  }
});

test('no page asks another host or reports an error', () => {
  expectQuiet(site);
});
