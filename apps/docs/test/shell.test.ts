import type { BrowserContext, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { withPolicy } from '../integrations/policy.ts';
import { expectQuiet, openSite } from './site.ts';

const WIDTH_CHANGE = '/rules/movement/width-change/';
const pages = [
  '/',
  WIDTH_CHANGE,
  '/rules/',
  '/calculators/',
  '/calculators/cut-bars/',
  '/plan/',
  '/accuracy/',
  '/sources/',
  '/reading/',
  '/in-code/',
  '/api/movement/',
  '/404.html',
];

const site = openSite();

/** A page that keeps what its policy refused. */
async function watched(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.addInitScript(() => {
    const refused: string[] = [];
    Object.assign(globalThis, { refused });
    document.addEventListener('securitypolicyviolation', (event) => {
      refused.push(`${event.effectiveDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`);
    });
  });
  return page;
}

const refusedIn = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { refused: string[] }).refused);

async function search(page: Page, words: string): Promise<void> {
  await page
    .getByRole('button', { name: /search/i })
    .first()
    .click();
  await page.getByRole('searchbox').or(page.locator('dialog input')).first().fill(words);
  await page.locator('dialog a[href*="/rules/"]').first().waitFor();
}

describe('the content security policy', () => {
  test('refuses nothing that the site does', async () => {
    const page = await watched(await site.visit());
    for (const path of pages) {
      await page.goto(path, { waitUntil: 'networkidle' });
      const policy = await page.locator('meta[http-equiv="content-security-policy"]').getAttribute('content');
      expect(policy, path).toContain("default-src 'none'");
      expect(policy, path).not.toContain("'unsafe-inline'");
      expect(policy, path).not.toContain("'unsafe-eval'");
      expect(await refusedIn(page), path).toEqual([]);
    }
    await site.goToCalculator(page, WIDTH_CHANGE);
    await page.getByRole('textbox').first().fill('700');
    await page.getByLabel('Select theme').first().selectOption('dark');
    await search(page, 'width');
    expect(await refusedIn(page)).toEqual([]);
    await page.context().close();
  }, 60_000);

  test('runs no script that was put into a page', async () => {
    // A context of its own: what it asks for is what must be refused.
    const context = await site.browser().newContext({ baseURL: site.address });
    const page = await watched(context);
    await page.goto(WIDTH_CHANGE);
    await page.evaluate(() => {
      const addScript = (properties: Partial<HTMLScriptElement>) =>
        document.body.append(Object.assign(document.createElement('script'), properties));
      addScript({ text: 'globalThis.ran = "an element"' });
      addScript({ src: 'https://example.com/script.js' });
      document.body.insertAdjacentHTML(
        'beforeend',
        '<img src="data:," onerror="globalThis.ran = \'a handler\'">',
      );
      const link = document.createElement('a');
      link.href = 'javascript:globalThis.ran = "an address"';
      document.body.append(link);
      link.click();
    });
    await expect
      .poll(() => refusedIn(page))
      .toEqual([
        expect.stringMatching(/^script-src-elem inline/),
        expect.stringMatching(/^script-src-elem https:\/\/example\.com/),
        expect.stringMatching(/^script-src-(elem|attr) inline/),
        expect.stringMatching(/^script-src-(elem|attr) inline/),
      ]);
    expect(await page.evaluate(() => 'ran' in globalThis)).toBe(false);
    await context.close();
  });

  test('is refused to a page with script in an attribute', () => {
    const page = (body: string) => `<html><head><meta charset="utf-8"></head><body>${body}</body></html>`;
    expect(() => withPolicy(page('<p onclick="go()">'))).toThrow('script in attributes: onclick="go()"');
    expect(() => withPolicy(page('<a href=" javascript:go()">'))).toThrow('script in attributes: href=');
    expect(() => withPolicy('<p>')).toThrow('no <meta charset>');
    // By `printf 'go()' | openssl dgst -sha256 -binary | base64`.
    expect(withPolicy(page('<script>go()</script>'))).toContain(
      "'sha256-5KYv+PUboo5h+0+YAtGRPbwv5d/QxzHslP4YGnUaxRw='",
    );
    expect(withPolicy(page('<p style="color: red">'))).toMatch(/style-src-attr 'unsafe-hashes' 'sha256-/);
  });
});

test('on paper there is nothing to press, and nothing of the dark', async () => {
  const page = await site.open(WIDTH_CHANGE, { colorScheme: 'dark' });
  await page.emulateMedia({ media: 'print' });
  for (const hidden of ['header.header', 'nav', '.calculator .actions']) {
    expect(await page.locator(hidden).count(), hidden).toBeGreaterThan(0);
    for (const one of await page.locator(hidden).all()) expect(await one.isVisible(), hidden).toBe(false);
  }
  const colours = await page.evaluate(() => {
    const seen = [...document.querySelectorAll('main :is(h1, p, a, output, .figures, td)')]
      .filter((one) => one.checkVisibility())
      .map((one) => getComputedStyle(one).color);
    return [...new Set(seen), getComputedStyle(document.body).backgroundColor];
  });
  expect(colours.length).toBeGreaterThan(1);
  expect(colours.pop()).toBe('rgb(255, 255, 255)');
  const darkness = colours.map((colour) => Math.max(...(colour.match(/\d+/g) ?? []).slice(0, 3).map(Number)));
  expect(Math.max(...darkness)).toBeLessThan(0x80);
  await page.context().close();
});

test('no page asks another host or reports an error', () => {
  expectQuiet(site);
});
