import { type Plan, planWorktop } from '@scantling/worktop';
import { binderyBench, trialThatFails } from '@scantling/worktop/examples';
import { type Field, planField } from '@scantling/worktop/fields';
import { parsePlan } from '@scantling/worktop/schema';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyPlan } from '../../../packages/worktop/test/any-plan.ts';
import { withAnotherRow, withChoice, withoutOneRow, withSection } from '../src/plan/desk.ts';
import { at, type Draft, dotted, isSection, type Path, put } from '../src/plan/draft.ts';
import { contents } from '../src/plan/examples.ts';
import { placesOf } from '../src/plan/faults.ts';
import { labelOf, pathIn, placeInWords, sections } from '../src/plan/labels.ts';
import { fieldAt } from '../src/plan/places.ts';
import { readPart } from '../src/plan/read.ts';
import { outcomeSoon } from '../src/plan/soon.ts';
import { starts } from '../src/plan/starts.ts';
import { inOrder, marginText, verdictOf } from '../src/plan/verdict.ts';
import {
  begun,
  changed,
  filledIn,
  inUnit,
  outcome as outcomeWith,
  planContent,
  type Sheet,
  sheetOf,
  undone,
} from '../src/plan/work.ts';

/** The plan without what it leaves out by saying `undefined`. */
const plain = (plan: Plan): Plan => structuredClone(JSON.parse(JSON.stringify(plan)));
const bench = sheetOf(binderyBench);
const outcome = (sheet: Sheet) => outcomeWith(sheet, planWorktop);
const read = ({ plan, unit }: Sheet) => readPart('', planField, plan, unit);
const type = (sheet: Sheet, path: string, text: string) => filledIn(sheet, pathIn(path), text);
const problem = (sheet: Sheet, path: string) => outcome(sheet).problems[path];

/** Every place of a form, with what may stand there. */
function placesIn(field: Field, draft: Draft | undefined, path: Path = []): Path[] {
  if (field.kind === 'list') {
    const rows = Array.isArray(draft) ? draft : [];
    return [path, ...rows.flatMap((row, i) => placesIn(field.of, row, [...path, i]))];
  }
  if (field.kind !== 'section' || !isSection(draft)) return [path];
  return [
    path,
    ...Object.entries(field.fields).flatMap(([key, inner]) => placesIn(inner, draft[key], [...path, key])),
  ];
}

describe('a form says what its plan says', () => {
  test.each(Object.entries(contents))('%s', (_, content) => {
    const { result, problems } = outcome(sheetOf(content));
    expect(problems).toEqual({});
    expect(result).toEqual(planWorktop(parsePlan(content)));
  });

  test('any plan, whichever unit may be left out, and its file says so too', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        for (const sheet of [sheetOf(plan), inUnit(sheetOf(plan), 'in')]) {
          const reading = read(sheet);
          expect(reading.problems).toEqual({});
          expect({ version: 2, ...(reading.value as object) }).toEqual(plain(plan));
          expect(parsePlan(planContent(sheet))).toEqual(plain(plan));
          expect(read(sheetOf(planContent(sheet))).value).toEqual(reading.value);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('whatever is offered to start from is there', () => {
    expect(Object.keys(contents).sort()).toEqual(Object.keys(starts).sort());
  });
});

describe('what is typed', () => {
  test('is a length as it stands on a tape, in the unit that may be left out', () => {
    const width = (sheet: Sheet) => outcome(sheet).result?.plan.top.widthMm;
    expect(width(type(bench, 'top.widthMm', '25 3/8 in'))).toBe(25.375 * 25.4);
    expect(width(type(bench, 'top.widthMm', '64.5 cm'))).toBe(645);
    const inches = inUnit(bench, 'in');
    expect(width(inches)).toBe(640);
    expect(width(type(inches, 'top.widthMm', '25 3/8'))).toBe(25.375 * 25.4);
    expect(planContent(type(inches, 'top.widthMm', '25 3/8'))).toMatchObject({ top: { width: '25 3/8 in' } });
    expect(planContent(type(bench, 'top.widthMm', '640.5'))).toMatchObject({ top: { width: 640.5 } });
  });

  test.each([
    ['top.widthMm', '', 'Give a length.'],
    ['top.widthMm', '<script>alert(1)</script>', 'Not a length'],
    ['top.widthMm', '1e309', 'Not a length'],
    ['top.widthMm', '640 m', 'Must be 1 to 10000 mm.'],
    ['top.moisturePct', '1e309', 'too large'],
    ['top.moisturePct', '31', 'Must be 0 to 30 %.'],
    ['holes.rows', '4.5', 'Must be a whole number 1 to 500.'],
    ['base.members[2].yMm', 'NaN', 'Not a length'],
    ['top.cut', '__proto__', 'is not one of the choices'],
    ['base.fixings[0].name', '  ', 'Give a name.'],
    ['name', 'x'.repeat(70), 'Longer than 60 characters.'],
    ['screws.stockLengthsMm', '30; forty', 'Number 2'],
    ['load.leftSupport', 'left log frame', 'base.members'],
    ['base.sliding[0].leastSlideMm', '30', 'least'],
    ['top.species', 'Maple', 'one wood'],
  ])('in %s, “%s”, is refused beside its field', (path, text, says) => {
    const sheet = type(bench, path, text);
    const { problems, result } = outcome(sheet);
    expect(result).toBeNull();
    const [place] = Object.keys(problems);
    expect(place?.startsWith(path.split('.')[0] as string)).toBe(true);
    expect(Object.values(problems).join()).toContain(says);
  });

  test('is read the same after anything else in the plan has changed', () => {
    const places = placesIn(planField, bench.plan).filter((path) => typeof at(bench.plan, path) === 'string');
    expect(places.length).toBeGreaterThan(200);
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.string({ maxLength: 20 }), (path, text) => {
        const after = filledIn(bench, path, text);
        const fresh = sheetOf(JSON.parse(JSON.stringify(after.plan)));
        expect(outcome(after).problems).toEqual(outcome(fresh).problems);
        expect(at(after.plan, path)).toBe(text);
        const others = places.filter((other) => dotted(other) !== dotted(path));
        expect(others.every((other) => at(after.plan, other) === at(bench.plan, other))).toBe(true);
      }),
      { numRuns: 30 },
    );
  });

  test('can be anything at all: it becomes a plan or problems, never an error', () => {
    fc.assert(
      fc.property(fc.anything({ maxDepth: 5, withNullPrototype: true }), fc.boolean(), (content, inTop) => {
        const sheet = sheetOf(inTop ? { ...(binderyBench as object), top: content } : content);
        const { problems, result } = outcome(sheet);
        expect(result === null).toBe(Object.keys(problems).length > 0);
      }),
      { numRuns: 100 },
    );
    expect(Object.keys(problem(sheetOf(null), 'name') ?? '').length).toBeGreaterThan(0);
  });
});

describe('rows and sections', () => {
  test('are added like the last one under a name of its own, and taken away', () => {
    const more = withAnotherRow(bench, ['base', 'members'], undefined);
    expect(outcome(more).result?.plan.base.members.map(({ name }) => name)).toEqual([
      ...['left leg frame', 'right leg frame', 'front rail', 'back rail', 'back rail 2'],
    ]);
    expect(withoutOneRow(more, ['base', 'members'], 4)).toEqual(bench);
    const one = type(more, 'base.members[4].name', 'shelf bearer');
    expect(outcome(one).result?.plan.base.members.at(-1)?.name).toBe('shelf bearer');
  });

  test('that were left out come with the figures of an example', () => {
    const small = sheetOf(contents.smallTop);
    const like = (path: Path) => at(bench.plan, path);
    const withMachine = withSection(small, ['drilling'], like(['drilling']));
    expect(outcome(withMachine).result?.asked.drilling).toEqual(outcome(bench).result?.asked.drilling);
    expect(outcome(filledIn(withMachine, ['drilling'], undefined)).result).toEqual(outcome(small).result);
    const inlaid = withAnotherRow(small, ['top', 'inlays'], like(['top', 'inlays']));
    expect(outcome(inlaid).result?.plan.top.inlays[0]?.name).toBe('brass cutting guide');
  });

  test('may be left to the planner, and what it chose may be taken over', () => {
    const left = withChoice(bench, ['holes', 'first'], true, null);
    const { result } = outcome(left);
    expect(result?.asked.holes.first).toBe('choose');
    for (const sheet of [left, inUnit(left, 'in')]) {
      const taken = withChoice(sheet, ['holes', 'first'], false, result);
      expect(outcome(taken).result?.plan.holes.first).toEqual(result?.plan.holes.first);
    }
    const length = withChoice(bench, ['screws', 'lengthMm'], false, outcome(bench).result);
    expect(outcome(length).result?.plan.screws?.lengthMm).toBe(outcome(bench).result?.plan.screws?.lengthMm);
  });
});

test('what is loaded piece by piece comes to the same', async () => {
  for (const content of Object.values(contents)) {
    const sheet = sheetOf(content);
    expect(await outcomeSoon(sheet)).toEqual(outcome(sheet));
    const wrong = type(sheet, 'top.species', 'Maple');
    expect((await outcomeSoon(wrong)).problems).toEqual(outcome(wrong).problems);
  }
});

describe('undo', () => {
  test('goes back a run of typing at a time, and to the beginning at last', () => {
    const typed = ['6', '65', '650'].reduce(
      (work, text) => changed(work, type(work.sheet, 'top.widthMm', text), 'top.widthMm'),
      begun(bench),
    );
    const thicker = changed(typed, type(typed.sheet, 'top.thicknessMm', '50'), 'top.thicknessMm');
    expect(undone(thicker).sheet).toBe(typed.sheet);
    expect(undone(undone(thicker)).sheet).toBe(bench);
    expect(undone(begun(bench))).toEqual(begun(bench));
  });
});

describe('checks', () => {
  test('stand gravest first, and each says where in the form to go', () => {
    const sheet = sheetOf(trialThatFails);
    const { result } = outcome(sheet);
    if (!result) throw new Error('The trial is planned.');
    const order = inOrder(result.checks).map(({ status }) => status);
    expect(order.lastIndexOf('fail')).toBeLessThan(order.indexOf('warn'));
    expect(order.lastIndexOf('warn')).toBeLessThan(order.indexOf('pass'));
    for (const check of result.checks) {
      const places = placesOf(check, result, sheet.plan);
      expect(places.length, check.id).toBeGreaterThan(0);
      for (const place of places) {
        expect(at(sheet.plan, place), check.id).toBeDefined();
        expect(placeInWords(sheet.plan, place)).not.toBe('');
      }
    }
    const places = (id: string) =>
      placesOf(result.checks.find((check) => check.id === id) as never, result, sheet.plan).map(dotted);
    expect(places('slots')).toEqual([0, 2, 3, 5].map((i) => `base.fixings[${i}]`));
    expect(places('shop')).toContain('shop.air.relativeHumidityPct');
    expect(places('finish')).toEqual(['finish.product.onHandMl', 'finish.thinner.onHandMl']);
    expect(places('holes')).toEqual(['holes.first', 'base.members[0].xMm']);
    expect(places('height')).toEqual(['base.lift.lowestWorkMm', 'base.lift.highestWorkMm']);
  });

  test('lead to the rail that a hole was put over', () => {
    const sheet = type(bench, 'base.members[2].yMm', '250');
    const { result } = outcome(sheet);
    const holes = result?.checks.find(({ id }) => id === 'holes');
    expect(holes?.status).toBe('fail');
    expect(holes && result && placesOf(holes, result, sheet.plan).map(dotted)).toContain(
      'base.members[2].yMm',
    );
    expect(verdictOf(outcome(sheet))).toMatch(/^Not to be built from: \d/);
  });

  test('say what there is and what is needed in the unit of the form', () => {
    const check = { margin: { given: 25.4, min: 12.7, unit: 'mm' } } as never;
    expect(marginText(check, 'mm')).toBe('25.4 mm, at least 12.7 mm needed');
    expect(marginText(check, 'in')).toBe('1 in, at least 0.5 in needed');
  });
});

test('every place of a plan has a label, and every section its place in the order of the job', () => {
  expect([...sections, 'name'].sort()).toEqual(Object.keys((planField as { fields: object }).fields).sort());
  const places = placesIn(planField, bench.plan);
  for (const path of places) {
    expect(dotted(pathIn(dotted(path)))).toBe(dotted(path));
    const key = path.at(-1);
    if (typeof key === 'string') expect(labelOf(key)).toMatch(/^\p{L}[\p{L} ,’-]*$/u);
    expect(fieldAt(path).about).not.toBe('');
  }
});

test('a place that is not there can be filled in', () => {
  expect(put(undefined, ['a', 'b'], 'c')).toEqual({ a: { b: 'c' } });
  expect(put(['a', 'b'], [1], 'c')).toEqual(['a', 'c']);
});
