import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright';
import sharp from 'sharp';
import { expect, onTestFinished, test } from 'vitest';
import { writeWorker } from '../integrations/offline.ts';
import { openSite } from './site.ts';
import { serveFiles } from './static-server.ts';

const WIDTH_CHANGE = '/rules/movement/width-change/';
const built = fileURLToPath(new URL('../dist/', import.meta.url));

const site = openSite();

/** A first visit, ended when everything is kept, to a server that can be stopped. */
async function firstVisit() {
  const server = await serveFiles(built);
  const context = await site.visit({ baseURL: server.address, serviceWorkers: 'allow' });
  onTestFinished(async () => {
    await context.close();
    await server.stop();
  });
  const page = await context.newPage();
  await page.goto('/reading/');
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  return { server, context, page };
}

const heading = (page: Page) => page.locator('h1').first().textContent();

test('the site can be installed', async () => {
  const page = await site.open('/');
  const devtools = await page.context().newCDPSession(page);
  const { errors, url } = await devtools.send('Page.getAppManifest');
  expect(url).toBe(`${site.address}/site.webmanifest`);
  expect(errors).toEqual([]);
  // A profile that forgets, as a test's, installs nothing; nothing else is in the way.
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(['in-incognito']);

  const manifest = await (await page.request.get('/site.webmanifest')).json();
  expect(manifest.icons.length).toBeGreaterThan(2);
  const touchIcon = await page.locator('link[rel="apple-touch-icon"]').getAttribute('href');
  for (const { src, sizes, type } of [
    ...manifest.icons,
    { src: touchIcon, sizes: '180x180', type: 'image/png' },
  ]) {
    const icon = await page.request.get(src);
    expect([src, icon.status(), icon.headers()['content-type']]).toEqual([src, 200, type]);
    const { width, height } = await sharp(await icon.body()).metadata();
    if (sizes !== 'any') expect([src, `${width}x${height}`]).toEqual([src, sizes]);
  }
  await page.context().close();
});

test('search, calculators and pages never visited work without a network', async () => {
  const { server, page } = await firstVisit();
  await page.goto('/no-such-page/');
  expect(await heading(page)).toBe('No such page');
  await server.stop();
  site.errors.length = 0; // The browser writes of that page to the console.

  await page.goto('/reading/');
  await page
    .getByRole('button', { name: /search/i })
    .first()
    .click();
  await page.locator('dialog input').first().fill('dew point');
  await page.locator('dialog a[href*="/rules/finishing/dew-point/"]').first().waitFor();

  const figures = 'widthMm=1000&coefficientPerPct=0.00353&fromMoisturePct=10&toMoisturePct=8';
  await site.goToCalculator(page, `${WIDTH_CHANGE}?${figures}`);
  const answer = page.locator('live-calculator .figures');
  // By hand: 1000 × 0.00353 × (8 − 10) = −7.06.
  expect(await answer.textContent()).toMatch(/−7\.(1|06)/);
  await page.reload();
  await page.locator('live-calculator[data-ready]').waitFor();
  expect(await answer.textContent()).toMatch(/−7\.(1|06)/);

  for (const path of ['/', '/rules/', '/accuracy/', '/plan/', '/in-code', '/rules/finishing/dew-point']) {
    const response = await page.goto(path);
    expect([path, response?.status(), response?.fromServiceWorker()]).toEqual([path, 200, true]);
    expect(await page.evaluate(() => document.styleSheets.length), path).toBeGreaterThan(0);
  }
  await page.goto('/plan/', { waitUntil: 'networkidle' }); // What it cannot load stands in the errors.
  await page.goto('/no-such-page/');
  expect(await heading(page)).toBe('Not kept on this device');
  expect(site.errors).toEqual([]);
}, 60_000);

test('a new version takes over when the last page of the old one is left', async () => {
  const { server, context, page } = await firstVisit();
  const folder = `${mkdtempSync(join(tmpdir(), 'scantling-'))}/`;
  onTestFinished(() => rmSync(folder, { recursive: true }));
  cpSync(built, folder, { recursive: true });
  for (const name of ['reading', 'in-code']) {
    const file = `${folder}${name}/index.html`;
    writeFileSync(file, readFileSync(file, 'utf8').replace('</h1>', ', newly</h1>'));
  }
  await writeWorker(folder);

  const other = await context.newPage();
  await other.goto('/in-code/');
  server.serve(folder);
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting);

  // While there are two pages of the old version, neither is of the new one.
  await page.goto('/reading/?one=1#lengths');
  expect(await heading(page)).toBe('How to read a page');
  await other.close();
  await expect
    .poll(
      async () => {
        await page.goto('/in-code/');
        await page.goto('/reading/?one=1#lengths');
        return heading(page);
      },
      { timeout: 20_000 },
    )
    .toBe('How to read a page, newly');
  expect(page.url()).toBe(`${server.address}/reading/?one=1#lengths`);

  await server.stop();
  await page.goto('/in-code/');
  expect(await heading(page)).toMatch(/, newly$/);
}, 60_000);

test('no other host was asked', () => {
  expect(site.requested.length).toBeGreaterThan(1000);
  expect(site.requested.filter((url) => !/^(http:\/\/127\.0\.0\.1:|data:)/.test(url))).toEqual([]);
});
