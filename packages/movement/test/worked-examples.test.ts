import { rulesIn } from '@scantling/rules';
import { expect, test } from 'vitest';
import * as movement from '../src/index.ts';

/** Where each published example stands; that the rules give its figure, their law kit checks. */
const citations = rulesIn(movement).flatMap(({ examples }) =>
  examples.flatMap(({ from }) => ('workedByHand' in from ? [] : [from])),
);

test('at least 15 worked examples stand beside figures that were seen in print, from at least 5 sources', () => {
  const seen = citations.filter(({ confirmed }) => confirmed === 'text');
  expect(seen.length).toBeGreaterThanOrEqual(15);
  expect(new Set(seen.map(({ source }) => source.id)).size).toBeGreaterThanOrEqual(5);
});

test('the others say that they are recalled from memory', () => {
  const others = citations.filter(({ confirmed }) => confirmed !== 'text');
  expect(others.length).toBeGreaterThan(0);
  expect(new Set(others.map(({ confirmed }) => confirmed))).toEqual(new Set(['memory']));
});
