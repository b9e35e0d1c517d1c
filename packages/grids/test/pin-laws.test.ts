import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PinFitInput, pinFit } from '../src/index.ts';
import { fits, press, scattered, seasonsOfYear } from './pin-arbitraries.ts';

const shift = numberArb({ min: -100, max: 100 });

describe('pinFit, laws', () => {
  const some = fits(scattered);
  const margins = (input: PinFitInput) => {
    const fit = pinFit(input);
    return seasonsOfYear.flatMap((season) => [
      fit[season].worstCase.marginMm,
      fit[season].rootSumSquare.marginMm,
      fit[season].atMostMm,
    ]);
  };
  const expectSame = (one: number[], other: number[]) => {
    for (const [i, margin] of one.entries()) expect(margin).toBeCloseTo(other[i] ?? Number.NaN, 6);
  };
  const expectNoLess = (one: number[], other: number[]) => {
    for (const [i, margin] of one.entries())
      expect(margin).toBeGreaterThanOrEqual((other[i] ?? Number.NaN) - 1e-6);
  };

  test('the worst case is never better than the root-sum-square', () => {
    fc.assert(
      fc.property(some, (input) => {
        for (const { worstCase, rootSumSquare } of [pinFit(input).now, pinFit(input).shrunken]) {
          expect(worstCase.marginMm).toBeLessThanOrEqual(rootSumSquare.marginMm + 1e-9);
        }
      }),
    );
  });

  test('larger holes, thinner pins and truer places never hurt', () => {
    fc.assert(
      fc.property(some, numberArb({ min: 0, max: 1 }), (input, byMm) => {
        const { hole, pin } = input;
        const moved = (size: typeof hole, by: number) => ({
          lowerLimitMm: size.lowerLimitMm + by,
          upperLimitMm: size.upperLimitMm + by,
        });
        const before = margins(input);
        expectNoLess(margins({ ...input, hole: moved(hole, byMm) }), before);
        expectNoLess(margins({ ...input, pin: moved(pin, -byMm) }), before);
        expectNoLess(margins({ ...input, holePositionErrorMm: input.holePositionErrorMm * byMm }), before);
        expectNoLess(margins({ ...input, pinPositionErrorMm: input.pinPositionErrorMm * byMm }), before);
        expectNoLess(margins({ ...input, swellPct: input.swellPct * byMm }), before);
        expectNoLess(margins({ ...input, shrinkPct: input.shrinkPct * byMm }), before);
      }),
    );
  });

  test('one more pin never helps', () => {
    fc.assert(
      fc.property(some, (input) => {
        fc.pre(input.pins.length > 1);
        expectNoLess(margins({ ...input, pins: input.pins.slice(1) }), margins(input));
        expectNoLess(margins({ ...input, pins: input.pins.slice(0, -1) }), margins(input));
      }),
    );
  });

  test('where the body and the panel are counted from makes no difference, nor does the order of the pins', () => {
    fc.assert(
      fc.property(some, shift, shift, (input, byXMm, byYMm) => {
        const shifted = input.pins.map(({ xMm, yMm }) => ({ xMm: xMm + byXMm, yMm: yMm + byYMm }));
        const before = margins(input);
        expectSame(margins({ ...input, holes: input.pins }), before);
        expectSame(margins({ ...input, pins: shifted }), before);
        expectSame(margins({ ...input, pins: shifted, holes: input.pins }), before);
        expectSame(margins({ ...input, pins: [...input.pins].reverse() }), before);
      }),
    );
  });

  test('the mirror image of everything fits as well', () => {
    fc.assert(
      fc.property(some, (input) => {
        const mirrored = input.pins.map(({ xMm, yMm }) => ({ xMm, yMm: 280 - yMm }));
        expectSame(margins({ ...input, pins: mirrored }), margins(input));
      }),
    );
  });

  // What shrinking adds to what the same swelling does: it also narrows each hole, and swelling widens its error.
  test('swelling and shrinking by the same share differ by the hole itself', () => {
    fc.assert(
      fc.property(some, (input) => {
        const pins = input.pins.map(({ yMm }, i) => ({ xMm: 0, yMm: yMm + 320 * i }));
        const share = input.swellPct / 100;
        const { swollen, shrunken } = pinFit({ ...input, pins, shrinkPct: input.swellPct });
        const error = pins.length > 1 ? 2 * input.holePositionErrorMm * share : 0;
        const hole = input.hole.lowerLimitMm * share;
        expect(swollen.worstCase.marginMm + error - hole).toBeCloseTo(shrunken.worstCase.marginMm, 9);
      }),
    );
  });

  test('part of a season is no worse than the worse of its ends', () => {
    fc.assert(
      fc.property(some, numberArb({ min: 0, max: 1 }), (input, part) => {
        const whole = pinFit(input);
        const midway = pinFit({
          ...input,
          swellPct: input.swellPct * part,
          shrinkPct: input.shrinkPct * part,
        });
        for (const season of ['swollen', 'shrunken'] as const) {
          for (const kind of ['worstCase', 'rootSumSquare'] as const) {
            const worse = Math.min(whole.now[kind].marginMm, whole[season][kind].marginMm);
            expect(midway[season][kind].marginMm).toBeGreaterThanOrEqual(worse - 1e-6);
          }
        }
      }),
    );
  });

  test('with no season all three times are now', () => {
    fc.assert(
      fc.property(some, (input) => {
        const { now, swollen, shrunken } = pinFit({ ...input, swellPct: 0, shrinkPct: 0 });
        expect(swollen).toEqual(now);
        expect(shrunken).toEqual(now);
      }),
    );
  });

  test('inches and millimetres agree', () => {
    const scaled = (value: unknown, times: number): unknown => {
      if (Array.isArray(value)) return value.map((one) => scaled(one, times));
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(
        Object.entries(value).map(([name, part]) => [
          name,
          name.endsWith('Mm') && typeof part === 'number' ? part * times : scaled(part, times),
        ]),
      );
    };
    fc.assert(
      fc.property(some, (input) => {
        const inInches = margins(scaled(input, 1 / 25.4) as PinFitInput).map((margin) => margin * 25.4);
        expectSame(inInches, margins(input));
      }),
    );
  });

  test('what it is given is left alone', () => {
    const given = { ...press, pins: [{ xMm: 0, yMm: 0 }], holes: [{ xMm: 1, yMm: 1 }] };
    const before = structuredClone(given);
    pinFit(given);
    expect(given).toEqual(before);
  });
});
