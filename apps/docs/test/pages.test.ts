import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page, Response } from 'playwright';
import { describe, expect, test } from 'vitest';
import { workedExamples } from '../src/examples/worked-examples.ts';
import { ruleHref, rules, sourceHref } from '../src/registry.ts';
import { citedSources } from '../src/sources/cited.ts';
import { expectQuiet, openSite } from './site.ts';

const WIDTH_CHANGE = '/rules/movement/width-change/';

const site = openSite();

test('every link leads somewhere, and some link leads to the page of every rule and source', async () => {
  // The policy of this page is not that of those it reads.
  const page = await site.open('/', { bypassCSP: true });
  // Runs in the browser, which reads HTML as readers' browsers do.
  const { visited, broken } = await page.evaluate(async () => {
    const visited: Record<string, Set<string>> = {};
    const links: { from: string; to: URL }[] = [{ from: 'the start', to: new URL('/', location.origin) }];
    const broken: string[] = [];
    // Most links stand on many pages: each place is looked at once.
    const known = new Set<string>();
    for (const { from, to } of links) {
      if (to.origin !== location.origin) continue;
      if (!visited[to.pathname]) {
        const response = await fetch(to.pathname);
        const parsed = new DOMParser().parseFromString(await response.text(), 'text/html');
        visited[to.pathname] = new Set([...parsed.querySelectorAll('[id]')].map(({ id }) => id));
        if (!response.ok) broken.push(`${from} links to ${to.pathname}`);
        for (const link of parsed.querySelectorAll('a[href]')) {
          const href = link.getAttribute('href') ?? '';
          const target = new URL(href, new URL(to.pathname, location.origin));
          const place = `${target.origin}${target.pathname}${target.hash}`;
          if (!known.has(place)) links.push({ from: to.pathname, to: target });
          known.add(place);
        }
      }
      const id = decodeURIComponent(to.hash.slice(1));
      // A check of the planner names a place in the plan file; its script goes to the field nearest to it.
      if (to.pathname === '/plan/') continue;
      if (id && !visited[to.pathname]?.has(id)) broken.push(`${from} links to ${to.pathname}#${id}`);
    }
    return { visited: Object.keys(visited), broken };
  });
  expect(broken).toEqual([]);
  const inFolder = (folder: string) =>
    visited.filter((path) => path.startsWith(folder) && path !== folder).sort();
  expect(inFolder('/rules/').length).toBeGreaterThan(0);
  expect(inFolder('/rules/')).toEqual(rules.map(ruleHref).sort());
  expect(inFolder('/sources/')).toEqual(citedSources.map(({ source }) => sourceHref(source)).sort());
  await page.context().close();
});

test('every expected figure on the page of worked examples is reproduced', async () => {
  const page = await site.open('/examples/', { javaScriptEnabled: false });
  const rows = page.locator('[data-agrees]');
  const figures = rules.flatMap(({ examples }) =>
    examples.flatMap(({ expect: stated }) => Object.values(stated).flat()),
  );
  expect(figures.length).toBeGreaterThan(0);
  expect(await rows.count()).toBe(figures.length);
  expect(await page.locator('[data-agrees=false]').allTextContents()).toEqual([]);
  await page.context().close();
});

describe('worked examples', () => {
  const shown = (page: Page) => page.locator('[data-example]:visible');

  test('are filtered from the keyboard, counted, and kept in the link', async () => {
    const page = await site.open('/examples/');
    await page.locator('example-filter[data-ready]').waitFor();
    expect(await shown(page).count()).toBe(workedExamples.length);

    await page.getByLabel('Published in').focus();
    await page.keyboard.type('Wood Handbook');
    const source = await page.getByLabel('Published in').inputValue();
    const ofSource = workedExamples.filter(({ from }) => 'source' in from && from.source.id === source);
    expect(ofSource.length).toBeGreaterThan(0);
    expect(await shown(page).count()).toBe(ofSource.length);
    expect(await page.getByRole('status').textContent()).toBe(
      `${ofSource.length} of ${workedExamples.length} worked examples are shown.`,
    );
    expect(new URL(page.url()).search).toBe(`?source=${source}`);

    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.type('worked by hand');
    expect(await shown(page).count()).toBe(0);
    expect(await page.getByRole('heading', { level: 3 }).filter({ visible: true }).count()).toBe(0);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.getByRole('status').filter({ hasText: 'All' }).waitFor();
    expect(await shown(page).count()).toBe(workedExamples.length);
    expect(new URL(page.url()).search).toBe('');
    await page.context().close();
  });

  test('a link asks for those of a source, and one that makes no sense is told so', async () => {
    const page = await site.open('/examples/?source=nds-2018&package=fastening');
    await page.locator('example-filter[data-ready]').waitFor();
    const ofSource = workedExamples.filter(({ from }) => 'source' in from && from.source.id === 'nds-2018');
    expect(ofSource.length).toBeGreaterThan(0);
    expect(await shown(page).count()).toBe(ofSource.length);
    await page.goto('/examples/?source=%3Cimg%20src=x%20onerror=alert(1)%3E&known=__proto__');
    await page.locator('example-filter[data-ready]').waitFor();
    expect(await page.getByRole('status').textContent()).toMatch(
      /^The link asks for a source and a known that/,
    );
    expect(await shown(page).count()).toBe(workedExamples.length);
    await page.context().close();
  });
});

test('the page of a source lists what the cards say', async () => {
  const cited = citedSources.find(({ source }) => source.id === 'wood-handbook-2010');
  if (!cited) throw new Error('Nothing cites the Wood Handbook.');
  const page = await site.open(sourceHref(cited.source));
  for (const { rule, statement } of cited.rules) {
    const entry = await page.locator(`[data-rule="${rule.id}"]`).textContent();
    for (const { at } of statement) expect(entry?.replace(/\s+/g, ' ')).toContain(at);
  }
  expect(await page.locator('[data-example]').count()).toBe(cited.examples.length);
  for (const { id } of cited.tables) expect(await page.locator(`#${id}`).count()).toBe(1);
  await page.context().close();
});

test('the page of a rule says of each citation what was seen of it', async () => {
  const page = await site.open(WIDTH_CHANGE);
  expect(await page.locator('#sources ~ ul').first().locator('li').allTextContents()).toEqual([
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

/** Leaves the first few of what a page repeats by the hundred, all alike, so that axe is done in seconds. */
async function leaveAFew(page: Page): Promise<void> {
  await page.evaluate(() => {
    const repeated = [
      'tbody > tr:nth-child(n+5)',
      'table > tbody:nth-of-type(n+5)',
      'main li:nth-child(n+7)',
    ];
    for (const one of document.querySelectorAll(repeated.join())) one.remove();
  });
}

describe('axe finds nothing to object to', () => {
  const pages = [
    '/',
    WIDTH_CHANGE,
    '/rules/',
    '/examples/?source=wood-handbook-2010',
    '/accuracy/',
    '/sources/',
    '/sources/wood-handbook-2010/',
    '/sources/nist-sp-811/',
    '/reading/',
    '/in-code/',
    '/404.html',
    '/offline/',
    '/api/',
    '/api/rules/zod/',
  ];
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [390, 1280]) {
      test(`${colorScheme}, ${width} px wide`, async () => {
        const context = await site.visit({ colorScheme, viewport: { width, height: 800 } });
        const page = await context.newPage();
        for (const path of pages) {
          await page.goto(path);
          const scrollWidth = await page.evaluate(() => document.documentElement.scrollWidth);
          expect(scrollWidth, path).toBeLessThanOrEqual(width);
          await leaveAFew(page);
          const { violations, passes } = await new AxeBuilder({ page }).analyze();
          expect(violations.map(({ id, nodes }) => [path, id, nodes[0]?.html])).toEqual([]);
          expect(passes.length).toBeGreaterThan(10);
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
