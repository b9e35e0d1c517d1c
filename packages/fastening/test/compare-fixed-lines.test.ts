import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  compareFixedLines,
  type FixedLineChoice,
  type FixedLineComparison,
  type FixingPlan,
  planFixings,
} from '../src/index.ts';
import { inputArb, kindArbs } from './fixing-arbitraries.ts';

const middleOf = ({ choices }: FixedLineComparison) =>
  choices.find(({ line }) => line === 'middle') as FixedLineChoice;

const fresh = kindArbs.screw.map(() => ({ kind: 'screw' as const }));

test('no line anywhere has a shorter longest swing, or a shorter longest slot cut anew, than the middle', () => {
  fc.assert(
    fc.property(inputArb(fresh), (input) => {
      const { plan } = middleOf(compareFixedLines(input));
      const slotMm = ({ fixings }: FixingPlan) =>
        Math.max(...fixings.map(({ fit }) => (fit.kind === 'opening' ? fit.lengthMm : 0)));
      for (let n = 0; n <= 120; n++) {
        const other = planFixings({ ...input, fixedLine: { yMm: -100 + 10 * n } });
        expect(other.longestSwingMm).toBeGreaterThanOrEqual(plan.longestSwingMm - 1e-9);
        expect(slotMm(other)).toBeGreaterThanOrEqual(slotMm(plan) - 1e-9);
      }
    }),
  );
});

test('it names the line that swings least among those that hold the top, and none where none holds it', () => {
  const seen = { held: 0, loose: 0 };
  fc.assert(
    fc.property(inputArb(), (input) => {
      const { choices, leastSwing } = compareFixedLines(input);
      const held = choices.filter(({ plan }) => plan.holding.length > 0);
      seen[leastSwing ? 'held' : 'loose'] += 1;
      expect(leastSwing === null).toBe(held.length === 0);
      if (!leastSwing) return;
      expect(held).toContain(leastSwing);
      for (const { plan } of held) {
        expect(leastSwing.plan.longestSwingMm).toBeLessThanOrEqual(plan.longestSwingMm);
      }
    }),
  );
  expect(Math.min(seen.held, seen.loose)).toBeGreaterThan(5);
});

test('each choice is the plan for its line, from front to back, every row once', () => {
  fc.assert(
    fc.property(inputArb(), (input) => {
      const comparison = compareFixedLines(input);
      const { choices } = comparison;
      for (const { plan } of choices) {
        expect(plan).toEqual(planFixings({ ...input, fixedLine: { yMm: plan.fixedLineYMm } }));
      }
      const lines = choices.map(({ plan }) => plan.fixedLineYMm);
      expect(lines).toEqual([...lines].sort((a, b) => a - b));
      expect(lines.some((yMm, i) => i > 0 && yMm - (lines[i - 1] as number) <= 1e-9)).toBe(false);
      for (const { yMm } of input.fixings) {
        expect(lines.filter((lineMm) => Math.abs(lineMm - yMm) <= 1e-9)).toHaveLength(1);
      }
      expect(choices.filter(({ line }) => line === 'middle')).toHaveLength(1);
      expect(middleOf(comparison).plan).toEqual(planFixings({ ...input, fixedLine: 'middle' }));
    }),
  );
});

test('a single row is the middle, and nothing travels', () => {
  const { choices } = compareFixedLines({
    top: { frontYMm: 0, backYMm: 600 },
    base: { frontYMm: 50, backYMm: 550 },
    fixings: [{ name: 'only', xMm: 0, yMm: 300, by: { kind: 'screw' } }],
    swellPct: 1,
    shrinkPct: 1,
    shankDiameterMm: 5,
    clearanceMm: 0.5,
  });
  expect(choices.map(({ line }) => line)).toEqual(['middle']);
  expect(choices.map(({ plan }) => plan.longestSwingMm)).toEqual([0]);
});

test('it refuses what planFixings refuses, in its own name', () => {
  expect(() => compareFixedLines(undefined as never)).toThrow(
    'compareFixedLines requires top.frontYMm between -5000 and 10000, got undefined',
  );
});
