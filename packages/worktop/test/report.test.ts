import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planReport, planWorktop, shoppingPlan } from '../src/index.ts';
import { parsePlan } from '../src/schema.ts';
import { bench } from './bindery-bench.ts';
import { exampleContents } from './example-files.ts';
import { wholeBench } from './whole-bench.ts';

/** Lines are broken at blanks: read them as one. */
const flat = (text: string) => text.replace(/\s+/g, ' ');
const reportOf = (plan: Plan) => planReport(planWorktop(plan));

const plans: readonly (readonly [string, Plan])[] = [
  ['a plan with what every plan has', bench()],
  ['a plan with every section', wholeBench()],
  ...[...exampleContents()].map(([file, content]) => [file, parsePlan(content)] as const),
];

describe.each(plans)('the report of %s', (_, plan) => {
  const result = planWorktop(plan);
  const report = planReport(result);

  test('names each check with what it says, each screw and each caution', () => {
    expect(result.checks.length).toBeGreaterThan(7);
    for (const { title, says } of result.checks) {
      expect(flat(report)).toContain(flat(title));
      expect(flat(report)).toContain(flat(says));
    }
    for (const { name } of result.fixings) expect(report).toContain(name);
    for (const caution of result.cautions) expect(flat(report)).toContain(caution);
  });

  test('has no figure that is none, and no line wider than a page', () => {
    expect(report).not.toMatch(/NaN|undefined|null|Infinity|[-−]0(\.0+)?\b(?!\.)|\[object/);
    expect(Math.max(...report.split('\n').map((line) => line.length))).toBeLessThanOrEqual(120);
  });
});

/** The row of the report that begins so, in words. */
const row = (report: string, start: string) =>
  report
    .split('\n')
    .find((line) => line.startsWith(`  ${start}  `))
    ?.trim()
    .split(/ {2,}/);
const exampleNamed = (file: string) => reportOf(parsePlan(exampleContents().get(file)));

test('a slot that is as long as it has to be does not look too short', () => {
  // 3/8 in is 9.525 mm: neither 9.6 needed nor 9.5 there.
  const report = exampleNamed('marblers-long-bench.json');
  expect(row(report, 'left middle')?.slice(2, 4)).toEqual(['9.525', '9.525']);
});

test('a slot that is too short looks so', () => {
  const content = exampleContents().get('trial-that-fails.json') as {
    base: { fixings: { slot: number }[] };
  };
  const fixings = content.base.fixings.map((one) => ({ ...one, slot: one.slot === 7 ? 6.96 : one.slot }));
  const report = reportOf(parsePlan({ ...content, base: { ...content.base, fixings } }));
  // One decimal, up and down, tells 7.0 from 6.9.
  expect(row(report, 'left middle')?.slice(2, 4)).toEqual(['7.0', '6.9']);
});

test('the strip lies as its check says, and its rabbet is as deep as it, to a hundredth', () => {
  // 1/4 in is 6.35 mm, 1 1/16 in 26.99 mm.
  const report = flat(exampleNamed('bindery-bench.json'));
  expect(report).toContain('1400.0 mm × 25.4 mm × 6.35 mm');
  expect(report).toContain('rabbet 26.99 mm wide, 6.35 mm deep');
  const [lies] =
    /flush on building day, 0\.\d\d mm proud at the driest, [^.]*\.\d\d mm below the face/.exec(report) ?? [];
  expect(lies).toBeDefined();
  expect(report.split(lies as string)).toHaveLength(3);
});

test('a rough size is never written shorter than it is, in either unit', () => {
  // (900 + 12) / 9 + 6 = 107.33 mm = 4.2257 in, between 4 14/64 and 4 15/64.
  expect(flat(exampleNamed('gilders-square-table.json'))).toContain(
    'rough at least 930.0 mm (36 5/8 in) × 107.4 mm (4 15/64 in) × 37.0 mm',
  );
});

test('says at once whether it can be built from', () => {
  const second = (plan: Plan) => reportOf(plan).split('\n')[1];
  expect(second(bench())).toBe('It can be built from.');
  const plan = bench();
  expect(second({ ...plan, holes: { ...plan.holes, edgeMarginMm: 70 } })).toMatch(
    /^It can NOT be built from/,
  );
});

test('has a section for everything planned, and none for what is left out', () => {
  const heading = (report: string) =>
    report
      .split('\n')
      .filter((line) => /^\S/.test(line))
      .slice(2);
  const always = ['Top', 'Width through the year', 'Slots across the grain, mm', 'Holes', 'Finish'];
  expect(heading(reportOf(bench()))).toEqual([...always, 'Shopping list', 'Checks', 'Cautions']);
  expect(heading(reportOf(wholeBench()))).toEqual([
    'Top',
    'Width through the year',
    'Glue-up',
    'Slots across the grain, mm',
    'Screws into the top, mm',
    'Strip: brass cutting guide, mm',
    'Holes',
    'Template',
    'What stands in the holes',
    'Load',
    'Lift',
    'Finish',
    'Shop on the day of finishing',
    'Calendar of coats',
    'Cut list',
    'Shopping list',
    'Checks',
    'Cautions',
  ]);
});

test('tells how each board is cut, and what all costs', () => {
  const report = flat(reportOf(wholeBench()));
  // Two of 1529.55 and a cut of 3 are 3062.1: see the tests of the lists.
  expect(report).toContain(
    'A: 2 of them; crosscut 3062.1 mm from the left end, then rip 136.0 mm from the front edge, then crosscut 1529.6 mm from the left end',
  );
  expect(report).toContain('All that has a price: 311.00, the least there is');
});

test('a price that is not proven says so', () => {
  const result = planWorktop(wholeBench());
  const shopping = shoppingPlan(result);
  const open = { ...shopping, proven: false, boundPrice: 290 };
  expect(flat(planReport(result, open))).toContain(
    'All that has a price: 311.00; not proven to be the least, none is below 290.00',
  );
});

test('a name without a blank is printed whole, however long', () => {
  const letters = fc.string({
    minLength: 40,
    maxLength: 60,
    unit: fc.constantFrom('a', 'Ж', '語', '"', '\\'),
  });
  fc.assert(
    fc.property(letters, (name) => {
      const plan = wholeBench();
      const [first, ...rest] = plan.base.fixings;
      const named = { ...plan, base: { ...plan.base, fixings: [{ ...first, name }, ...rest] } } as Plan;
      expect(reportOf(named)).toContain(name);
    }),
    { numRuns: 20 },
  );
});
