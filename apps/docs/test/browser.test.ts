import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import { widthChange } from '@scantling/movement';
import type { Page, Response } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answer } from '../src/calculator/answer.ts';
import { fieldTexts } from '../src/calculator/field.ts';
import { ruleHref, rules } from '../src/registry.ts';
import { type OpenSite, openSite } from './site.ts';

let site: OpenSite;

beforeAll(async () => {
  site = await openSite();
}, 60_000);

afterAll(async () => {
  await site?.close();
});

async function open(path: string, options?: Parameters<OpenSite['visit']>[0]): Promise<Page> {
  const page = await (await site.visit(options)).newPage();
  await page.goto(path);
  return page;
}

async function goToCalculator(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.locator('rule-calculator[data-ready]').waitFor();
}

async function openCalculator(path: string): Promise<Page> {
  const page = await open(path);
  await page.locator('rule-calculator[data-ready]').waitFor();
  return page;
}

const WIDTH_CHANGE = '/rules/movement/width-change/';
const result = (page: Page, name = 'changeMm') => page.locator(`[data-result=${name}]`);
const problem = (page: Page, name: string) => page.locator(`[data-field=${name}] .problem`);

/** The number at the beginning of a text, its minus sign as printed. */
const numberIn = (text: string | null) => Number.parseFloat((text ?? '').replace('−', '-'));

describe('a calculator', () => {
  test('computes what the package computes, at each change', async () => {
    const page = await openCalculator(WIDTH_CHANGE);
    const input = { widthMm: 742, coefficientPerPct: 0.00353, fromMoisturePct: 12, toMoisturePct: 7.5 };
    for (const [name, value] of Object.entries(input)) await page.fill(`#${name}`, `${value}`);
    expect(numberIn(await result(page).textContent())).toBeCloseTo(widthChange(input).changeMm, 2);

    await page.fill('#toMoisturePct', '13');
    const swollen = widthChange({ ...input, toMoisturePct: 13 }).changeMm;
    expect(numberIn(await result(page).textContent())).toBeCloseTo(swollen, 2);
    await page.context().close();
  });

  test('shows its first answer before any script', async () => {
    const page = await open(WIDTH_CHANGE, { javaScriptEnabled: false });
    const input = Object.fromEntries(
      await Promise.all(
        ['widthMm', 'coefficientPerPct', 'fromMoisturePct', 'toMoisturePct'].map(async (name) => [
          name,
          Number(await page.inputValue(`#${name}`)),
        ]),
      ),
    );
    expect(numberIn(await result(page).textContent())).toBeCloseTo(widthChange(input).changeMm, 2);
    await page.context().close();
  });

  test('reads a bare length in the unit chosen, and says it in both', async () => {
    const page = await openCalculator(WIDTH_CHANGE);
    await page.fill('#widthMm', '254');
    const millimetres = numberIn(await result(page).textContent());
    await page.getByLabel('inches').check();
    expect(await page.inputValue('#widthMm')).toBe('10');
    // 1 in = 25.4 mm exactly (NIST SP 811, Appendix B.8).
    expect(numberIn(await result(page).textContent())).toBeCloseTo(millimetres / 25.4, 3);
    expect(numberIn(await page.locator('.otherwise').textContent())).toBeCloseTo(millimetres, 2);

    await page.fill('#widthMm', '20');
    expect(numberIn(await page.locator('.otherwise').textContent())).toBeCloseTo(2 * millimetres, 1);
    await page.context().close();
  });

  test('says beside the field what is wrong, and answers again once it is mended', async () => {
    const page = await openCalculator(WIDTH_CHANGE);
    const before = await result(page).textContent();
    await page.fill('#fromMoisturePct', '31');
    expect(await problem(page, 'fromMoisturePct').textContent()).toBe('Must be 0 to 30 %.');
    expect(await page.getAttribute('#fromMoisturePct', 'aria-invalid')).toBe('true');
    expect(await result(page).textContent()).toBe('–');
    await page.fill('#fromMoisturePct', '8');
    expect(await problem(page, 'fromMoisturePct').textContent()).toBe('');
    expect(await result(page).textContent()).toBe(before);
    await page.context().close();
  });

  test('notes where the source no longer stands behind the number', async () => {
    const page = await openCalculator(WIDTH_CHANGE);
    await page.fill('#toMoisturePct', '20');
    expect(await page.getByRole('status').last().textContent()).toContain('outside 6 to 14 %');
    expect(numberIn(await result(page).textContent())).toBeGreaterThan(0);
    await page.context().close();
  });

  test('fills in the coefficient of a wood from its table', async () => {
    const page = await openCalculator(WIDTH_CHANGE);
    await page.selectOption('[data-fills=coefficientPerPct]', { label: 'Maple, sugar, quartersawn' });
    // Wood Handbook (FPL-GTR-190), Table 13-5: sugar maple, radial.
    expect(await page.inputValue('#coefficientPerPct')).toBe('0.00165');
    await page.fill('#coefficientPerPct', '0.002');
    expect(await page.inputValue('[data-fills=coefficientPerPct]')).toBe('');
    await page.context().close();
  });

  test('gives a link that brings back the same figures', async () => {
    const page = await openCalculator(WIDTH_CHANGE);
    await page.getByLabel('inches').check();
    await page.fill('#widthMm', '23 in');
    await page.fill('#toMoisturePct', '6.5');
    const link = await page.getByText('Link to these figures').getAttribute('href');
    await page.waitForURL(`**${WIDTH_CHANGE}${link}`);
    const shared = await openCalculator(page.url());
    expect(await shared.inputValue('#widthMm')).toBe('23 in');
    expect(await shared.getByLabel('inches').isChecked()).toBe(true);
    expect(await result(shared).textContent()).toBe(await result(page).textContent());

    await shared.getByText('Start again').click();
    await shared.waitForURL(`**${WIDTH_CHANGE}`);
    expect(await shared.getByLabel('mm', { exact: true }).isChecked()).toBe(true);
    await page.context().close();
    await shared.context().close();
  });

  test('treats whatever a link carries as text', async () => {
    const hostile = [
      '<img src=x onerror="document.title=1">',
      '"><script>document.title=1</script>',
      'javascript:document.title=1',
      '1e309',
      '-Infinity',
      'NaN',
      '',
      '9'.repeat(5000),
      '{{7*7}}',
      '\u0000\u202e12',
    ];
    const page = await open('/');
    for (const text of hostile) {
      await goToCalculator(
        page,
        `${WIDTH_CHANGE}?${new URLSearchParams({ fromMoisturePct: text, __proto__: 'x' })}`,
      );
      expect(await problem(page, 'fromMoisturePct').textContent(), text).not.toBe('');
      expect(await result(page).textContent(), text).toBe('–');
      expect(await page.locator('rule-calculator :is(script, img)').count()).toBe(0);
      expect(await page.title()).toContain('Change in width');
    }
    await goToCalculator(page, `${WIDTH_CHANGE}?length-unit=cubit`);
    expect(await problem(page, 'length-unit').textContent()).toContain('cubit');
    expect(await result(page).textContent()).toBe('–');
    await page.context().close();
  });

  test('on the page of every rule answers as the rule does', async () => {
    expect(rules.length).toBeGreaterThan(0);
    const page = await open('/');
    for (const rule of rules) {
      for (const { given } of rule.examples) {
        const texts = fieldTexts(rule, given);
        await goToCalculator(page, `${ruleHref(rule)}?${new URLSearchParams(texts)}`);
        const shown = await page.locator('[data-result]').allTextContents();
        expect(shown, rule.id).toEqual(answer(rule, texts).results.map(({ text }) => text));
        expect(shown.length).toBe(Object.keys(rule.outputs).length);
      }
    }
    await page.context().close();
  }, 180_000);
});

test('the drawing on the home page follows its calculator', async () => {
  const page = await openCalculator('/');
  const edge = () => page.locator('[data-then]').getAttribute('width').then(Number);
  const shrunk = await edge();
  await page.fill('#toMoisturePct', '14');
  expect(await edge()).toBeGreaterThan(shrunk);
  expect(await page.locator('[data-change]').textContent()).toBe(await result(page).textContent());
  await page.context().close();
});

test('every link leads somewhere, and some link leads to the page of every rule', async () => {
  const page = await open('/');
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

test('every published figure on the page of worked examples is reproduced', async () => {
  const page = await open('/accuracy/');
  const rows = page.locator('[data-agrees]');
  const figures = rules.flatMap(({ examples }) =>
    examples.flatMap(({ expect: stated }) => Object.values(stated).flat()),
  );
  expect(figures.length).toBeGreaterThan(0);
  expect(await rows.count()).toBe(figures.length);
  expect(await page.locator('[data-agrees=false]').allTextContents()).toEqual([]);
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
  expect(added).toBeLessThan(10_000);
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
        await goToCalculator(page, `${WIDTH_CHANGE}?fromMoisturePct=99`);
        expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
        await context.close();
      }, 120_000);
    }
  }
});

test('no page asks another host, and none reports an error', () => {
  expect(site.requested.length).toBeGreaterThan(100);
  expect(
    site.requested.filter((url) => new URL(url).origin !== site.address && !url.startsWith('data:')),
  ).toEqual([]);
  expect(site.errors).toEqual([]);
});
