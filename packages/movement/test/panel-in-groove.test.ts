import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type PanelInGrooveInput, panelInGroove, widthChange } from '../src/index.ts';

const moisture = numberArb({ min: 0, max: 30 });
const inputArb: fc.Arbitrary<PanelInGrooveInput> = fc
  .record({
    openingMm: numberArb({ min: 50, max: 1500 }),
    grooveDepthMm: numberArb({ min: 0, max: 40 }),
    coverMm: numberArb({ min: 0, max: 15 }),
    gapMm: numberArb({ min: 0, max: 5 }),
    coefficientPerPct: numberArb({ min: 0, max: 0.006 }),
    buildingMoisturePct: moisture,
    moistures: fc.tuple(moisture, moisture),
    held: fc.constantFrom('middle' as const, 'edge' as const),
  })
  .map(({ moistures: [a, b], ...rest }) => ({
    ...rest,
    driestMoisturePct: Math.min(a, b),
    wettestMoisturePct: Math.max(a, b),
  }));

/** Cover and gap at each moving edge of a panel of some width at some moisture content. */
function edgesOf(given: PanelInGrooveInput, cutWidthMm: number, toMoisturePct: number) {
  const { openingMm, grooveDepthMm, coefficientPerPct, buildingMoisturePct: fromMoisturePct, held } = given;
  const change = widthChange({ widthMm: cutWidthMm, coefficientPerPct, fromMoisturePct, toMoisturePct });
  const widthMm = cutWidthMm + change.changeMm;
  // From the mouth of one groove: its bottom lies at −depth. A panel in the middle reaches as far past both mouths.
  const firstEdgeMm = held === 'middle' ? (openingMm - widthMm) / 2 : -grooveDepthMm;
  const lastEdgeMm = firstEdgeMm + widthMm;
  return { coverMm: lastEdgeMm - openingMm, gapMm: openingMm + grooveDepthMm - lastEdgeMm };
}

test('on no day of its life does the panel lose its cover or its gap', () => {
  let worked = 0;
  fc.assert(
    fc.property(inputArb, numberArb({ min: 0, max: 1 }), (given, day) => {
      const { cutWidthMm, leastCoverMm, leastGapMm, buildingDayGapMm } = panelInGroove(given);
      if (cutWidthMm === null || leastCoverMm === null || leastGapMm === null) return;
      worked += 1;
      const { driestMoisturePct, wettestMoisturePct, buildingMoisturePct } = given;
      const someDay = driestMoisturePct + day * (wettestMoisturePct - driestMoisturePct);
      for (const moisturePct of [driestMoisturePct, wettestMoisturePct, buildingMoisturePct, someDay]) {
        const { coverMm, gapMm } = edgesOf(given, cutWidthMm, moisturePct);
        expect(coverMm).toBeGreaterThanOrEqual(leastCoverMm - 1e-9);
        expect(gapMm).toBeGreaterThanOrEqual(leastGapMm - 1e-9);
      }
      expect(leastCoverMm).toBeGreaterThanOrEqual(given.coverMm - 1e-9);
      expect(leastGapMm).toBeGreaterThanOrEqual(given.gapMm - 1e-9);
      const built = edgesOf(given, cutWidthMm, buildingMoisturePct);
      expect(Math.abs(built.gapMm - (buildingDayGapMm ?? Number.NaN))).toBeLessThan(1e-9);
    }),
  );
  expect(worked).toBeGreaterThan(10);
});

test('where it says that no width works, none does', () => {
  let refused = 0;
  fc.assert(
    fc.property(inputArb, numberArb({ min: 0, max: 1 }), (given, share) => {
      const { cutWidthMm, marginMm } = panelInGroove(given);
      if (cutWidthMm !== null) return;
      refused += 1;
      expect(marginMm).toBeLessThan(0);
      const { openingMm, grooveDepthMm, driestMoisturePct, wettestMoisturePct, buildingMoisturePct } = given;
      const widthMm = openingMm + 2 * grooveDepthMm * share;
      const lowest = Math.min(driestMoisturePct, buildingMoisturePct);
      const highest = Math.max(wettestMoisturePct, buildingMoisturePct);
      const short = edgesOf(given, widthMm, lowest).coverMm < given.coverMm;
      expect(short || edgesOf(given, widthMm, highest).gapMm < given.gapMm).toBe(true);
    }),
  );
  expect(refused).toBeGreaterThan(10);
});

test('the same panel in a frame twice the size', () => {
  fc.assert(
    fc.property(inputArb, (given) => {
      const { openingMm, grooveDepthMm, coverMm, gapMm } = given;
      const twice = panelInGroove({
        ...given,
        openingMm: 2 * openingMm,
        grooveDepthMm: 2 * grooveDepthMm,
        coverMm: 2 * coverMm,
        gapMm: 2 * gapMm,
      });
      expect(Math.abs(twice.marginMm - 2 * panelInGroove(given).marginMm)).toBeLessThan(1e-9);
    }),
  );
});

test('the published allowance for a cherry panel is what its width may change by', () => {
  // Newsgroup on woodworking, panel expansion allowance: 12 in of flatsawn cherry, 8 to 12 %, "nearly 1/8 in", 0.12 in.
  // Built at its driest it needs that much room, and nothing else, in grooves that just take it.
  const { marginMm, buildingDayGapMm } = panelInGroove({
    openingMm: 12 * 25.4 - 12,
    grooveDepthMm: 6 + (0.12 * 25.4) / 2,
    coverMm: 6,
    gapMm: 0,
    coefficientPerPct: 0.00248,
    buildingMoisturePct: 8,
    driestMoisturePct: 8,
    wettestMoisturePct: 12,
    held: 'middle',
  });
  expectWithin(marginMm / 25.4, 0, 0.005, 'newsgroup, example 1');
  expectWithin((2 * (buildingDayGapMm ?? Number.NaN)) / 25.4, 0.12, 0.005, 'newsgroup, example 1');
});
