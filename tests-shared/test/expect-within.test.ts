import type { AnyRule } from '@scantling/rules';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { expectWithin, inputArb } from '../src/index.ts';

describe('expectWithin', () => {
  test('passes up to the tolerance, on both sides', () => {
    for (const ours of [9.5, 10, 10.5]) expectWithin(ours, 10, 0.5, 'Handbook, table 1');
    expectWithin(10, 10, 0, 'Handbook, table 1');
  });

  test.each([9.4999, 10.5001, Number.NaN, Number.POSITIVE_INFINITY, null, undefined, '10'])(
    'fails for %s',
    (ours) => {
      expect(() => expectWithin(ours, 10, 0.5, 'Handbook, table 1')).toThrow(
        `Handbook, table 1: ours is ${String(ours)}, published 10 ± 0.5`,
      );
    },
  );

  test.each([
    [Number.NaN, 0.5],
    [10, Number.NaN],
    [10, Number.POSITIVE_INFINITY],
    [10, -1],
  ])('does not pass for comparing with %s ± %s', (published, tolerance) => {
    expect(() => expectWithin(10, published, tolerance, 'Handbook, table 1')).toThrow('nothing is checked');
  });

  test('asks for the source', () => {
    expect(() => expectWithin(10, 10, 0.5, ' ')).toThrow('requires the source');
  });
});

describe('inputArb', () => {
  const number = { kind: 'number', label: 'A', unit: 'mm', min: -5, max: 10 } as const;
  const rule = (holds: (input: { fromMm: number; toMm: number }) => boolean) =>
    ({
      id: 'demo/between',
      inputs: {
        fromMm: number,
        toMm: number,
        count: { ...number, integer: true },
        readingsMm: { ...number, kind: 'numbers', minItems: 1, maxItems: 3 },
        cut: { kind: 'choice', label: 'Cut', options: { flatsawn: 'Flatsawn', quartersawn: 'Quartersawn' } },
      },
      requires: [{ says: 'a condition', holds }],
    }) as unknown as AnyRule;
  const ordered = rule(({ fromMm, toMm }) => fromMm <= toMm);

  test('gives what the rule must answer, and nothing else', () => {
    const within = (x: unknown) => typeof x === 'number' && x >= -5 && x <= 10;
    fc.assert(
      fc.property(inputArb(ordered), ({ fromMm, toMm, count, readingsMm, cut }) => {
        const readings = readingsMm as number[];
        expect([fromMm, toMm, count, ...readings].every(within)).toBe(true);
        expect(Number(fromMm)).toBeLessThanOrEqual(Number(toMm));
        expect(Number.isInteger(count)).toBe(true);
        expect(readings.length >= 1 && readings.length <= 3).toBe(true);
        expect(['flatsawn', 'quartersawn']).toContain(cut);
      }),
    );
  });

  test('reaches both limits, −0, and every quarter of what lies between', () => {
    const values = fc
      .sample(inputArb(rule(() => true)), { numRuns: 400, seed: 3 })
      .map(({ fromMm }) => Number(fromMm));
    expect(values).toContain(-5);
    expect(values).toContain(10);
    expect(values.some((x) => Object.is(x, -0))).toBe(true);
    const quarters = [0, 1, 2, 3].map((q) => values.filter((x) => Math.floor((x + 5) / 3.75) === q).length);
    expect(Math.min(...quarters)).toBeGreaterThan(40);
  });

  test('says so where conditions leave nothing', () => {
    expect(() => fc.sample(inputArb(rule(() => false)), 1)).toThrow('demo/between: the conditions refuse');
  });
});
