import { fitStrip } from '@scantling/movement';
import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planStrip, type StripPlanInput } from '../src/index.ts';

const stripArb: fc.Arbitrary<StripPlanInput> = fc
  .record({
    lengthMm: numberArb({ min: 10, max: 3000 }),
    thicknessMm: numberArb({ min: 0.5, max: 13 }),
    endShare: numberArb({ min: 0, max: 0.49 }),
    pitchShare: numberArb({ min: 0.03, max: 1.2 }),
    fixed: fc.constantFrom('first' as const, 'middle' as const, 'last' as const),
    shankDiameterMm: numberArb({ min: 0.5, max: 8 }),
    headMm: fc.tuple(numberArb({ min: 0, max: 9 }), numberArb({ min: 0, max: 5 })),
    headBelowFaceMm: numberArb({ min: 0, max: 1 }),
    outgrowShares: fc.tuple(numberArb({ min: 0, max: 0.03 }), numberArb({ min: 0, max: 0.03 })),
    toleranceMm: numberArb({ min: 0, max: 0.7 }),
    clearanceMm: numberArb({ min: 0, max: 1 }),
    endClearanceMm: numberArb({ min: 0, max: 1 }),
  })
  .map(
    ({
      lengthMm,
      thicknessMm,
      endShare,
      pitchShare,
      fixed,
      shankDiameterMm,
      headMm,
      outgrowShares,
      ...rest
    }) => ({
      ...rest,
      strip: { lengthMm, thicknessMm },
      screws: {
        endDistanceMm: lengthMm * endShare,
        mostPitchMm: Math.max(1, lengthMm * pitchShare),
        fixed,
        shankDiameterMm,
        headDiameterMm: shankDiameterMm + headMm[0],
        headHeightMm: headMm[1],
      },
      metalOutgrowsMm: lengthMm * outgrowShares[0],
      woodOutgrowsMm: lengthMm * outgrowShares[1],
    }),
  );

/** By how much the wood has outgrown each mm of the strip on some days, both ends of the year among them. */
const daysOf = ({ metalOutgrowsMm, woodOutgrowsMm, strip }: StripPlanInput, share: number) =>
  [-metalOutgrowsMm, 0, woodOutgrowsMm, share * (metalOutgrowsMm + woodOutgrowsMm) - metalOutgrowsMm].map(
    (mm) => mm / strip.lengthMm,
  );

const day = numberArb({ min: 0, max: 1 });

const heldAt = (input: StripPlanInput, screws: readonly { atMm: number }[]) => {
  const at = { first: 0, middle: Math.floor((screws.length - 1) / 2), last: screws.length - 1 };
  return screws[at[input.screws.fixed]]?.atMm as number;
};

describe('the screws of a strip', () => {
  test('each slot holds its shank, and each countersink its head, with the clearance, all year', () => {
    let slots = 0;
    fc.assert(
      fc.property(stripArb, day, (input, share) => {
        const { screws } = planStrip(input);
        const heldMm = heldAt(input, screws);
        const { shankDiameterMm, headDiameterMm } = input.screws;
        for (const { atMm, slot } of screws) {
          // The screw stays in the wood; seen from the strip it moves with the wood about the screw that is fixed.
          const moved = daysOf(input, share).map((each) => Math.abs(atMm - heldMm) * each);
          if (slot === null) {
            expect(Math.max(...moved.map(Math.abs))).toBeLessThanOrEqual(input.toleranceMm + 1e-9);
            continue;
          }
          slots += 1;
          for (const mm of moved) {
            const fromInnerMm = slot.screwFromInnerEndMm + mm;
            const room = Math.min(fromInnerMm, slot.lengthMm - fromInnerMm) - shankDiameterMm / 2;
            expect(room).toBeGreaterThanOrEqual(input.clearanceMm - 1e-9);
            const beyondMm = (slot.countersinkLengthMm - slot.lengthMm) / 2;
            const headRoom =
              Math.min(fromInnerMm, slot.lengthMm - fromInnerMm) + beyondMm - headDiameterMm / 2;
            expect(headRoom).toBeGreaterThanOrEqual(input.clearanceMm - 1e-9);
          }
        }
        expect(screws.find(({ atMm }) => atMm === heldMm)).toMatchObject({ slot: null, outMm: 0, inMm: 0 });
      }),
    );
    expect(slots).toBeGreaterThan(100);
  });

  test('they stand at one pitch, no wider than allowed, and with one screw fewer it would be wider', () => {
    fc.assert(
      fc.property(stripArb, (input) => {
        const { pitchMm, screws } = planStrip(input);
        const { endDistanceMm, mostPitchMm } = input.screws;
        const betweenMm = input.strip.lengthMm - 2 * endDistanceMm;
        expect(screws[0]?.atMm).toBeCloseTo(endDistanceMm, 9);
        expect(screws.at(-1)?.atMm).toBeCloseTo(input.strip.lengthMm - endDistanceMm, 9);
        expect(pitchMm * (screws.length - 1)).toBeCloseTo(betweenMm, 9);
        expect(pitchMm).toBeLessThanOrEqual(mostPitchMm * (1 + 1e-8));
        if (screws.length > 2) expect(betweenMm / (screws.length - 2)).toBeGreaterThan(mostPitchMm);
      }),
    );
  });

  test('turned end for end, the plan turns with it', () => {
    fc.assert(
      fc.property(stripArb, (input) => {
        const { fixed } = input.screws;
        if (fixed === 'middle') return;
        const other = planStrip({
          ...input,
          screws: { ...input.screws, fixed: fixed === 'first' ? 'last' : 'first' },
        });
        const plan = planStrip(input);
        expect(other.start.gapMm).toBeCloseTo(plan.end.gapMm, 9);
        expect(other.end.mostGapMm).toBeCloseTo(plan.start.mostGapMm, 9);
        for (const [i, { outMm, inMm }] of [...plan.screws].reverse().entries()) {
          expect(other.screws[i]?.outMm).toBeCloseTo(outMm, 9);
          expect(other.screws[i]?.inMm).toBeCloseTo(inMm, 9);
        }
      }),
    );
  });
});

test('at neither end does the strip come nearer to the wood than the clearance, and its gap opens no wider than said', () => {
  fc.assert(
    fc.property(stripArb, day, (input, share) => {
      const { screws, start, end, recessLengthMm } = planStrip(input);
      const heldMm = heldAt(input, screws);
      for (const [gap, distanceMm] of [
        [start, heldMm],
        [end, input.strip.lengthMm - heldMm],
      ] as const) {
        for (const each of daysOf(input, share)) {
          const gapMm = gap.gapMm + distanceMm * each;
          expect(gapMm).toBeGreaterThanOrEqual(input.endClearanceMm - 1e-9);
          expect(gapMm).toBeLessThanOrEqual(gap.mostGapMm + 1e-9);
        }
      }
      expect(recessLengthMm).toBeCloseTo(start.gapMm + input.strip.lengthMm + end.gapMm, 9);
    }),
  );
});

const guide: StripPlanInput = {
  strip: { lengthMm: 1500, thicknessMm: 5 },
  screws: {
    endDistanceMm: 0,
    mostPitchMm: 250,
    fixed: 'first',
    shankDiameterMm: 4,
    headDiameterMm: 8,
    headHeightMm: 2.4,
  },
  headBelowFaceMm: 0.2,
  metalOutgrowsMm: 0.4,
  woodOutgrowsMm: 0.45,
  toleranceMm: 0.1,
  clearanceMm: 0.2,
  endClearanceMm: 0,
};

// Sugar maple beside brass, figures of Wood Handbook and of tables of thermal expansion: as in the docstring of fitStrip.
const inMaple = {
  strip: { lengthMm: 1500, widthMm: 20, expansionUmPerMK: 19 },
  wood: { alongPerPct: 0.0000668, acrossPerPct: 0.00353, alongUmPerMK: 3.8, acrossUmPerMK: 39.8 },
  buildingDay: { moisturePct: 8, temperatureC: 20 },
  year: { driestMoisturePct: 6, wettestMoisturePct: 11, coldestTemperatureC: 14, warmestTemperatureC: 28 },
  heldAtMm: 0,
  toleranceMm: 0.2,
};

test.each(['along the grain', 'across the grain'] as const)(
  '%s, gap and travel at the free end are those of the strip in its wood',
  (runs) => {
    const { length } = fitStrip({ ...inMaple, runs });
    const { metalOutgrowsMm, woodOutgrowsMm } = length;
    const { end, screws } = planStrip({ ...guide, metalOutgrowsMm, woodOutgrowsMm });
    expect(end.gapMm).toBeCloseTo(length.end.gapMm, 9);
    expect(end.mostGapMm).toBeCloseTo(length.end.travelMm, 9);
    const last = screws.at(-1);
    expect((last?.outMm as number) + (last?.inMm as number)).toBeCloseTo(length.end.travelMm, 9);
  },
);

test('along the grain the last slot is a matter of tenths; across it of many millimetres, by hand', () => {
  // Along: 8 K warmer, 2 % drier: 1500 × ((19 − 3.8) × 8e-6 + 0.0000668 × 2) = 0.3828 mm; 6 K colder, 3 % wetter:
  // 1500 × ((19 − 3.8) × 6e-6 + 0.0000668 × 3) = 0.4374 mm. Slot 4 + 0.3828 + 0.4374 + 2 × 0.2 = 5.2202 mm.
  const along = planStrip({ ...guide, metalOutgrowsMm: 0.3828, woodOutgrowsMm: 0.4374 });
  expect(along.screws.at(-1)?.slot?.lengthMm).toBeCloseTo(5.2202, 4);
  // Across, 3 % wetter alone: 1500 × 0.00353 × 3 = 15.885 mm.
  const across = planStrip({ ...guide, metalOutgrowsMm: 0, woodOutgrowsMm: 15.885 });
  expect(across.screws.at(-1)?.slot?.lengthMm).toBeCloseTo(4 + 15.885 + 0.4, 9);
  expect(across.screws.filter(({ slot }) => slot !== null)).toHaveLength(6);
});

test('it says how to hold metal that is drilled and slotted', () => {
  expect(planStrip(guide).cautions.some((each) => each.startsWith('Clamp metal'))).toBe(true);
});

test('a head higher than the strip is thick asks for a countersink in the wood', () => {
  const thin = planStrip({ ...guide, strip: { lengthMm: 1500, thicknessMm: 2 } });
  expect(thin.countersinkInWoodMm).toBeCloseTo(2.4 + 0.2 - 2, 9);
  expect(planStrip(guide).countersinkInWoodMm).toBe(0);
});

describe('refusals name what is wrong', () => {
  const { screws } = guide;
  const cases: [string, object, string][] = [
    [
      'nothing',
      { strip: undefined },
      'planStrip requires strip.lengthMm between 10 and 20000, got undefined',
    ],
    [
      'ends that meet',
      { screws: { ...screws, endDistanceMm: 750 } },
      'planStrip requires screws.endDistanceMm below half',
    ],
    [
      'a head below its shank',
      { screws: { ...screws, headDiameterMm: 3 } },
      'planStrip requires screws.headDiameterMm between 4',
    ],
    [
      'screws without end',
      { screws: { ...screws, mostPitchMm: 1 } },
      'planStrip requires screws.mostPitchMm to make at most 1000',
    ],
    ['no such screw', { screws: { ...screws, fixed: 'both' } }, 'planStrip requires screws.fixed'],
    [
      'wood that doubles',
      { woodOutgrowsMm: 301 },
      'planStrip requires woodOutgrowsMm between 0 and 300, got 301',
    ],
    ['no tolerance', { toleranceMm: Number.NaN }, 'planStrip requires toleranceMm between 0 and 50, got NaN'],
  ];
  test.each(cases)('%s', (_, change, message) => {
    const input = { ...guide, ...change } as StripPlanInput;
    expect(() => planStrip(input)).toThrow(RangeError);
    expect(() => planStrip(input)).toThrow(message);
  });
});
