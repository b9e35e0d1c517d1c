import { readFile } from 'node:fs/promises';
import {
  cutList,
  drillingProgram,
  holeTable,
  planDrawing,
  planWorktop,
  shoppingList,
  workSheet,
} from '@scantling/worktop';
import { planDxf } from '@scantling/worktop/dxf';
import { binderyBench } from '@scantling/worktop/examples';
import { printTemplate, printWorkSheet } from '@scantling/worktop/print';
import { parsePlan } from '@scantling/worktop/schema';
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { linkOf } from '../src/plan/link.ts';
import { outputs } from '../src/plan/outputs.ts';
import { inOrder } from '../src/plan/verdict.ts';
import { filledIn, sheetOf } from '../src/plan/work.ts';
import { expectQuiet, openSite } from './site.ts';

const site = openSite();
const content = binderyBench as { readonly top: object; readonly base: { readonly members: object[] } };
const bench = planWorktop(parsePlan(binderyBench));

const go = async (page: Page, path = '/plan/') => {
  await page.goto(path);
  await page.locator('#planner[data-ready]').waitFor();
};

async function openPlanner(path = '/plan/', options = {}): Promise<Page> {
  const page = await (await site.visit(options)).newPage();
  await go(page, path);
  return page;
}

const field = (page: Page, path: string) => page.locator(`[id="${path}"]`);
const verdict = (page: Page) => page.locator('#plan-verdict p').textContent();
/** Does something, and waits for the plan that follows from it. */
async function planned(page: Page, change: () => Promise<unknown>): Promise<void> {
  const answered = page.evaluate(
    () =>
      new Promise((resolve) =>
        document.getElementById('planner')?.addEventListener('planned', resolve, { once: true }),
      ),
  );
  await change();
  await answered;
}
const fill = (page: Page, path: string, text: string) => planned(page, () => field(page, path).fill(text));
const checkTitles = (page: Page) => page.locator('.checks h3').allTextContents();

/** What the page says of checks, as the package orders and names them. */
const titlesOf = (plan: ReturnType<typeof planWorktop>) => inOrder(plan.checks).map(({ title }) => title);

async function download(page: Page, button: string): Promise<Buffer> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('#plan-further').getByRole('button', { name: button }).click(),
  ]);
  return readFile(await file.path());
}

test('the first value is there without script', async () => {
  const page = await site.open('/plan/', { javaScriptEnabled: false });
  expect(await verdict(page)).toBe(`It goes together: all ${bench.checks.length} checks met`);
  const shown = await checkTitles(page);
  expect(shown.map((title) => title.replace(/^met /, ''))).toEqual(titlesOf(bench));
  expect(await page.locator('#plan-drawing svg circle').count()).toBeGreaterThanOrEqual(bench.holes.length);
  expect(await field(page, 'top.widthMm').inputValue()).toBe('640');
  expect(await page.locator('#plan-form .help').count()).toBeGreaterThan(100);
  await page.context().close();
});

describe('what is typed', () => {
  test('is planned anew as the package plans it, and drawn, and can be undone', async () => {
    const page = await openPlanner();
    await fill(page, 'top.widthMm', '24 in');
    const wider = planWorktop(parsePlan({ ...content, top: { ...content.top, width: '24 in' } }));
    expect(wider.status).toBe('fail');
    expect(await verdict(page)).toMatch(/^Not to be built from/);
    const shown = await checkTitles(page);
    expect(shown.map((title) => title.replace(/^(met|not met|to judge) /, ''))).toEqual(titlesOf(wider));
    await page.waitForFunction(() => document.querySelector('#plan-drawing')?.textContent?.includes('609.6'));
    const shapes = (svg: string) => svg.match(/<(line|rect|circle|polygon|text)/g)?.length;
    expect(shapes(await page.locator('#plan-drawing').innerHTML())).toBe(shapes(planDrawing(wider)));
    await page.locator('#plan-spoken', { hasText: 'Not to be built' }).waitFor({ state: 'attached' });

    await planned(page, () => page.getByRole('button', { name: 'Undo' }).click());
    expect(await field(page, 'top.widthMm').inputValue()).toBe('640');
    expect(await verdict(page)).toMatch(/^It goes together/);
    await page.context().close();
  });

  test('that puts a rail under holes fails, and the check leads to the rail by keyboard alone', async () => {
    const page = await openPlanner();
    await field(page, 'base.members[2].yMm').evaluate((one) => {
      (one.closest('details') as HTMLDetailsElement).open = true;
    });
    await field(page, 'base.members[2].yMm').focus();
    await page.keyboard.press('Control+A');
    await planned(page, () => page.keyboard.insertText('250'));
    expect(await verdict(page)).toMatch(/^Not to be built from/);
    await field(page, 'base').evaluate((one: HTMLDetailsElement) => {
      one.open = false;
    });
    await page.locator('#check-holes').getByRole('link', { name: 'front rail' }).focus();
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('base.members[2].yMm');
    expect(await field(page, 'base').getAttribute('open')).not.toBeNull();
    await page.keyboard.press('Control+A');
    await planned(page, () => page.keyboard.insertText('95'));
    expect(await verdict(page)).toMatch(/^It goes together/);
    await page.context().close();
  });

  test('wrongly is told beside its field, which the list leads to', async () => {
    const page = await openPlanner();
    await fill(page, 'top.thicknessMm', '<img src=x onerror="document.title=1">');
    expect(await verdict(page)).toBe('Not planned yet: 1 field to mend');
    expect(await field(page, 'top.thicknessMm-problem').textContent()).toContain('Not a length');
    expect(await field(page, 'top.thicknessMm').getAttribute('aria-invalid')).toBe('true');
    await page.locator('.mend').getByRole('link', { name: 'thickness' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('top.thicknessMm');
    expect(await page.locator('#planner :is(img, script)').count()).toBe(0);
    await fill(page, 'top.species', 'Maple');
    await fill(page, 'top.thicknessMm', '1 3/4"');
    expect(await field(page, 'top.species-problem').textContent()).toContain('one wood');
    await page.context().close();
  });

  test('may be left to the planner; rows and sections come and go', async () => {
    const page = await openPlanner();
    await page.locator('summary', { hasText: /^Holes$/ }).click();
    await planned(page, () => field(page, 'holes.first').getByRole('checkbox').check());
    expect(await page.locator('.chosen').textContent()).toContain('Holes, first hole');
    await planned(page, () => field(page, 'holes.first').getByRole('checkbox').uncheck());
    expect(await field(page, 'holes.first.xMm').inputValue()).toMatch(/^\d/);

    await page.locator('summary', { hasText: 'Cables' }).click();
    await planned(page, () => field(page, 'cables').getByRole('button', { name: 'Plan this' }).click());
    await field(page, 'cables.holeDiameterMm').waitFor();
    expect(await checkTitles(page)).toContainEqual(
      expect.stringContaining('The cables go through their hole'),
    );
    await field(page, 'cables.bundle').getByRole('button', { name: 'Add to' }).click();
    await field(page, 'cables.bundle[2]-row').waitFor();
    await planned(page, () =>
      field(page, 'cables').getByRole('button', { name: 'Leave this section out' }).click(),
    );
    expect(await field(page, 'cables.holeDiameterMm').count()).toBe(0);
    await page.context().close();
  });
});

describe('a link', () => {
  test('holds the plan as it stands, on the same page and on another', async () => {
    const page = await openPlanner();
    await page.getByLabel('inches').check();
    await fill(page, 'top.widthMm', '25 3/8');
    await page.waitForFunction(() => location.hash.startsWith('#in='));
    const shown = await verdict(page);
    await page.reload();
    await page.locator('#planner[data-ready]').waitFor();
    await page.waitForFunction(
      () => (document.getElementById('top.widthMm') as HTMLInputElement).value === '25 3/8',
    );
    const shared = await openPlanner(
      await page.getByText('Link to this plan').evaluate((a) => (a as HTMLAnchorElement).href),
    );
    expect(await field(shared, 'top.widthMm').inputValue()).toBe('25 3/8');
    expect(await shared.getByLabel('inches').isChecked()).toBe(true);
    expect(await verdict(shared)).toBe(shown);
    await page.context().close();
    await shared.context().close();
  });

  test('that is broken or meant ill is told so, and the plan stays', async () => {
    const page = await openPlanner();
    const script = '<script>document.title="taken"</script>';
    const name = await linkOf(filledIn(sheetOf(binderyBench), ['base', 'members', 0, 'name'], script));
    for (const hash of ['#mm=broken', `#in=${'A'.repeat(400_000)}`, '#mm=%3Cscript%3E']) {
      await page.evaluate((to) => {
        location.hash = to;
      }, hash);
      await page.locator('.says', { hasText: 'does not hold a whole plan' }).waitFor();
      expect(await verdict(page)).toMatch(/^It goes together/);
      await page.evaluate(() => history.replaceState(null, '', '#'));
    }
    await go(page, `/plan/${name}`);
    await page.reload();
    await page.locator('.chosen, .mend').first().waitFor();
    expect(await field(page, 'base.members[0].name').inputValue()).toBe(script);
    expect(await page.title()).toContain('Plan a whole top');
    await page.context().close();
  });
});

describe('files', () => {
  test('open as they were saved; others are refused with the place, and the plan stays', async () => {
    const page = await openPlanner();
    const open = (name: string, text: string) =>
      page.setInputFiles('input[type=file]', {
        name,
        mimeType: 'application/json',
        buffer: Buffer.from(text),
      });
    await fill(page, 'top.widthMm', '25 1/4 in');
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the plan file' }).click(),
    ]);
    expect(saved.suggestedFilename()).toBe('bindery-bench-plan.json');
    const text = await readFile(await saved.path(), 'utf8');
    expect(parsePlan(JSON.parse(text)).top.widthMm).toBeCloseTo(25.25 * 25.4, 9);
    await fill(page, 'top.widthMm', '300');
    await open('again.json', text);
    await page.locator('.says', { hasText: 'Opened again.json' }).waitFor();
    expect(await field(page, 'top.widthMm').inputValue()).toBe('25 1/4 in');

    const hostile: [string, string][] = [
      [JSON.stringify({ ...content, version: 7 }), 'version: expected at most 2'],
      [text.replace('"25 1/4 in"', '1e309'), 'top.width'],
      [
        text.replace('"25 1/4 in"', '"<script>document.title=1</script>"'),
        '<script>document.title=1</script>',
      ],
      [text.replace('{', '{"__proto__": {"taken": true},'), '__proto__'],
      ['{', 'not JSON'],
      [' '.repeat(5_000_000), 'at most 1000000 are allowed'],
    ];
    for (const [bad, says] of hostile) {
      await open('bad.json', bad);
      await page.locator('.says', { hasText: says }).waitFor();
      expect(await field(page, 'top.widthMm').inputValue()).toBe('25 1/4 in');
    }
    expect(await page.evaluate(() => 'taken' in {})).toBe(false);
    expect(await page.locator('#planner script').count()).toBe(0);
    await page.context().close();
  });

  test('to take away are what the package gives', async () => {
    const page = await openPlanner();
    const text = async (name: string) =>
      (await download(page, (outputs[name] as { label: string }).label)).toString();
    const bytes = async (name: string) =>
      new Uint8Array(await download(page, (outputs[name] as { label: string }).label));
    expect(await text('drawing')).toBe(planDrawing(bench));
    expect(await text('holes')).toBe(holeTable(bench));
    expect(await text('drilling')).toBe(drillingProgram(bench));
    expect(await text('shopping')).toBe(shoppingList(bench));
    expect(await text('cuts')).toBe(cutList(bench));
    expect(await text('dxf')).toBe(planDxf(bench));
    expect(JSON.parse(await text('finished'))).toEqual(JSON.parse(JSON.stringify(bench)));
    expect(await bytes('workSheet')).toEqual(
      new Uint8Array(printWorkSheet(workSheet(bench), { paper: 'A4' }).pdf),
    );
    await page.getByLabel('Paper').selectOption('A3');
    expect(await bytes('template')).toEqual(
      new Uint8Array(printTemplate(bench, { paper: 'A3', marginMm: 10 }).pdf),
    );
    await page.context().close();
  }, 60_000);
});

test('further questions are answered when they are asked', async () => {
  const page = await openPlanner();
  const told = page.locator('.told');
  await page.getByRole('button', { name: 'Check it once more' }).click();
  await told.getByText('every claim is borne out').waitFor();
  await page.getByRole('button', { name: 'What is tightest' }).click();
  await told.getByText('Tightest').waitFor();
  expect(await told.locator('div').first().locator('li').count()).toBe(3);
  await page.getByRole('button', { name: 'What to buy' }).click();
  await told.getByText('proven to be the least').first().waitFor();
  await fill(page, 'top.moisturePct', '9');
  expect(await told.textContent()).toBe('');
  await page.context().close();
});

test('prints one document to read: verdict, drawing and checks', async () => {
  const page = await openPlanner();
  const pdf = await page.pdf();
  expect(pdf.subarray(0, 4).toString()).toBe('%PDF');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('#plan-drawing').isVisible()).toBe(true);
  expect(await page.locator('.checks').isVisible()).toBe(true);
  expect(await page.locator('#plan-form').isVisible()).toBe(false);
  await page.context().close();
});

test('nothing asks another host or reports an error', () => {
  expectQuiet(site);
});
