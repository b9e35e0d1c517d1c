import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { roughSize, surfaceMeasure, tallyLumber } from '../src/index.ts';

const IN = 25.4;
const FT = 304.8;
const near = (ours: number, theirs: number, relative = 1e-9) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-12 + relative * Math.abs(theirs));

const boardArb = fc.record({
  thicknessMm: numberArb({ min: 10, max: 120 }),
  widthMm: numberArb({ min: 50, max: 500 }),
  lengthMm: numberArb({ min: 500, max: 5000 }),
  count: fc.integer({ min: 1, max: 12 }),
});
/** Boards of whole inches and feet, among which halves are common. */
const inchBoardArb = fc.record({
  thicknessMm: fc.constantFrom(IN, 1.5 * IN, 2 * IN),
  widthMm: fc.integer({ min: 3, max: 15 }).map((inches) => inches * IN),
  lengthMm: fc.integer({ min: 4, max: 16 }).map((feet) => feet * FT),
  count: fc.integer({ min: 1, max: 5 }),
});

describe('a tally', () => {
  // American Hardwood Export Council, page on measurement: 6 1/4 in × 8 ft, 2 in thick: SM 4, 8 board feet.
  test('counts a board as the page on measurement does', () => {
    const board = { thicknessMm: 2 * IN, widthMm: 6.25 * IN, lengthMm: 8 * FT, count: 1 };
    const { surfaceFt2, soldBoardFt } = tallyLumber({ boards: [board] });
    expect(surfaceFt2).toBe(4);
    expect(soldBoardFt).toBeCloseTo(8, 9);
  });

  test('takes halves up and down by turns: what is counted stays within half a foot of what is there', () => {
    fc.assert(
      fc.property(fc.array(inchBoardArb, { minLength: 1, maxLength: 8 }), (boards) => {
        const singles = boards.flatMap((board) =>
          Array.from({ length: board.count }, () => ({ ...board, count: 1 })),
        );
        const whole = tallyLumber({ boards }).surfaceFt2;
        // One after the other, by hand.
        let up = true;
        let byHand = 0;
        for (const { widthMm, lengthMm } of singles) {
          const twelfths = Math.round(widthMm / IN) * Math.round(lengthMm / FT);
          const rest = twelfths % 12;
          byHand += Math.floor(twelfths / 12) + (rest > 6 || (rest === 6 && up) ? 1 : 0);
          if (rest === 6) up = !up;
        }
        expect(whole).toBe(byHand);
        expect(tallyLumber({ boards: singles }).surfaceFt2).toBe(byHand);
      }),
    );
  });

  test('has the volume of its boards, in board feet too where nothing is thin', () => {
    fc.assert(
      fc.property(fc.array(boardArb, { minLength: 1, maxLength: 5 }), (boards) => {
        const { volumeM3, nominalBoardFt, lines } = tallyLumber({ boards });
        const expected = boards.reduce(
          (sum, b) => sum + (b.thicknessMm * b.widthMm * b.lengthMm * b.count) / 1e9,
          0,
        );
        near(volumeM3, expected);
        const byVolume = unit(volumeM3, 'm^3').toNumber('in^3') / 144;
        expect(nominalBoardFt).toBeGreaterThanOrEqual(byVolume * (1 - 1e-9));
        if (boards.every(({ thicknessMm }) => thicknessMm >= IN)) near(nominalBoardFt, byVolume);
        expect(lines).toHaveLength(boards.length);
      }),
    );
  });

  test('surface measure is never half a foot away from the surface of the whole feet', () => {
    fc.assert(
      fc.property(boardArb, ({ widthMm, lengthMm }) => {
        const { surfaceFt2, halfDownFt2 } = surfaceMeasure({ widthMm, lengthMm });
        const exact = ((widthMm / IN) * Math.floor(lengthMm / FT)) / 12;
        expect(Math.abs(surfaceFt2 - exact)).toBeLessThanOrEqual(0.5 + 1e-8);
        expect(surfaceFt2 - halfDownFt2).toBeLessThanOrEqual(1);
        expect(surfaceFt2).toBeGreaterThanOrEqual(halfDownFt2);
      }),
    );
  });

  test('says what is wrong', () => {
    expect(() => tallyLumber({ boards: [] })).toThrow(
      'tallyLumber requires boards to be a list of 1 to 1000, got 0',
    );
    const board = { thicknessMm: IN, widthMm: 100, lengthMm: 1000, count: 1.5 };
    expect(() => tallyLumber({ boards: [board] })).toThrow(
      'tallyLumber requires boards[0].count a whole number between 1 and 10000, got 1.5',
    );
  });
});

describe('allowances', () => {
  const allowance = numberArb({ min: 0, max: 60 });
  const sizeArb = fc.record({
    name: fc.string(),
    lengthMm: allowance,
    widthMm: allowance,
    thicknessMm: allowance,
  });
  const inputArb = fc.record({
    lengthMm: numberArb({ min: 50, max: 3000 }),
    widthMm: numberArb({ min: 20, max: 1000 }),
    thicknessMm: numberArb({ min: 5, max: 120 }),
    count: fc.integer({ min: 1, max: 50 }),
    sizes: fc.array(sizeArb, { maxLength: 6 }),
    shares: fc.array(fc.record({ name: fc.string(), sharePct: numberArb({ min: 0, max: 20 }) }), {
      maxLength: 4,
    }),
  });

  test('what is bought goes into the pieces and the allowances, and nowhere else', () => {
    fc.assert(
      fc.property(inputArb, (input) => {
        const { boughtM3, finishedM3, yieldPct, wasted } = roughSize(input);
        near(finishedM3 + wasted.reduce((sum, { volumeM3 }) => sum + volumeM3, 0), boughtM3);
        near(yieldPct + wasted.reduce((sum, { sharePct }) => sum + sharePct, 0), 100);
        for (const { volumeM3 } of wasted) expect(volumeM3).toBeGreaterThanOrEqual(-1e-12);
        input.shares.forEach(({ sharePct }, i) => {
          near(wasted[input.sizes.length + i]?.sharePct ?? Number.NaN, sharePct);
        });
      }),
    );
  });

  test('their order changes who takes the corners, not what is bought', () => {
    fc.assert(
      fc.property(inputArb, (input) => {
        const turned = roughSize({
          ...input,
          sizes: input.sizes.toReversed(),
          shares: input.shares.toReversed(),
        });
        const { boughtM3, roughLengthMm } = roughSize(input);
        near(turned.boughtM3, boughtM3);
        near(turned.roughLengthMm, roughLengthMm);
      }),
    );
  });

  test('nothing is lost where nothing is allowed for', () => {
    const input = { lengthMm: 900, widthMm: 100, thicknessMm: 20, count: 3, sizes: [], shares: [] };
    expect(roughSize(input).yieldPct).toBe(100);
  });

  test('says what is wrong', () => {
    const input = { lengthMm: 900, widthMm: 100, thicknessMm: 20, count: 3, sizes: [], shares: [] };
    const half = { name: 'knots', sharePct: 60 };
    expect(() => roughSize({ ...input, shares: [half, half] })).toThrow(
      'roughSize requires shares to take at most 99 % together, got 120',
    );
    expect(() => roughSize({ ...input, widthMm: Number.NaN })).toThrow(
      'widthMm between 0.1 and 30000, got NaN',
    );
    expect(() => roughSize({ ...input, sizes: undefined as never })).toThrow(
      'sizes to be a list of at most 20',
    );
    expect(() => roughSize({ ...input, shares: [{ sharePct: 5 } as never] })).toThrow(
      'roughSize requires shares[0].name to be a text, got undefined',
    );
  });
});
