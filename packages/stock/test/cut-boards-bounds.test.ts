import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaBounds, valueBounds } from '../src/boards/bounds.ts';
import { filledBy } from '../src/boards/filled.ts';
import { jobOf } from '../src/boards/job.ts';
import { mostOfBoard } from '../src/boards/most-of-board.ts';
import type { BoardCutting } from '../src/index.ts';
import { tinyJobs } from './board-arbitraries.ts';
import { bestOfEveryWay } from './every-way-to-cut.ts';

const steps = fc.constantFrom(0, 3, 10, 30, 100, 300, 1000);

const board = (id: string, lengthMm: number, boardPrice: number) => ({
  ...{ id, lengthMm, widthMm: 100, boardPrice, defects: [] },
});

describe('what cutBoards holds for proven, however little work is allowed', () => {
  test('no board gives more than the most found for it', () => {
    const tally = { met: 0, above: 0 };
    fc.assert(
      fc.property(tinyJobs, steps, (given, some) => {
        const job = jobOf(given);
        for (const blank of job.blanks) {
          const boards = given.boards.filter((_, i) => i === blank.index);
          const { value } = bestOfEveryWay({ ...given, boards });
          const most = mostOfBoard(job, blank, some);
          expect(most).toBeGreaterThanOrEqual(value);
          const near = most - value < 1e-6;
          tally.met += Number(near && value > 0);
          tally.above += Number(!near);
        }
      }),
      { numRuns: 60 },
    );
    expect(tally.met).toBeGreaterThan(20);
    expect(tally.above).toBeGreaterThan(5);
  });

  test.each(['area', 'value'] as const)('no plan passes what the %s of parts tells', (by) => {
    let priced = 0;
    fc.assert(
      fc.property(tinyJobs, (given) => {
        const job = jobOf(given);
        const bounds =
          by === 'area'
            ? areaBounds(job)
            : valueBounds(
                job,
                job.blanks.map((blank) => mostOfBoard(job, blank, 1000)),
              );
        const { value, price } = bestOfEveryWay(given);
        const enough = value * (1 - 1e-9);
        expect(bounds.mostValue).toBeGreaterThanOrEqual(enough);
        expect(bounds.leastPrice(enough)).toBeLessThanOrEqual(price + 1e-9);
        expect(bounds.mayHold([...job.blanks.keys()], enough)).toBe(true);
        for (const [at, blank] of job.blanks.entries()) {
          const boards = given.boards.filter((_, i) => i === blank.index);
          const one = bestOfEveryWay({ ...given, boards }).value;
          expect(bounds.mayHold([at], one * (1 - 1e-9))).toBe(true);
        }
        priced += Number(bounds.leastPrice(enough) > 0);
      }),
      { numRuns: 60 },
    );
    expect(priced).toBeGreaterThan(25);
  });

  test('a board that no part fits gives nothing, and is no end of work', () => {
    const given: BoardCutting = {
      parts: [{ id: 'part', lengthMm: 500, widthMm: 60, count: 1, grain: 'along the board' }],
      boards: [board('long', 900, 10), board('scrap', 200, 1)],
      ...{ kerfMm: 3, endTrimMm: 0, edgeTrimMm: 0, firstCut: 'across' },
    };
    const job = jobOf(given);
    const mosts = job.blanks.map((blank) => [blank.index, Math.round(mostOfBoard(job, blank, 1000))]);
    expect(new Map(mosts as [number, number][])).toEqual(
      new Map([
        [0, 30_000],
        [1, 0],
      ]),
    );
  });

  test('whole parts in a row fill no more of a length than is said, and just that where lengths are few', () => {
    const sides = fc.array(fc.tuple(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 3 })), {
      ...{ minLength: 1, maxLength: 6 },
    });
    fc.assert(
      fc.property(sides, fc.nat(30), fc.constantFrom(1000, 3700, 9000), (parts, kerf, most) => {
        const kinds = parts.map(([along, count]) => ({
          ...{ along, across: 1, turns: false, value: 1 },
          ids: Array<string>(count).fill('part'),
        }));
        let sums = new Set([0]);
        for (const { along, ids } of kinds) {
          for (const _ of ids) sums = new Set([...sums].flatMap((sum) => [sum, sum + along + kerf]));
        }
        const filled = filledBy(kinds, 'across', kerf, most);
        for (let length = 0; length <= most; length += 37) {
          const truly = [...sums].reduce((best, sum) => (sum <= length ? Math.max(best, sum) : best), 0);
          expect(filled(length)).toBeGreaterThanOrEqual(truly);
          expect(filled(length)).toBeLessThanOrEqual(length);
          if (most === 1000) expect(filled(length)).toBe(truly);
        }
      }),
    );
  });
});
