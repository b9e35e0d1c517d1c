import fc from 'fast-check';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { binderyBench } from '../src/examples.ts';
import { type Plan, planWorktop, type WorkSheet, workSheet } from '../src/index.ts';
import { printable } from '../src/pdf.ts';
import { type Paper, papers, printWorkSheet } from '../src/print.ts';
import { parsePlan } from '../src/schema.ts';
import { bench } from './bindery-bench.ts';
import { readPdf } from './read-pdf.ts';
import { wholeBench } from './whole-bench.ts';

const sheetOf = (plan: Plan) => workSheet(planWorktop(plan));
const whole = sheetOf(wholeBench());
const step = (sheet: WorkSheet, stage: string) => {
  const found = sheet.steps.find((one) => one.stage === stage);
  if (!found) throw new Error(`no step ${stage}`);
  return found;
};
const value = (sheet: WorkSheet, stage: string, name: string) =>
  step(sheet, stage).settings.find((setting) => setting.name === name)?.value;

const order = ['mill', 'glue', 'flatten', 'rabbet', 'mark', 'drill', 'sand', 'finish', 'fix'];

describe('the work sheet', () => {
  test('goes in the order of the shop, each step with something to do or to decide', () => {
    expect(whole.steps.map(({ stage }) => stage)).toEqual(order);
    for (const { tasks, decisions } of whole.steps)
      expect(tasks.length + decisions.length).toBeGreaterThan(0);
  });

  test('gives the settings that follow by hand', () => {
    // 44.45 + 2 to be flattened; (640 + 10) / 5; 1479.55 + 50 rough; see the tests of the glue-up.
    expect(value(whole, 'mill', 'plane to')).toBe('46.5 mm');
    expect(value(whole, 'mill', 'joint to a width of')).toBe('130.0 mm');
    expect(value(whole, 'mill', 'rough, each at least')).toBe('1529.6 mm × 136.0 mm × 50.5 mm');
    // √(1479.55² + 640²) = 1612.03.
    expect(step(whole, 'flatten').tasks.join()).toContain('both diagonals measure 1612.0 mm');
    expect(value(whole, 'rabbet', 'strip in the rabbet')).toBe('0.20 mm below the face');
    expect(value(whole, 'mark', 'pitch along the grain')).toBe('112.0 mm (4 13/32 in)');
    expect(value(whole, 'drill', 'holes')).toBe('65, ⌀ 15.9 mm (5/8 in)');
    expect(value(whole, 'fix', 'screws')).toBe('6, ⌀ 6.0 mm × 45.0 mm');
  });

  test('has a task for each placement of the template, each step of the calendar and each screw', () => {
    const result = planWorktop(wholeBench());
    const tasks = (stage: string) => step(whole, stage).tasks;
    const placements = tasks('drill').filter((task) => task.startsWith('Template to '));
    expect(placements).toHaveLength(result.template?.steps.length ?? 0);
    expect(tasks('finish').filter((task) => task.startsWith('Day '))).toHaveLength(
      result.calendar?.steps.length ?? 0,
    );
    for (const { name } of result.fixings) {
      expect(tasks('fix').some((task) => task.startsWith(`${name}, x `))).toBe(true);
      expect(tasks('mark').join()).toContain(name);
    }
  });

  test('marks every line of the grid from the edge where there is no template', () => {
    const { template, ...plan } = wholeBench();
    const tasks = step(sheetOf(plan), 'mark').tasks.join('\n');
    // 68 + 112 i and 160 + 104 i
    expect(tasks).toContain('68, 180, 292, 404, 516, 628, 740, 852, 964, 1076, 1188, 1300, 1412.');
    expect(tasks).toContain('160, 264, 368, 472, 576.');
  });

  test('says what is left to decide where the plan leaves it out', () => {
    const bare = sheetOf(bench());
    expect(bare.steps.map(({ stage }) => stage)).toEqual(order);
    const asked = bare.steps.flatMap(({ decisions }) => decisions).join('\n');
    for (const section of ['glueUp', 'screws', 'calendar']) expect(asked).toContain(`(${section})`);
    expect(asked).toContain('brass cutting guide');
    expect(step(whole, 'sand').decisions).toHaveLength(1);
    expect(whole.steps.flatMap(({ decisions }) => decisions)).toHaveLength(1);
  });

  test('sends nobody to slide the base twice', () => {
    const tasks = (slideMm: number) => {
      const plan = parsePlan(binderyBench);
      const sliding = (plan.base.sliding ?? []).map((one) => ({ ...one, slideMm }));
      const result = planWorktop({ ...plan, base: { ...plan.base, sliding } });
      return step(workSheet(result), 'fix').tasks.join('\n');
    };
    // The leg frame is 40 mm wide and lies at 230 mm in the file.
    expect(tasks(20)).toMatch(
      /Slide left frame 20\.0 mm to the left, from where the plan file has it; this sheet and the drawing have it slid\./,
    );
    expect(tasks(20)).toContain('left front, x 230.0 mm');
    expect(tasks(-10)).toContain('Slide right frame 10.0 mm away from the right,');
    expect(tasks(0)).toContain('Leave left frame where the plan file has it.');
    expect(tasks(0)).not.toContain('Slide');
  });

  test('fixes no strip where there is none', () => {
    const sheet = workSheet(planWorktop(bench()));
    expect(step(sheet, 'fix').title).toBe('Fix the base');
    expect(step(workSheet(planWorktop(wholeBench())), 'fix').title).toBe('Fix the strip and the base');
  });

  test('has no rabbet where nothing is let in', () => {
    const plan = bench();
    const plain = sheetOf({ ...plan, top: { ...plan.top, inlays: [] } });
    expect(plain.steps.map(({ stage }) => stage)).toEqual(order.filter((stage) => stage !== 'rabbet'));
  });

  test('says on top that a plan is not to be built from, and which checks fail', () => {
    const plan = bench();
    const failing = sheetOf({ ...plan, holes: { ...plan.holes, edgeMarginMm: 70 } });
    expect(failing.warnings[0]).toMatch(/^NOT to be built from as it stands\. Not met: “Holes miss/);
    expect(sheetOf(plan).warnings).toEqual([]);
  });

  test('stands beside oily rags, solvents, machines and lifting with its cautions', () => {
    const said = (stage: string) => step(whole, stage).cautions.join(' ');
    expect(said('finish')).toMatch(/Rags .* catch fire .*Solvents/);
    expect(said('mill')).toMatch(/kick back/);
    expect(said('rabbet')).toMatch(/against the turn of the bit/);
    expect(said('drill')).toMatch(/backing board/);
    expect(said('fix')).toMatch(/nobody reaches or stands beneath/);
  });
});

/** Without blanks, since lines are broken, and with signs that mean the same made one: the micro sign, and mu. */
const tight = (text: string) => text.normalize('NFKC').replace(/\s+/g, '');
const textOf = async (pdf: Uint8Array) =>
  tight((await readPdf(pdf)).flatMap(({ texts }) => texts.map(({ text }) => text)).join(''));

const textsOf = ({ name, says, warnings, cautions, steps }: WorkSheet) => [
  ...[name, says, ...warnings, ...cautions],
  ...steps.flatMap((one) => [
    ...[one.title, ...one.tasks, ...one.decisions, ...one.cautions],
    ...one.settings.flatMap((setting) => [setting.name, setting.value]),
  ]),
];

describe.each(Object.keys(papers) as Paper[])('printed on %s', (paper) => {
  const { pdf, pageCount } = printWorkSheet(whole, { paper });
  const [width, height] = papers[paper];

  test('reads back with every setting, task, decision and caution', async () => {
    const read = await textOf(pdf);
    const texts = textsOf(whole);
    expect(texts.length).toBeGreaterThan(100);
    expect(texts.filter((text) => !read.includes(tight(printable(text))))).toEqual([]);
  });

  test('has pages of that size, each with its number', async () => {
    const pages = await readPdf(pdf);
    expect(pages).toHaveLength(pageCount);
    pages.forEach(({ widthMm, heightMm, texts }, i) => {
      expect(widthMm).toBeCloseTo(width, 1);
      expect(heightMm).toBeCloseTo(height, 1);
      expect(texts.map(({ text }) => text)).toContain(`page ${i + 1} of ${pageCount}`);
    });
  });

  test('has a box to tick for each task and each step', async () => {
    const boxes = (await readPdf(pdf)).flatMap(({ rectangles }) =>
      rectangles.filter(
        ({ left, right, top, bottom }) =>
          Math.abs(right - left - 4.2) < 0.05 && Math.abs(top - bottom - 4.2) < 0.05,
      ),
    );
    expect(boxes).toHaveLength(whole.steps.length + whole.steps.flatMap(({ tasks }) => tasks).length);
  });

  test('keeps everything inside the margins, lines of text apart', async () => {
    expect(await linesOutside(pdf)).toEqual([]);
  });

  test('is the same file again, byte for byte', () => {
    expect(printWorkSheet(sheetOf(wholeBench()), { paper }).pdf).toEqual(pdf);
  });
});

/** Lines of text that reach over a margin, or over another line, as a general library measures them. */
async function linesOutside(pdf: Uint8Array): Promise<string[]> {
  const task = getDocument({ data: pdf.slice(), verbosity: 0 });
  const document = await task.promise;
  const wrong: string[] = [];
  for (let i = 1; i <= document.numPages; i += 1) {
    const page = await document.getPage(i);
    const [, , right = 0, top = 0] = page.view;
    const mm = 72 / 25.4;
    const { items } = await page.getTextContent();
    const lines = items.flatMap((item) =>
      'str' in item && item.str.trim() !== ''
        ? [
            {
              text: item.str,
              x: item.transform[4],
              y: item.transform[5],
              to: item.transform[4] + item.width,
              size: item.transform[0],
            },
          ]
        : [],
    );
    if (lines.length === 0) wrong.push(`page ${i} is empty`);
    for (const [j, { text, x, y, to, size }] of lines.entries()) {
      if (!(x > 19 * mm && to < right - 13 * mm && y > 8 * mm && y + size < top - 10 * mm)) wrong.push(text);
      const over = lines
        .slice(0, j)
        .find((one) => one.x < to && x < one.to && Math.abs(one.y - y) < 0.72 * Math.min(size, one.size));
      if (over) wrong.push(`${text} over ${over.text}`);
    }
  }
  await task.destroy();
  return wrong;
}

describe('hostile text', () => {
  const name = fc
    .string({ minLength: 1, maxLength: 60, unit: 'grapheme' })
    .filter((text) => text.length <= 60 && /^(?=.*\S)\P{Cc}*$/u.test(text));
  const named = (planName: string, product: string): Plan => {
    const plan = wholeBench();
    const finish = { ...plan.finish, product: { ...plan.finish.product, name: product } };
    const containers = (plan.stock?.containers ?? []).map((one) =>
      one.liquid === 'varnish' ? { ...one, liquid: product } : one,
    );
    return { ...plan, name: planName, finish, stock: { ...plan.stock, containers } as Plan['stock'] };
  };

  test('stays on the page and reads back in the signs that the type has', async () => {
    await fc.assert(
      fc.asyncProperty(name, name, async (planName, product) => {
        fc.pre(product !== 'mineral spirits');
        const sheet = sheetOf(named(planName, product));
        const { pdf } = printWorkSheet(sheet, { paper: 'A4' });
        const read = await textOf(pdf);
        expect(read).toContain(tight(printable(planName)));
        expect(read).toContain(tight(printable(product)));
        expect(await linesOutside(pdf)).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });

  test.each(['\\) Tj ET (', '<script>alert(1)</script>', '%%EOF', 'W'.repeat(60), '(((((', 'a\u202eb'])(
    '%s is text and nothing else',
    async (text) => {
      const { pdf } = printWorkSheet(sheetOf(named(text, `${text.slice(0, 50)} oil`)), { paper: 'Letter' });
      expect(await textOf(pdf)).toContain(tight(printable(text)));
      expect(await linesOutside(pdf)).toEqual([]);
    },
  );

  test('says where signs had to go', async () => {
    const note = tight('Signs that the type of this sheet lacks stand as “?”');
    const read = async (planName: string) =>
      textOf(printWorkSheet(sheetOf(named(planName, 'varnish')), { paper: 'A4' }).pdf);
    expect(await read('製本台')).toContain(note);
    expect(await read('Établi ½″ – really?')).not.toContain(tight('製本台'));
    expect(await read('Buchbindertisch für Ölfarben?')).not.toContain(note);
  });

  test('a paper that is none is refused', () => {
    expect(() => printWorkSheet(whole, { paper: 'A9' as Paper })).toThrow(
      /^printWorkSheet requires paper .*"?A9/,
    );
  });
});

describe('printable', () => {
  /** What a decoder that follows the encoding standard gives for the bytes of Windows-1252. */
  const windows1252 = new TextDecoder('windows-1252').decode(
    Uint8Array.from({ length: 224 }, (_, i) => i + 32),
  );

  test('keeps all of Windows-1252 that is a sign', () => {
    const signs = [...windows1252].filter((sign) => /\P{Cc}/u.test(sign)).join('');
    expect(signs.length).toBeGreaterThan(210);
    expect(printable(signs)).toBe(signs);
  });

  test('gives nothing else, whatever goes in', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const lines = text.replace(/\p{Cc}/gu, '');
        for (const sign of printable(lines)) expect(windows1252).toContain(sign);
      }),
    );
  });

  test('leaves accents off and likens signs of the trade', () => {
    expect(printable('⌀ 6 − 4 ≥ 2')).toBe('Ø 6 – 4 at least  2');
    expect(printable('Dvořák, Čapek')).toBe('Dvorák, Capek');
    expect(printable('木')).toBe('?');
  });
});
