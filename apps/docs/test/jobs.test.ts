import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answer } from '../src/calculator/answer.ts';
import {
  flatTexts,
  linkedTexts,
  linkOf,
  restateLengths,
  singleFields,
  type Texts,
} from '../src/calculator/form.ts';
import { LENGTH_UNIT } from '../src/calculator/lengths.ts';
import { rangesOf } from '../src/calculator/ranges.ts';
import { withRowAdded, withRowRemoved } from '../src/calculator/rows.ts';
import { answerText } from '../src/calculator/view.ts';
import { jobs } from '../src/job-registry.ts';
import { rules } from '../src/registry.ts';

const hostileText = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.double().map(String),
  fc.nat(5000).map(String),
  fc.constantFrom('1e309', '<b>', '__proto__', 'constructor', '5 3/8', '12 mm', '-0', '', '9'.repeat(3000)),
);

test('there is a calculator for every job', () => {
  expect(jobs.length).toBeGreaterThan(0);
});

describe.each(jobs.map(({ name, job }) => [name, job] as const))('%s', (_name, job) => {
  const first = flatTexts(job.first);
  const used = rules.filter(({ id }) => job.rules.includes(id));

  test('answers its first values, by rules that there are', () => {
    expect(used.map(({ id }) => id).sort()).toEqual([...job.rules].sort());
    const { computed, notes, results } = answer(job, first, rangesOf(used));
    expect(computed, notes.join()).not.toBeNull();
    expect(results.length).toBeGreaterThan(0);
    const steps = computed?.outcome.steps ?? [];
    for (const step of steps) {
      const rule = used.find(({ id }) => id === step.rule);
      expect(rule?.compute(step.given), step.what).toEqual(step.gives);
    }
    expect(new Set(steps.map(({ rule }) => rule))).toEqual(new Set(job.rules));
  });

  test('gives results, or says what is wrong, whatever its fields say', () => {
    const names = [LENGTH_UNIT, ...Object.keys(first)];
    fc.assert(
      fc.property(fc.constantFrom(...names), hostileText, (name, typed) => {
        const shown = answer(job, { ...first, [name]: typed });
        const { results, problems, notes } = shown;
        if (results.length === 0) {
          expect(Object.keys(problems).length + notes.length).toBeGreaterThan(0);
          return;
        }
        // A name is shown as it was typed.
        if (singleFields(job.fields, first).some(([one, field]) => one === name && field.kind === 'text'))
          return;
        expect(answerText(job.title, shown)).not.toMatch(/\b(NaN|Infinity|undefined|null)\b|[-−]0\b(?![.,])/);
      }),
      { numRuns: 60 },
    );
  });

  test('gives the same in inches as in millimetres', () => {
    const figures = (texts: Texts) =>
      (answer(job, texts).computed?.outcome.figures ?? []).flatMap((figure) =>
        'value' in figure ? [figure.value].flat() : [],
      );
    const inMillimetres = figures({ ...first, [LENGTH_UNIT]: 'mm' });
    const inInches = figures({ ...restateLengths(job.fields, first, 'mm', 'in'), [LENGTH_UNIT]: 'in' });
    expect(inInches.length).toBe(inMillimetres.length);
    for (const [i, value] of inMillimetres.entries()) {
      // Bare lengths are said again to seven digits.
      expect(Math.abs((inInches[i] ?? 0) - (value ?? 0))).toBeLessThanOrEqual(
        1e-4 * Math.abs(value ?? 0) + 1e-3,
      );
    }
  });
});

describe('rows', () => {
  const job = jobs.find(({ name }) => name === 'lumber')?.job;
  if (!job) throw new Error('The test needs a calculator with rows.');
  const first = flatTexts(job.first);

  test('a row added begins as the last one, and removed leaves what was there', () => {
    const more = withRowAdded(job, first, 'boards');
    expect(more['boards.2.widthMm']).toBe('6 in');
    expect(withRowRemoved(job, more, 'boards', 2)).toEqual(first);
    expect(withRowRemoved(job, more, 'boards', 0)['boards.0.widthMm']).toBe('6 in');
  });

  test('a link brings back what was in the form, rows and all', () => {
    const text = fc.string({ maxLength: 40 });
    const row = fc.record({ thicknessMm: text, widthMm: text, lengthMm: text, count: text });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 30 }), text, (boards, extraPct) => {
        const texts: Texts = { ...flatTexts({ boards, extraPct, boardFtPrice: '' }), [LENGTH_UNIT]: 'in' };
        const link = new URLSearchParams(linkOf(job.fields, texts));
        expect(linkedTexts(job.fields, first, link)).toEqual(texts);
      }),
    );
  });

  test('a link says nothing of fields that there are not', () => {
    const link = new URLSearchParams(
      'boards.0.__proto__=1&__proto__=2&boards.x.widthMm=3&boards.1e3.widthMm=4&constructor=5&boards=6',
    );
    const texts = linkedTexts(job.fields, first, link);
    expect(Object.keys(texts).filter((name) => !(name in first))).toEqual([]);
    const many = Array.from({ length: 900 }, (_, i) => [`boards.${i}.count`, '1']);
    const shown = answer(job, linkedTexts(job.fields, first, new URLSearchParams(many)));
    expect(shown.problems.boards).toBe('Give 1 to 30.');
  });
});
