import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkLift } from '../src/index.ts';

const partsArb = fc.array(
  fc.record({ name: fc.string(), massKg: numberArb({ min: 0, max: 500 }) }, { noNullPrototype: true }),
  { minLength: 1, maxLength: 8 },
);

test('what is lifted and what is left make up the capacity, in whatever order the parts are named', () => {
  fc.assert(
    fc.property(partsArb, numberArb({ min: 1, max: 2000 }), (parts, capacityKg) => {
      const { liftedKg, marginKg, within, usedPct, heaviestFirst } = checkLift({ parts, capacityKg });
      expect(liftedKg + marginKg).toBeCloseTo(capacityKg, 6);
      expect(within).toBe(marginKg >= 0);
      expect((usedPct / 100) * capacityKg).toBeCloseTo(liftedKg, 6);
      expect(heaviestFirst.map(({ massKg }) => massKg)).toEqual(
        parts.map(({ massKg }) => massKg).sort((a, b) => b - a),
      );
      expect(checkLift({ parts: parts.toReversed(), capacityKg }).liftedKg).toBeCloseTo(liftedKg, 6);
    }),
  );
});

test('says what is wrong', () => {
  const part = { name: 'top', massKg: 38 };
  expect(() => checkLift({ parts: [], capacityKg: 100 })).toThrow(
    'checkLift requires parts to be a list of 1 to 100, got 0',
  );
  expect(() => checkLift({ parts: [part], capacityKg: 0 })).toThrow(
    'capacityKg between 0.001 and 100000, got 0',
  );
  expect(() => checkLift({ parts: [part, { name: 'base', massKg: -1 }], capacityKg: 9 })).toThrow(
    'checkLift requires parts[1].massKg between 0 and 100000, got -1',
  );
  expect(() => checkLift({ parts: [part, { massKg: 1 } as never], capacityKg: 9 })).toThrow(
    'checkLift requires parts[1].name to be a text, got undefined',
  );
});
