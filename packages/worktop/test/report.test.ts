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
    expect(report).not.toMatch(/NaN|undefined|null|Infinity|-0\b|\[object/);
    expect(Math.max(...report.split('\n').map((line) => line.length))).toBeLessThanOrEqual(120);
  });
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
