import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { compareBuying, comparePrices, type PricedBy } from '../src/index.ts';

const near = (ours: number, theirs: number, relative = 1e-9) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 + relative * Math.abs(theirs));

describe('prices in every unit', () => {
  const units: readonly PricedBy[] = ['m', 'ft', 'm²', 'ft²', 'm³', 'bd ft', 'kg', 'lb', 'stick'];
  const sectionArb = fc.record({
    thicknessMm: numberArb({ min: 1, max: 100 }),
    widthMm: numberArb({ min: 5, max: 500 }),
    densityKgPerM3: numberArb({ min: 300, max: 9000 }),
  });
  const offerArb = fc.record({
    name: fc.string(),
    pricedBy: fc.constantFrom(...units),
    unitPrice: numberArb({ min: 0.01, max: 1000 }),
    stickLengthMm: numberArb({ min: 300, max: 6000 }),
  });

  test('a metre costs what its width, volume and mass cost, by the units of a general library', () => {
    fc.assert(
      fc.property(sectionArb, offerArb, (section, offer) => {
        const [one] = comparePrices({ ...section, offers: [offer] });
        if (!one) throw new Error('An offer came back as none.');
        const volumeM3 = (section.thicknessMm * section.widthMm) / 1e6;
        near(one.perSquareMetrePrice * (section.widthMm / 1000), one.perMetrePrice);
        near(one.perCubicMetrePrice * volumeM3, one.perMetrePrice);
        near(one.perBoardFootPrice * (unit(volumeM3, 'm^3').toNumber('in^3') / 144), one.perMetrePrice);
        near(one.perKilogramPrice * volumeM3 * section.densityKgPerM3, one.perMetrePrice);
        near(one.perFootPrice * unit(1, 'm').toNumber('ft'), one.perMetrePrice);
        near(one.perStickPrice, (one.perMetrePrice * offer.stickLengthMm) / 1000);
        expect(one.dearerPct).toBe(0);
      }),
    );
  });

  test('offered again by what it costs in another unit, it costs the same', () => {
    fc.assert(
      fc.property(sectionArb, offerArb, (section, offer) => {
        const [one] = comparePrices({ ...section, offers: [offer] });
        if (!one) throw new Error('An offer came back as none.');
        const again: readonly (readonly [PricedBy, number])[] = [
          ['m', one.perMetrePrice],
          ['ft', one.perFootPrice],
          ['m²', one.perSquareMetrePrice],
          ['m³', one.perCubicMetrePrice],
          ['bd ft', one.perBoardFootPrice],
          ['kg', one.perKilogramPrice],
          ['stick', one.perStickPrice],
        ];
        for (const [pricedBy, unitPrice] of again) {
          if (!(unitPrice >= 1e-6 && unitPrice <= 1e6)) continue;
          const [same] = comparePrices({ ...section, offers: [{ ...offer, pricedBy, unitPrice }] });
          near(same?.perMetrePrice ?? Number.NaN, one.perMetrePrice);
        }
      }),
    );
  });

  test('the cheapest comes first, in whatever order they are offered', () => {
    fc.assert(
      fc.property(sectionArb, fc.array(offerArb, { minLength: 1, maxLength: 6 }), (section, offers) => {
        const prices = comparePrices({ ...section, offers }).map(({ perMetrePrice }) => perMetrePrice);
        expect(prices).toEqual([...prices].sort((a, b) => a - b));
        const turned = comparePrices({ ...section, offers: offers.toReversed() });
        expect(turned.map(({ perMetrePrice }) => perMetrePrice)).toEqual(prices);
      }),
    );
  });

  test('a price of nothing is refused', () => {
    const offer = { name: 'gift', pricedBy: 'm', unitPrice: 0, stickLengthMm: 1000 } as const;
    const section = { thicknessMm: 6, widthMm: 50, densityKgPerM3: 7850 };
    expect(() => comparePrices({ ...section, offers: [offer] })).toThrow(
      'comparePrices requires offers[0].unitPrice between 0.000001 and 1000000, got 0',
    );
    expect(() => comparePrices({ ...section, offers: [] })).toThrow('offers to be a list of 1 to 50, got 0');
    const byEll = { ...offer, unitPrice: 1, pricedBy: 'ell' as never };
    expect(() => comparePrices({ ...section, offers: [byEll] })).toThrow(
      'comparePrices requires offers[0].pricedBy to be one of m, ft',
    );
    const unnamed = { ...offer, unitPrice: 1, name: undefined as never };
    expect(() => comparePrices({ ...section, offers: [unnamed] })).toThrow(
      'comparePrices requires offers[0].name to be a text, got undefined',
    );
  });
});

describe('whole sticks or pieces', () => {
  const inputArb = fc
    .record({
      stickLengthMm: numberArb({ min: 500, max: 6000 }),
      stickCount: fc.integer({ min: 1, max: 40 }),
      usedShare: numberArb({ min: 0.01, max: 1 }),
      cutCount: fc.integer({ min: 0, max: 60 }),
      stickPrice: numberArb({ min: 0, max: 200 }),
      perMetrePrice: numberArb({ min: 0, max: 50 }),
      perCutPrice: numberArb({ min: 0, max: 10 }),
    })
    .map(({ usedShare, ...rest }) => ({ ...rest, usedMm: usedShare * rest.stickLengthMm * rest.stickCount }));

  test('what is used and what is left over make up the sticks, in length and in price', () => {
    fc.assert(
      fc.property(inputArb, (input) => {
        const { sticksPrice, usedPrice, leftoverPrice, leftoverMm } = compareBuying(input);
        near(usedPrice + leftoverPrice, sticksPrice);
        near(input.usedMm + leftoverMm, input.stickLengthMm * input.stickCount);
        near(sticksPrice, input.stickCount * input.stickPrice);
      }),
    );
  });

  test('with the leftover worth what it says, both ways cost the same', () => {
    fc.assert(
      fc.property(inputArb, (input) => {
        const { sticksPrice, piecesPrice, leftoverMm, leftoverPerMetrePrice, cheaper } = compareBuying(input);
        if (cheaper === 'pieces' && leftoverPerMetrePrice !== null && leftoverMm > 1) {
          near(sticksPrice - (leftoverPerMetrePrice * leftoverMm) / 1000, piecesPrice, 1e-7);
        } else {
          expect(leftoverPerMetrePrice ?? 0).toBeGreaterThanOrEqual(0);
        }
        expect(cheaper === 'pieces').toBe(piecesPrice < sticksPrice);
      }),
    );
  });

  test('sticks that are too short for the parts are refused', () => {
    const input = {
      cutCount: 2,
      stickLengthMm: 6000,
      stickCount: 1,
      stickPrice: 27,
      perMetrePrice: 5,
      perCutPrice: 1,
    };
    expect(() => compareBuying({ ...input, usedMm: 6001 })).toThrow(
      'compareBuying requires sticks that hold usedMm 6001, got 6000 mm of them',
    );
  });
});
