import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { jobHref, jobs } from '../src/job-registry.ts';
import { ruleHref, rules } from '../src/registry.ts';
import { addedScript, expectQuiet, openSite } from './site.ts';

/** What a calculator may ship beyond what every page of text does, gzipped. */
const CALCULATOR_BYTES = 15_000;
/** From a keystroke until the page shows what comes of it, in the middle of many. */
const RECOMPUTE_MS = 8;
/** Until the largest thing on the screen is there, on a processor a quarter as fast. */
const LARGEST_PAINT_MS = 1000;

const site = openSite();
const calculators = jobs.map((named) => [named.name, jobHref(named)] as const);
const plainRule = ruleHref(
  rules.find(({ id }) => id === 'movement/width-change') ?? (rules[0] as (typeof rules)[0]),
);

describe.each(calculators)('%s', (_name, path) => {
  test('is light, and answers at once', async () => {
    const page = await site.openCalculator(path);
    const added = await addedScript(site, page);
    expect(added).toBeGreaterThan(1000);
    expect(added).toBeLessThanOrEqual(CALCULATOR_BYTES);

    const times = await page.evaluate(() => {
      const field = document.querySelector<HTMLInputElement>('live-calculator .entry input');
      if (!field) return [];
      const texts = [field.value, `${field.value}0`];
      return Array.from({ length: 40 }, (_, i) => {
        field.value = texts[i % 2] as string;
        const from = performance.now();
        field.dispatchEvent(new Event('input', { bubbles: true }));
        return performance.now() - from;
      });
    });
    expect(times.length).toBe(40);
    times.sort((a, b) => a - b);
    expect(times[20]).toBeLessThanOrEqual(RECOMPUTE_MS);
    await page.context().close();
  });
});

/** Watches a page from its first byte on. */
async function watched(page: Page) {
  await page.addInitScript(() => {
    const seen = { shifts: 0, largestMs: 0 };
    Object.assign(window, { seen });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        seen.shifts += (entry as PerformanceEntry & { value: number }).value;
    }).observe({ type: 'layout-shift', buffered: true });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) seen.largestMs = entry.startTime;
    }).observe({ type: 'largest-contentful-paint', buffered: true });
  });
  return () =>
    page.evaluate(() => (window as unknown as { seen: { shifts: number; largestMs: number } }).seen);
}

test.each([390, 1280])(
  'nothing moves while a page loads, %i px wide',
  async (width) => {
    const page = await (await site.visit({ viewport: { width, height: 800 } })).newPage();
    const seen = await watched(page);
    for (const path of [
      '/',
      '/calculators/',
      '/examples/',
      plainRule,
      ...calculators.map(([, one]) => one),
    ]) {
      await page.goto(path, { waitUntil: 'networkidle' });
      expect((await seen()).shifts, path).toBeLessThan(0.001);
    }
    await page.context().close();
  },
  120_000,
);

test.each(['/', '/plan/', '/calculators/hole-grid/', plainRule])(
  'the largest thing on %s is soon there on a slow processor',
  async (path) => {
    const largest: number[] = [];
    // The machine does other things too: the quickest of a few tells what the page takes.
    for (let i = 0; i < 4 && !largest.some((ms) => ms <= LARGEST_PAINT_MS); i += 1) {
      const page = await (await site.visit({ viewport: { width: 390, height: 844 } })).newPage();
      await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: 4 });
      const seen = await watched(page);
      await page.goto(path, { waitUntil: 'networkidle' });
      const { largestMs } = await seen();
      expect(largestMs).toBeGreaterThan(0);
      largest.push(largestMs);
      await page.context().close();
    }
    expect(Math.min(...largest)).toBeLessThanOrEqual(LARGEST_PAINT_MS);
  },
  60_000,
);

test('no page asks another host or reports an error', () => {
  expectQuiet(site);
});
