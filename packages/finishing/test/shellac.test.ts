import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  shellacCut,
  shellacCutRule,
  shellacFlakes,
  shellacFlakesRule,
  shellacThinning,
  shellacThinningRule,
} from '../src/index.ts';
import { printedShellacThinning as cells } from './printed-shellac-thinning.ts';

const close = (ours: number, theirs: number) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * Math.abs(theirs) + 1e-12);

const PINT_ML = unit(1, 'pint').toNumber('ml');
const OUNCE_G = unit(1, 'oz').toNumber('g');
const LB_PER_GAL = unit(1, 'lb/gal').toNumber('g/L');

// Source: `pound-cut-answer`, as text: a 3-lb cut is 6 ounces of flakes in a pint of alcohol, a 1-lb cut 2 ounces. The
// cuts between, 1.5, 2 and 2.5 lb at 3, 4 and 5 ounces, from memory.
test.each([
  [1, 2],
  [1.5, 3],
  [2, 4],
  [2.5, 5],
  [3, 6],
])('a %f-lb cut is %f ounces to the pint', (cutLbPerGal, ounces) => {
  const mix = { cutLbPerGal, alcoholMl: PINT_ML, flakeDensityGPerL: 1100, cutPer: 'alcohol' as const };
  expectWithin(shellacFlakes(mix).flakesG / OUNCE_G, ounces, 1e-9, 'ounces to the pint');
});

// Source: the units database of GNU units, poundcut = pound/gallon.
test('a pound cut is a pound to the gallon', () => {
  const { perAlcoholLbPerGal } = shellacCut({
    flakesG: LB_PER_GAL,
    alcoholMl: 1000,
    flakeDensityGPerL: 1100,
  });
  expectWithin(perAlcoholLbPerGal, 1, 1e-12, 'poundcut');
});

describe('a table of a woodworking magazine', () => {
  // Its own note: 2 lb of flakes in a gallon make 1.2 gal, 3 lb roughly 1.3, 4 lb 1.4. So a pound takes a tenth of a gallon.
  const flakeDensityGPerL = 10 * LB_PER_GAL;

  test('its note on how much room the flakes take', () => {
    const gallon = unit(1, 'gal').toNumber('ml');
    for (const [cutLbPerGal, gallons] of [
      [2, 1.2],
      [3, 1.3],
      [4, 1.4],
    ] as const) {
      const { solutionMl } = shellacFlakes({
        cutLbPerGal,
        alcoholMl: gallon,
        flakeDensityGPerL,
        cutPer: 'alcohol',
      });
      expectWithin(solutionMl / gallon, gallons, 1e-9, 'note to the table');
    }
  });

  test('its parts, to 0.15 of a part or a twentieth, but for five', () => {
    expect(cells).toHaveLength(27);
    const apart = cells.filter(([fromCutLbPerGal, toCutLbPerGal, parts]) => {
      const ours = shellacThinning({
        solutionMl: 1,
        fromCutLbPerGal,
        toCutLbPerGal,
        flakeDensityGPerL,
        cutPer: 'alcohol',
      }).alcoholMl;
      return !(Math.abs(ours - parts) <= Math.max(0.05 * parts, 0.15));
    });
    expect(apart).toEqual([
      [1, 0.25, 3], // 2.7
      [2, 0.25, 5], // 5.8
      [2, 0.5, 2], // 2.5
      [2, 1, 2 / 3], // 5/6: the note counts the gallon of the one as solution and of the other as alcohol.
      [5, 3, 7 / 8], // 4/9: out of line with the table’s own neighbours.
    ]);
    const off = cells.map(([fromCutLbPerGal, toCutLbPerGal, parts]) => {
      const { alcoholMl } = shellacThinning({
        solutionMl: 1,
        fromCutLbPerGal,
        toCutLbPerGal,
        flakeDensityGPerL,
        cutPer: 'alcohol',
      });
      return Math.abs(alcoholMl - parts);
    });
    // As the docstring says: a quarter part, but for a few cells of up to 0.83.
    expectWithin(Math.max(...off), 0.83, 0.005, 'the worst cell');
    expect(off.filter((parts) => parts > 0.26).length).toBeLessThanOrEqual(6);
  });
});

test('each rule on shellac warns of methanol', () => {
  for (const rule of [shellacCutRule, shellacFlakesRule, shellacThinningRule]) {
    expect(rule.cautions?.join(' ')).toContain('methanol');
  }
});

describe('laws', () => {
  const mix = fc.record({
    cutLbPerGal: numberArb({ min: 0.1, max: 6 }),
    alcoholMl: numberArb({ min: 1, max: 5000 }),
    flakeDensityGPerL: numberArb({ min: 900, max: 1300 }),
    cutPer: fc.constantFrom('alcohol' as const, 'solution' as const),
  });

  test('flakes that are weighed for a cut have that cut', () => {
    fc.assert(
      fc.property(mix, (input) => {
        const { flakesG } = shellacFlakes(input);
        fc.pre(flakesG <= 50_000);
        const { perAlcoholLbPerGal, perSolutionLbPerGal } = shellacCut({ ...input, flakesG });
        close(input.cutPer === 'alcohol' ? perAlcoholLbPerGal : perSolutionLbPerGal, input.cutLbPerGal);
        expect(perSolutionLbPerGal).toBeLessThanOrEqual(perAlcoholLbPerGal);
      }),
    );
  });

  test('keeps mass and volume: the solution is the alcohol and the flakes', () => {
    fc.assert(
      fc.property(mix, (input) => {
        const { flakesG, solutionMl } = shellacFlakes(input);
        close(solutionMl, input.alcoholMl + flakesG / (input.flakeDensityGPerL / 1000));
        fc.pre(flakesG <= 50_000);
        close((shellacCut({ ...input, flakesG }).concentrationGPerL * solutionMl) / 1000, flakesG);
      }),
    );
  });

  test('shellac that is thinned is what one would have mixed with all the alcohol at once', () => {
    fc.assert(
      fc.property(mix, numberArb({ min: 0.5, max: 1 }), (input, share) => {
        const toCutLbPerGal = input.cutLbPerGal * share;
        fc.pre(toCutLbPerGal >= 0.1);
        const { flakesG, solutionMl } = shellacFlakes(input);
        fc.pre(flakesG <= 50_000 && solutionMl <= 100_000);
        const { alcoholMl } = shellacThinning({
          ...input,
          solutionMl,
          fromCutLbPerGal: input.cutLbPerGal,
          toCutLbPerGal,
        });
        const after = shellacCut({ ...input, flakesG, alcoholMl: input.alcoholMl + alcoholMl });
        close(
          input.cutPer === 'alcohol' ? after.perAlcoholLbPerGal : after.perSolutionLbPerGal,
          toCutLbPerGal,
        );
      }),
    );
  });
});
