import { csvParse } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cutList,
  type OfferedBoard,
  type Plan,
  planWorktop,
  shoppingList,
  shoppingPlan,
} from '../src/index.ts';
import { type Stock, withStock } from './whole-bench.ts';

const shop = (plan: Plan) => shoppingPlan(planWorktop(plan));

describe('laws', () => {
  const board = fc.record({
    lengthMm: fc.integer({ min: 1000, max: 5000 }),
    // Two strips of 136 mm and a cut do not go into 270.
    widthMm: fc.integer({ min: 120, max: 270 }),
    thicknessMm: fc.constantFrom(45, 51, 54),
    eachPrice: fc.integer({ min: 1000, max: 9000 }).map((cents) => cents / 100),
  });
  const boards = fc
    .array(board, { minLength: 1, maxLength: 7 })
    .map((all) => all.map((one, i): OfferedBoard => ({ ...one, name: `board ${i}`, defects: [] })));

  /** The least price of enough boards by trying every set of them; `null` where all are too few. */
  function leastPrice(offered: readonly OfferedBoard[]): number | null {
    const gives = offered.map(({ lengthMm, widthMm, thicknessMm }) =>
      widthMm >= 136 + 4 && thicknessMm > 50.45 ? Math.floor((lengthMm - 40 + 3) / (1529.55 + 3)) : 0,
    );
    const sets = Array.from({ length: 2 ** offered.length }, (_, set) =>
      offered.map((one, i) => ({ ...one, gives: gives[i] as number })).filter((_one, i) => (set >> i) % 2),
    );
    const prices = sets
      .filter((set) => set.reduce((sum, one) => sum + one.gives, 0) >= 5)
      .map((set) => set.reduce((sum, { eachPrice }) => sum + eachPrice, 0));
    return prices.length ? Math.min(...prices) : null;
  }

  test('no set of boards that gives enough costs less', () => {
    let found = 0;
    fc.assert(
      fc.property(boards, (offered) => {
        const least = leastPrice(offered);
        const { offer } = shop(withStock({ boards: offered })).boards ?? {};
        if (least === null) {
          expect(offer?.missingCount).toBeGreaterThan(0);
          return;
        }
        found += 1;
        expect(offer?.missingCount).toBe(0);
        expect(offer?.boundPrice).toBeLessThanOrEqual(least + 1e-6);
        expect(offer?.totalPrice).toBeGreaterThanOrEqual(least - 1e-6);
        if (offer?.proven) expect(offer.totalPrice).toBeCloseTo(least, 6);
      }),
      { numRuns: 100 },
    );
    expect(found).toBeGreaterThan(10);
  });

  test('what is cut and what is missing is what is needed, inside the trims and in one place each', () => {
    fc.assert(
      fc.property(boards, fc.integer({ min: 0, max: 3000 }), (offered, xMm) => {
        const knotty = offered.map((one) => ({
          ...one,
          defects: [{ xMm: Math.min(xMm, one.lengthMm - 50), yMm: 50, lengthMm: 50, widthMm: 20 }],
        }));
        const { offer } = shop(withStock({ boards: knotty })).boards ?? {};
        const cut = (offer?.buy ?? []).flatMap(({ parts }) => parts);
        expect(cut.length + (offer?.missingCount ?? 0)).toBe(5);
        for (const { parts, lengthMm, widthMm, boardId } of offer?.buy ?? []) {
          const knot = knotty.find(({ name }) => name === boardId)?.defects ?? [];
          for (const [i, part] of parts.entries()) {
            expect(part.xMm).toBeGreaterThanOrEqual(20 - 1e-6);
            expect(part.yMm).toBeGreaterThanOrEqual(2 - 1e-6);
            expect(part.xMm + part.lengthMm).toBeLessThanOrEqual(lengthMm - 20 + 1e-6);
            expect(part.yMm + part.widthMm).toBeLessThanOrEqual(widthMm - 2 + 1e-6);
            for (const other of [...knot, ...parts.slice(0, i)]) {
              const apart =
                part.xMm + part.lengthMm <= other.xMm + 1e-6 ||
                other.xMm + other.lengthMm <= part.xMm + 1e-6 ||
                part.yMm + part.widthMm <= other.yMm + 1e-6 ||
                other.yMm + other.widthMm <= part.yMm + 1e-6;
              expect(apart).toBe(true);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('every part of bar stock is cut or said to be too long, within its length, and no part twice', () => {
    const part = fc.record({
      section: fc.constantFrom('tube', 'flat'),
      lengthMm: fc.integer({ min: 50, max: 4000 }),
      count: fc.integer({ min: 1, max: 4 }),
    });
    const bars = fc.record({
      parts: fc.array(part, { minLength: 1, maxLength: 6 }),
      longestCarriedMm: fc.option(fc.integer({ min: 1500, max: 6000 }), { nil: undefined }),
    });
    fc.assert(
      fc.property(bars, ({ parts, longestCarriedMm }) => {
        const named = parts.map((one, i) => ({ ...one, name: `part ${i}` }));
        const offer = [
          { name: 'tube of 6 m', section: 'tube', lengthMm: 6000, eachPrice: 40 },
          { name: 'tube of 3 m', section: 'tube', lengthMm: 3000, eachPrice: 22 },
          { name: 'flat of 2 m', section: 'flat', lengthMm: 2000, eachPrice: 15 },
        ];
        const job = { kerfMm: 2, endTrimMm: 5, longestCarriedMm, parts: named, bars: offer };
        const { bars: bought } = shop(withStock({ bars: job }));
        const tooLong = bought.flatMap((one) => one.tooLong.map(({ name }) => name));
        for (const { name, count, section } of named) {
          const { cuts } = bought.find((one) => one.section === section) ?? { cuts: [] };
          const cut = cuts.reduce(
            (sum, bar) => sum + bar.count * bar.pieces.filter((piece) => piece.name === name).length,
            0,
          );
          expect(cut).toBe(tooLong.includes(name) ? 0 : count);
        }
        for (const { cuts, buy, totalPrice } of bought) {
          for (const { pieces, lengthMm } of cuts) {
            const taken = pieces.reduce((sum, piece) => sum + piece.lengthMm, 0);
            expect(taken + 2 * Math.max(0, pieces.length - 1)).toBeLessThanOrEqual(lengthMm - 10 + 1e-6);
            expect(lengthMm).toBeLessThanOrEqual(longestCarriedMm ?? 6000);
          }
          const paid = buy.reduce((sum, { count, eachPrice }) => sum + count * eachPrice, 0);
          expect(totalPrice).toBeCloseTo(paid, 9);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('any names come back from the lists as they were', () => {
    const name = fc
      .string({ minLength: 1, maxLength: 40, unit: 'grapheme' })
      .filter((text) => /^(?=.*\S)\P{Cc}*$/u.test(text) && text.length <= 40);
    fc.assert(
      fc.property(name, name, (boardName, liquid) => {
        fc.pre(liquid !== 'mineral spirits');
        const plan = withStock({ containers: [{ liquid, volumeMl: 500, eachPrice: 9 }] });
        const { boards: some = [] } = plan.stock ?? {};
        const [first, ...rest] = some;
        const named = {
          ...plan,
          finish: { ...plan.finish, product: { ...plan.finish.product, name: liquid } },
          stock: {
            ...(plan.stock as Stock),
            boards: [
              { ...(first as OfferedBoard), name: boardName },
              ...rest.map((one, i) => ({ ...one, name: `${boardName} ${i}` })),
            ],
          },
        };
        const result = planWorktop(named);
        const bought = csvParse(shoppingList(result)).map(({ item }) => item);
        expect(bought).toContain(`board ${boardName}`);
        expect(bought).toContain(liquid);
        expect(csvParse(cutList(result)).map(({ from }) => from)).toContain(boardName);
      }),
      { numRuns: 60 },
    );
  });
});
