import { widthChange } from '@scantling/movement';
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { answer } from '../src/calculator/answer.ts';
import { fieldTexts } from '../src/calculator/field.ts';
import { calculationOf } from '../src/calculator/of-rule.ts';
import { ruleHref, rules } from '../src/registry.ts';
import { expectQuiet, openSite } from './site.ts';

const site = openSite();

const WIDTH_CHANGE = '/rules/movement/width-change/';
const result = (page: Page, name = 'changeMm') => page.locator(`[data-result=${name}]`);
const problem = (page: Page, name: string) => page.locator(`[data-field=${name}] .problem`);

/** The number at the beginning of a text, its minus sign as printed. */
const numberIn = (text: string | null) => Number.parseFloat((text ?? '').replace('−', '-'));

describe('a calculator', () => {
  test('computes what the package computes, at each change', async () => {
    const page = await site.openCalculator(WIDTH_CHANGE);
    const input = { widthMm: 742, coefficientPerPct: 0.00353, fromMoisturePct: 12, toMoisturePct: 7.5 };
    for (const [name, value] of Object.entries(input)) await page.fill(`#${name}`, `${value}`);
    expect(numberIn(await result(page).textContent())).toBeCloseTo(widthChange(input).changeMm, 2);

    await page.fill('#toMoisturePct', '13');
    const swollen = widthChange({ ...input, toMoisturePct: 13 }).changeMm;
    expect(numberIn(await result(page).textContent())).toBeCloseTo(swollen, 2);
    await page.context().close();
  });

  test('shows its first answer before any script', async () => {
    const page = await site.open(WIDTH_CHANGE, { javaScriptEnabled: false });
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
    const page = await site.openCalculator(WIDTH_CHANGE);
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
    const page = await site.openCalculator(WIDTH_CHANGE);
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
    const page = await site.openCalculator(WIDTH_CHANGE);
    await page.fill('#toMoisturePct', '20');
    expect(await page.locator('.notes').textContent()).toContain('outside 6 to 14 %');
    expect(numberIn(await result(page).textContent())).toBeGreaterThan(0);
    await page.context().close();
  });

  test('fills in the coefficient of a wood from its table', async () => {
    const page = await site.openCalculator(WIDTH_CHANGE);
    await page.selectOption('[data-fills=coefficientPerPct]', { label: 'Maple, sugar, quartersawn' });
    // Wood Handbook (FPL-GTR-190), Table 13-5: sugar maple, radial.
    expect(await page.inputValue('#coefficientPerPct')).toBe('0.00165');
    await page.fill('#coefficientPerPct', '0.002');
    expect(await page.inputValue('[data-fills=coefficientPerPct]')).toBe('');
    await page.context().close();
  });

  test('gives a link that brings back the same figures', async () => {
    const page = await site.openCalculator(WIDTH_CHANGE);
    await page.getByLabel('inches').check();
    await page.fill('#widthMm', '23 in');
    await page.fill('#toMoisturePct', '6.5');
    const link = await page.getByText('Link to these figures').getAttribute('href');
    await page.waitForURL(`**${WIDTH_CHANGE}${link}`);
    const shared = await site.openCalculator(page.url());
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
    const page = await site.open('/');
    for (const text of hostile) {
      await site.goToCalculator(
        page,
        `${WIDTH_CHANGE}?${new URLSearchParams({ fromMoisturePct: text, __proto__: 'x' })}`,
      );
      expect(await problem(page, 'fromMoisturePct').textContent(), text).not.toBe('');
      expect(await result(page).textContent(), text).toBe('–');
      expect(await page.locator('live-calculator :is(script, img)').count()).toBe(0);
      expect(await page.title()).toContain('Change in width');
    }
    await site.goToCalculator(page, '/rules/units/equal-spacing/?ends=__proto__');
    expect(await problem(page, 'ends').textContent()).toContain('__proto__');
    expect(await result(page, 'pitchMm').textContent()).toBe('–');
    await page.locator('[name=ends]').first().check();
    expect(await problem(page, 'ends').textContent()).toBe('');
    expect(numberIn(await result(page, 'pitchMm').textContent())).toBeGreaterThan(0);

    await site.goToCalculator(page, `${WIDTH_CHANGE}?length-unit=cubit`);
    expect(await problem(page, 'length-unit').textContent()).toContain('cubit');
    expect(await result(page).textContent()).toBe('–');
    await page.context().close();
  });

  test('on the page of every rule answers as the rule does', async () => {
    expect(rules.length).toBeGreaterThan(0);
    const page = await site.open('/');
    for (const rule of rules) {
      const texts = fieldTexts(rule, rule.examples.at(-1)?.given);
      await site.goToCalculator(page, `${ruleHref(rule)}?${new URLSearchParams(texts)}`);
      const shown = await page.locator('[data-result]').allTextContents();
      expect(shown, rule.id).toEqual(answer(calculationOf(rule), texts).results.map(({ text }) => text));
      expect(shown.length).toBe(Object.keys(rule.outputs).length);
    }
    await page.context().close();
  }, 180_000);
});

test('the drawing on the home page follows its calculator', async () => {
  const page = await site.openCalculator('/');
  const edge = () => page.locator('[data-then]').getAttribute('width').then(Number);
  const shrunk = await edge();
  await page.fill('#toMoisturePct', '14');
  expect(await edge()).toBeGreaterThan(shrunk);
  expect(await page.locator('[data-change]').textContent()).toBe(await result(page).textContent());
  await page.context().close();
});

test('no calculator asks another host or reports an error', () => {
  expectQuiet(site);
});
