import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareFixedLines, planFixings } from '../src/index.ts';
import { inputArb, kindArbs } from './fixing-arbitraries.ts';

test('no line anywhere has a shorter longest swing, or a shorter longest slot, than the middle of the extreme rows', () => {
  fc.assert(
    fc.property(inputArb(kindArbs.screw), (input) => {
      const { leastSwing } = compareFixedLines(input);
      const slot = ({ fixings }: { fixings: typeof leastSwing.plan.fixings }) =>
        Math.max(...fixings.map(({ fit }) => (fit.kind === 'opening' ? fit.neededMm : 0)));
      for (let n = 0; n <= 120; n++) {
        const other = planFixings({ ...input, fixedLine: { yMm: -100 + 10 * n } });
        expect(other.longestSwingMm).toBeGreaterThanOrEqual(leastSwing.plan.longestSwingMm - 1e-9);
        expect(slot(other)).toBeGreaterThanOrEqual(slot(leastSwing.plan) - 1e-9);
      }
    }),
  );
});

test('each choice is the plan for its line, from front to back, every row once', () => {
  fc.assert(
    fc.property(inputArb(), (input) => {
      const { choices, leastSwing } = compareFixedLines(input);
      for (const { plan } of choices) {
        expect(plan).toEqual(planFixings({ ...input, fixedLine: { yMm: plan.fixedLineYMm } }));
      }
      const lines = choices.map(({ plan }) => plan.fixedLineYMm);
      expect(lines).toEqual([...lines].sort((a, b) => a - b));
      expect(lines.some((yMm, i) => i > 0 && yMm - (lines[i - 1] as number) <= 1e-9)).toBe(false);
      for (const { yMm } of input.fixings) {
        expect(lines.filter((lineMm) => Math.abs(lineMm - yMm) <= 1e-9)).toHaveLength(1);
      }
      expect(choices.filter(({ line }) => line === 'middle')).toEqual([leastSwing]);
      expect(leastSwing.plan).toEqual(planFixings({ ...input, fixedLine: 'middle' }));
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
