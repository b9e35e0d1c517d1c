import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  checkSandingSequence,
  findGrit,
  gritTables,
  sandingNotes,
  sandingSequence,
  scratchRoughnessRule,
} from '../src/index.ts';

const sizeOf = (grade: string) => findGrit(grade)?.medianUm ?? Number.NaN;
const grades = Object.values(gritTables).flatMap(({ rows }) => rows.map(({ grade }) => grade));

/** Two grades, the coarser one first, a few more on hand, and a ratio. */
const situation = fc
  .record({
    ends: fc.tuple(fc.constantFrom(...grades), fc.constantFrom(...grades)),
    onHand: fc.array(fc.constantFrom(...grades), { maxLength: 9 }),
    largestSizeRatio: fc.oneof(numberArb({ min: 1.05, max: 3 }), numberArb({ min: 1.05, max: 10 })),
    dampWipe: fc.constantFrom('never' as const, 'beforeLastGrade' as const, 'betweenGrades' as const),
  })
  .map(({ ends, ...rest }) => {
    const [from = '', to = ''] = [...ends].sort((a, b) => sizeOf(b) - sizeOf(a));
    return { from, to, ...rest };
  });

/** The fewest passes by trying every choice of the grades on hand; `null` where none will do. */
function byTryingAll(from: string, to: string, onHand: readonly string[], ratio: number): number | null {
  const sizes = [...new Set(onHand.map(sizeOf))].filter((size) => size < sizeOf(from) && size > sizeOf(to));
  let least: number | null = null;
  for (let choice = 0; choice < 2 ** sizes.length; choice++) {
    const chosen = [sizeOf(from), ...sizes.filter((_, i) => choice & (1 << i)), sizeOf(to)];
    const sorted = [...new Set(chosen)].sort((a, b) => b - a);
    const allowed = sorted
      .slice(1)
      .every((size, i) => (sorted[i] ?? Number.NaN) / size <= ratio * (1 + 1e-9));
    if (allowed && (least === null || sorted.length < least)) least = sorted.length;
  }
  return least;
}

test('no sequence is shorter: every choice of the grades on hand was tried', () => {
  let found = 0;
  fc.assert(
    fc.property(situation, (input) => {
      const { passes, gaps } = sandingSequence(input);
      const least = byTryingAll(input.from, input.to, input.onHand, input.largestSizeRatio);
      expect(passes?.length ?? null).toBe(least);
      expect(passes === null).toBe(gaps.length > 0);
      if (passes) found += 1;
    }),
    { numRuns: 500 },
  );
  expect(found).toBeGreaterThan(50);
});

test('a sequence goes from the one grade to the other, finer each time, by steps that are allowed', () => {
  fc.assert(
    fc.property(situation, (input) => {
      const { passes } = sandingSequence(input);
      if (!passes) return;
      const sizes = passes.map(({ medianUm }) => medianUm);
      expect(sizes[0]).toBe(sizeOf(input.from));
      expect(sizes.at(-1)).toBe(sizeOf(input.to));
      passes.forEach((pass, i) => {
        expect(pass.medianUm).toBe(sizeOf(pass.grade));
        expect(pass.scratchesPct).toBeCloseTo((100 * pass.medianUm) / sizeOf(input.from), 9);
        expect(pass.sizeRatio).toBe(i === 0 ? null : (sizes[i - 1] ?? Number.NaN) / pass.medianUm);
        if (i > 0) expect(pass.sizeRatio).toBeLessThanOrEqual(input.largestSizeRatio * (1 + 1e-9));
        if (i > 0) expect(pass.sizeRatio).toBeGreaterThan(1);
      });
      const wipes = {
        never: 0,
        beforeLastGrade: Math.min(1, passes.length - 1),
        betweenGrades: passes.length - 1,
      };
      expect(passes.filter(({ wipeBefore }) => wipeBefore)).toHaveLength(wipes[input.dampWipe]);
    }),
  );
});

test('the order on hand does not matter, more grades and a larger ratio never take more passes', () => {
  fc.assert(
    fc.property(
      situation,
      fc.constantFrom(...grades),
      numberArb({ min: 1, max: 2 }),
      (input, more, times) => {
        const { passes } = sandingSequence(input);
        const turned = sandingSequence({ ...input, onHand: input.onHand.toReversed() }).passes;
        expect(turned?.map(({ medianUm }) => medianUm)).toEqual(passes?.map(({ medianUm }) => medianUm));
        if (!passes) return;
        const with1 = sandingSequence({ ...input, onHand: [...input.onHand, more] }).passes;
        expect(with1?.length).toBeLessThanOrEqual(passes.length);
        const largestSizeRatio = Math.min(10, input.largestSizeRatio * times);
        expect(sandingSequence({ ...input, largestSizeRatio }).passes?.length).toBeLessThanOrEqual(
          passes.length,
        );
      },
    ),
  );
});

test('what is to be bought closes the gaps', () => {
  let closed = 0;
  fc.assert(
    fc.property(situation, (input) => {
      const { gaps } = sandingSequence(input);
      for (const { fromGrade, toGrade, sizeRatio } of gaps) {
        expect(sizeRatio).toBeCloseTo(sizeOf(fromGrade) / sizeOf(toGrade), 12);
        expect(sizeRatio).toBeGreaterThan(input.largestSizeRatio);
      }
      const buy = gaps.map((gap) => gap.buy);
      if (gaps.length === 0 || buy.includes(null)) return;
      const bought = buy.flatMap((some) => some ?? []);
      expect(bought.length).toBeGreaterThan(0);
      expect(sandingSequence({ ...input, onHand: [...input.onHand, ...bought] }).passes).not.toBeNull();
      // Each gap needs as many: leaving one out opens it again.
      const without = { ...input, onHand: [...input.onHand, ...bought.slice(1)] };
      expect(sandingSequence(without).passes).toBeNull();
      closed += 1;
    }),
  );
  expect(closed).toBeGreaterThan(5);
});

test('a shortest sequence can save nothing and misses nothing; a given one is counted against it', () => {
  fc.assert(
    fc.property(situation, (input) => {
      const { passes } = sandingSequence(input);
      if (!passes) return;
      const own = checkSandingSequence({ ...input, grades: passes.map(({ grade }) => grade) });
      expect(own).toEqual({
        passCount: passes.length,
        leastPassCount: passes.length,
        savedCount: 0,
        missedCount: 0,
        largeSteps: [],
        cautions: own.cautions,
      });
      const ends = [...new Set([input.from, input.to])];
      if (sizeOf(input.from) === sizeOf(input.to)) return;
      const leap = checkSandingSequence({ ...input, grades: ends });
      expect(leap.missedCount).toBe(passes.length - 2);
      expect(leap.savedCount).toBe(0);
      expect(leap.largeSteps).toHaveLength(passes.length > 2 ? 1 : 0);
    }),
  );
});

test('what can be saved and what is missed are counted apart, by trying all', () => {
  const fepa = gritTables['FEPA P'].rows.map(({ grade }) => grade);
  const some = fc.subarray(fepa, { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(some, some, numberArb({ min: 1.05, max: 4 }), (given, onHand, largestSizeRatio) => {
      const check = checkSandingSequence({ grades: given, onHand, largestSizeRatio });
      const all = [...given, ...onHand];
      const isLarge = (i: number) =>
        sizeOf(given[i - 1] ?? '') / sizeOf(given[i] ?? '') > largestSizeRatio * (1 + 1e-9);
      const cuts = given.map((_, i) => i).filter((i) => i > 0 && isLarge(i));
      const missed = cuts.map((i) => {
        const least = byTryingAll(given[i - 1] ?? '', given[i] ?? '', all, largestSizeRatio);
        return least === null ? null : least - 2;
      });
      expect(check.largeSteps.map(({ missedCount }) => missedCount)).toEqual(missed);
      expect(check.missedCount).toBe(
        missed.includes(null) ? null : missed.reduce((sum: number, count) => sum + (count ?? 0), 0),
      );
      const starts = [0, ...cuts];
      const saved = starts.map((start, i) => {
        const end = (starts[i + 1] ?? given.length) - 1;
        const least = byTryingAll(given[start] ?? '', given[end] ?? '', all, largestSizeRatio);
        return end - start + 1 - (least ?? Number.NaN);
      });
      expect(check.savedCount).toBe(saved.reduce((sum, count) => sum + count, 0));
      // Mended and thinned out, the sequence is one that is allowed.
      if (check.missedCount === null) expect(check.leastPassCount).toBeNull();
      else {
        expect(check.leastPassCount).toBeLessThanOrEqual(given.length - check.savedCount + check.missedCount);
      }
    }),
  );
});

test('a needless pass does not make up for a missing one', () => {
  const grades = ['P80', 'P100', 'P120', 'P240'];
  const uneven = checkSandingSequence({ grades, onHand: ['P150', 'P180'], largestSizeRatio: 1.7 });
  expect(uneven).toMatchObject({ savedCount: 1, missedCount: 1, leastPassCount: 4 });
  expect(uneven.largeSteps).toMatchObject([{ fromGrade: 'P120', toGrade: 'P240', missedCount: 1 }]);
  const bare = checkSandingSequence({ grades: ['P80', 'P220', 'P240'], onHand: [], largestSizeRatio: 1.7 });
  expect(bare).toMatchObject({ leastPassCount: null, savedCount: 0, missedCount: null });
});

test('whoever sands is told of dust', () => {
  const sequence = { from: 'P80', to: 'P80', onHand: [], largestSizeRatio: 1.7, dampWipe: 'never' as const };
  const check = checkSandingSequence({ grades: ['P80'], onHand: [], largestSizeRatio: 1.7 });
  for (const { cautions } of [sandingSequence(sequence), check, scratchRoughnessRule]) {
    expect(cautions?.join(' ')).toMatch(
      /Wood dust harms the lungs.*dust of oil finishes can heat up by itself/,
    );
  }
});

test('what cannot be is refused by name', () => {
  const input = { from: 'P80', to: 'P220', onHand: [], largestSizeRatio: 1.7, dampWipe: 'never' as const };
  const refused = (change: object) => () => sandingSequence({ ...input, ...change });
  expect(refused({ from: 'P81' })).toThrow(
    'sandingSequence requires from to be a grade of its list, got "P81"',
  );
  expect(refused({ to: 'P60' })).toThrow('to no coarser than from, got P60 (269 µm) after P80 (201 µm)');
  expect(refused({ onHand: ['P120', '120'] })).toThrow('sandingSequence requires onHand[1] to name its list');
  expect(refused({ onHand: 'P120' })).toThrow('onHand to be a list, got string');
  expect(refused({ largestSizeRatio: 1 })).toThrow('largestSizeRatio between 1.05 and 10, got 1');
  expect(refused({ dampWipe: 'always' })).toThrow('dampWipe');
  const check = (list: unknown) => () =>
    checkSandingSequence({ grades: list as string[], onHand: [], largestSizeRatio: 2 });
  expect(check([])).toThrow('grades to be a list of at least one grade, got none');
  expect(check(['P80', 'P60'])).toThrow('grades[1] finer than the one before');
  expect(check(['P80', 'P80'])).toThrow('grades[1] finer than the one before');
});

test('every note on sanding is a sentence with a source that was seen, or common practice', () => {
  expect(sandingNotes.map(({ about }) => about)).toEqual(['purpose', 'damp wipe', 'last grade', 'scratches']);
  for (const { about, says, citations } of sandingNotes) {
    expect(says).toMatch(/^[A-Z].{30,}\.$/);
    expect(citations.map(({ confirmed }) => confirmed)).toEqual(citations.map(() => 'text'));
    expect(citations.length > 0, about).toBe(about !== 'damp wipe');
  }
});
