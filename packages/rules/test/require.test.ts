import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  plusZero,
  requireChoice,
  requireFields,
  requireInputs,
  requireList,
  requireThat,
} from '../src/index.ts';

const passes = (attempt: () => void): boolean => {
  try {
    attempt();
    return true;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    expect(error.message).toMatch(/^demo requires \S.*, got /);
    return false;
  }
};

/** Anything at all, with what a careless caller hands in most often. */
const anything = fc.oneof(
  fc.anything({ withNullPrototype: true, withBigInt: true, withDate: true, withSparseArray: true }),
  fc.double(),
  fc.constantFrom(
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    -0,
    undefined,
    null,
    '1',
    [1],
  ),
);

const limitsArb = fc
  .tuple(fc.double({ noNaN: true, min: -1e6, max: 1e6 }), fc.double({ noNaN: true, min: 0, max: 1e6 }))
  .map(([min, span]) => ({ min, max: min + span }));

test('a number passes exactly where it lies within its limits', () => {
  fc.assert(
    fc.property(anything, limitsArb, (xMm, limits) => {
      const within = typeof xMm === 'number' && xMm >= limits.min && xMm <= limits.max;
      expect(passes(() => requireInputs('demo', { xMm } as { xMm: number }, { xMm: limits }))).toBe(within);
    }),
  );
});

test('both limits pass, and the next number beyond does not', () => {
  fc.assert(
    fc.property(limitsArb, ({ min, max }) => {
      const check = (x: number) => passes(() => requireInputs('demo', { x }, { x: { min, max } }));
      const step = (x: number) => Math.max(Number.MIN_VALUE, Math.abs(x) * 2 ** -52);
      expect([check(min), check(max)]).toEqual([true, true]);
      expect([check(min - step(min)), check(max + step(max))]).toEqual([false, false]);
    }),
  );
});

test('where whole numbers are asked for, only they pass', () => {
  fc.assert(
    fc.property(fc.oneof(fc.integer({ min: -9, max: 99 }), fc.double({ min: -9, max: 99 })), (count) => {
      const limits = { count: { min: 0, max: 90, integer: true } } as const;
      const within = Number.isInteger(count) && count >= 0 && count <= 90;
      expect(passes(() => requireInputs('demo', { count }, limits))).toBe(within);
    }),
  );
});

test('a missing options object is refused by the name of its first number', () => {
  for (const input of [undefined, null, 7, 'text']) {
    expect(() =>
      requireInputs('demo', input as unknown as { xMm: number }, { xMm: { min: 0, max: 1 } }),
    ).toThrow(new RangeError('demo requires xMm between 0 and 1, got undefined'));
  }
});

test('a list passes exactly when it is long enough, short enough and every number is within limits', () => {
  const limits = { min: -5, max: 5, minItems: 2, maxItems: 4 };
  const lists = fc.oneof(
    anything,
    fc.array(fc.double({ min: -6, max: 6 }), { maxLength: 6 }),
    fc.array(anything),
  );
  fc.assert(
    fc.property(lists, (list) => {
      const within =
        Array.isArray(list) &&
        list.length >= 2 &&
        list.length <= 4 &&
        Array.from(list).every((x) => typeof x === 'number' && x >= -5 && x <= 5);
      expect(passes(() => requireList('demo', 'xsMm', list, limits))).toBe(within);
    }),
  );
});

test('a hole in a list is refused, by its place', () => {
  const list = [1, 2, 3];
  delete list[1];
  expect(() => requireList('demo', 'xsMm', list, { min: 0, max: 9, minItems: 1, maxItems: 9 })).toThrow(
    'demo requires xsMm[1] between 0 and 9, got undefined',
  );
});

test('a choice passes exactly when it is one of those allowed', () => {
  const choices = ['flatsawn', 'quartersawn'];
  const given = fc.oneof(anything, fc.string(), fc.constantFrom(...choices, 'toString', '__proto__'));
  fc.assert(
    fc.property(given, (cut) => {
      expect(passes(() => requireChoice('demo', 'cut', cut, choices))).toBe(
        choices.some((one) => one === cut),
      );
    }),
  );
});

test('a long text is cut short in the message', () => {
  expect(() => requireChoice('demo', 'cut', 'x'.repeat(1000), ['flatsawn'])).toThrow(
    new RangeError(`demo requires cut to be one of flatsawn, got "${'x'.repeat(40)}"`),
  );
});

test('a condition passes exactly when it holds', () => {
  fc.assert(
    fc.property(fc.boolean(), (holds) => {
      expect(passes(() => requireThat('demo', holds, 'a below b, got 2 and 1'))).toBe(holds);
    }),
  );
});

test('plusZero changes nothing but −0', () => {
  fc.assert(
    fc.property(fc.double(), (x) => {
      expect(plusZero(x)).toBe(Object.is(x, -0) ? 0 : x);
    }),
  );
});

test('numbers inside an object are held to the same limits, by their path', () => {
  fc.assert(
    fc.property(anything, limitsArb, (xMm, limits) => {
      const outside = passes(() => requireInputs('demo', { xMm } as { xMm: number }, { xMm: limits }));
      expect(passes(() => requireFields('demo', 'boards[1]', { xMm }, { xMm: limits }))).toBe(outside);
    }),
  );
  for (const given of [undefined, null, 7, {}]) {
    expect(() => requireFields('demo', 'boards[1]', given, { xMm: { min: 0, max: 1 } })).toThrow(
      'demo requires boards[1].xMm between 0 and 1, got undefined',
    );
  }
});
