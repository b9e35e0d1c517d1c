import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { jobHref, jobs } from '../src/job-registry.ts';
import { openSite } from './site.ts';

const site = openSite();

/** What the keyboard is on: its name in the form, or its class; whether it is seen to be. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    const { outlineStyle, outlineWidth } = getComputedStyle(element);
    return {
      inForm: element.closest('live-calculator') !== null,
      name: element.getAttribute('name') ?? element.className,
      marked: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) > 0,
    };
  });

const answers = async (page: Page) =>
  (
    await page
      .locator('live-calculator .figures, live-calculator .notes, live-calculator .problem')
      .allTextContents()
  ).join('|');

describe.each(jobs.map((named) => [named.name, jobHref(named)] as const))(
  '%s, by keyboard only',
  (_name, path) => {
    test('every control is reached and seen, a figure typed is answered, and all is put back', async () => {
      const page = await site.openCalculator(path);
      const wanted = await page.evaluate(() => {
        // Radios of one name are one stop.
        const controls = [
          ...document.querySelectorAll('live-calculator :is(input, select, button, a)'),
        ].filter((one) => (one as HTMLElement).offsetParent !== null && !(one as HTMLButtonElement).disabled);
        return [...new Set(controls.map((one) => one.getAttribute('name') ?? one.className))];
      });
      const reached = new Set<string>();
      let left = false;
      for (let i = 0; i < 400 && !left; i += 1) {
        await page.keyboard.press('Tab');
        const { inForm, name, marked } = await focused(page);
        if (!inForm && reached.size > 0) left = true;
        if (!inForm) continue;
        expect(marked, `${name} shows no focus`).toBe(true);
        reached.add(name);
      }
      expect([...reached]).toEqual(expect.arrayContaining(wanted));
      expect(left).toBe(true);

      const before = await answers(page);
      const field = page
        .locator('live-calculator .entry input:is([inputmode=decimal], [data-length])')
        .first();
      await field.focus();
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type('nonsense <b>');
      await expect.poll(() => answers(page)).not.toBe(before);
      await page.locator('live-calculator [type=reset]').focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => answers(page)).toBe(before);
      await page.context().close();
    });
  },
);

test('a row is added and taken away by keyboard, and the keyboard is where it helps', async () => {
  const page = await site.openCalculator('/calculators/lumber/');
  const rows = page.locator('.row');
  const count = await rows.count();
  await page.locator('.add').focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => rows.count()).toBe(count + 1);
  expect((await focused(page)).name).toBe(`boards.${count}.thicknessMm`);
  await page.locator('.remove').last().focus();
  await page.keyboard.press('Space');
  await expect.poll(() => rows.count()).toBe(count);
  expect((await focused(page)).name).toBe('add');
  await page.context().close();
});
