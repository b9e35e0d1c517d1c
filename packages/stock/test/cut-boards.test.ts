import { describe, expect, test } from 'vitest';
import { type BoardCutting, cutBoards } from '../src/index.ts';
import { solveByHighs } from './general-solver.ts';
import { expectSound } from './saw.ts';

const clear = (id: string, lengthMm: number, widthMm: number, boardPrice: number) => ({
  ...{ id, lengthMm, widthMm, boardPrice, defects: [] },
});

const part = (id: string, lengthMm: number, widthMm: number, count = 1) =>
  ({ id, lengthMm, widthMm, count, grain: 'along the board' }) as const;

const terms = { kerfMm: 0, endTrimMm: 0, edgeTrimMm: 0, firstCut: 'across' } as const;

/**
 * Parts of given value from one rectangle, each as often as it says, not turned, by any guillotine cuts: data and proven
 * optimum as the tests of a published research model for this problem carry them (H. Becker, GuillotineModels.jl,
 * test/run_model_solving_tests.jl; seen). The first is an instance of Beasley (1985) with one of each piece, the second
 * of Christofides and Whitlock (1977), the third of Cung, Hifi and Le Cun (2000); the authors are from memory.
 */
const published = [
  {
    ...{ name: 'gcut1, one of each', lengthMm: 250, widthMm: 250, optimum: 48368 },
    pieces: [
      [167, 184, 30728, 1],
      [114, 118, 13452, 1],
      [167, 152, 25384, 1],
      [83, 140, 11620, 1],
      [70, 86, 6020, 1],
      [143, 166, 23738, 1],
      [120, 160, 19200, 1],
      [66, 148, 9768, 1],
      [87, 141, 12267, 1],
      [69, 165, 11385, 1],
    ],
  },
  {
    ...{ name: 'cgcut1', lengthMm: 15, widthMm: 10, optimum: 244 },
    pieces: [
      [8, 4, 66, 2],
      [3, 7, 35, 1],
      [8, 2, 24, 3],
      [3, 4, 17, 5],
      [3, 3, 11, 2],
      [3, 2, 8, 2],
      [2, 1, 2, 1],
    ],
  },
  {
    ...{ name: 'CHL5', lengthMm: 20, widthMm: 20, optimum: 390 },
    pieces: [
      [14, 2, 28, 1],
      [1, 5, 5, 1],
      [20, 4, 80, 2],
      [12, 3, 36, 3],
      [11, 8, 88, 2],
      [11, 6, 66, 2],
      [7, 9, 63, 1],
      [17, 5, 85, 1],
      [7, 14, 98, 2],
      [1, 7, 7, 3],
    ],
  },
];

describe('cutBoards', () => {
  test.each(published)('$name: the published optimum, proven', ({ lengthMm, widthMm, optimum, pieces }) => {
    const parts = pieces.map(([l = 0, w = 0, valuePrice = 0, count = 0], i) => ({
      ...part(`piece ${i}`, l, w, count),
      valuePrice,
    }));
    const total = parts.reduce((sum, { count, valuePrice }) => sum + count * valuePrice, 0);
    const job = {
      ...terms,
      parts,
      boards: [clear('plate', lengthMm, widthMm, 1)],
      firstCut: 'either',
    } as const;
    const plan = cutBoards(job);
    expectSound(job, plan);
    expect(plan.cutShare * total).toBeCloseTo(optimum, 6);
    expect(plan.proven).toBe(true);
    // Fewer ways to cut give no more.
    for (const firstCut of ['across', 'along'] as const) {
      const staged = cutBoards({ ...job, firstCut });
      expectSound({ ...job, firstCut }, staged);
      expect(staged.cutShare * total).toBeLessThanOrEqual(optimum + 1e-6);
    }
  });

  test('boards just as wide as the parts: the optimum of a general solver for cutting lengths', () => {
    let random = 20_260;
    const next = (below: number) => {
      random = (random * 48_271) % 2_147_483_647;
      return random % below;
    };
    for (let round = 0; round < 12; round += 1) {
      const kerfMm = [0, 3, 4][round % 3] as number;
      const boards = Array.from({ length: 3 + next(3) }, (_, i) =>
        clear(`board ${i}`, 900 + 10 * next(160), 80, 5 + next(20)),
      );
      const parts = Array.from({ length: 3 + next(3) }, (_, i) =>
        part(`part ${i}`, 150 + next(500), 80, 1 + next(2)),
      );
      const job: BoardCutting = { ...terms, kerfMm, parts, boards };
      const plan = cutBoards(job);
      expectSound(job, plan);
      expect(plan.proven).toBe(true);
      // How many of each part from each board: all of them, at least price.
      const cells = parts.map((_, p) => boards.map((_, b) => `x${p}_${b}`));
      const sum = (terms: string[]) => terms.join(' + ');
      const lp = [
        `Minimize\n cost: ${sum(boards.map(({ boardPrice }, b) => `${boardPrice} y${b}`))}\nSubject To`,
        ...parts.map(({ count }, p) => ` p${p}: ${sum(cells[p] as string[])} = ${count}`),
        ...boards.map(({ lengthMm }, b) => {
          const used = parts.map((one, p) => `${one.lengthMm + kerfMm} x${p}_${b}`);
          return ` b${b}: ${sum(used)} - ${lengthMm + kerfMm} y${b} <= 0`;
        }),
        `General\n ${cells.flat().join(' ')}\nBinary\n ${boards.map((_, b) => `y${b}`).join(' ')}\nEnd`,
      ].join('\n');
      const least = solveByHighs(lp);
      if (plan.missing.length > 0) expect(least).toBeNull();
      else expect(plan.totalPrice).toBeCloseTo(least ?? Number.NaN, 6);
    }
  });

  test('a knot in the middle, by hand', () => {
    // 1000 long with a knot at 480 to 520: 480 on either side of it, whatever the cut takes of the knot.
    const knot = { xMm: 480, yMm: 0, lengthMm: 40, widthMm: 100 };
    const boards = [{ ...clear('board', 1000, 100, 10), defects: [knot] }];
    const job = { ...terms, kerfMm: 3, boards, parts: [part('leg', 480, 100, 2)] };
    const plan = cutBoards(job);
    expectSound(job, plan);
    expect(plan.missing).toEqual([]);
    expect(plan.boards[0]?.parts.map(({ xMm }) => xMm).sort()).toEqual([0, 520]);
    // The knot itself, less the two cuts through it.
    expect(plan.boards[0]?.offcuts).toEqual([
      { xMm: 483, yMm: 0, lengthMm: 34, widthMm: 100, partId: null, cut: null },
    ]);
    const longer = cutBoards({ ...job, parts: [part('leg', 481, 100, 2)] });
    expect(longer.missing).toEqual([{ partId: 'leg', missingCount: 2 }]);
    expect([longer.boards, longer.totalPrice, longer.cutShare, longer.mostShare, longer.proven]).toEqual([
      ...[[], 0, 0, 0, true],
    ]);
  });

  test('a split given as a line', () => {
    const board = (xMm: number, yMm: number, lengthMm: number, widthMm: number) => [
      { ...clear('board', 500, 100, 10), defects: [{ xMm, yMm, lengthMm, widthMm }] },
    ];
    const whole = [part('panel', 500, 100)];
    // Along the board, across it, and a nail hole: no part lies over it.
    for (const boards of [board(0, 50, 500, 0), board(250, 0, 0, 100), board(250, 50, 0, 0)]) {
      const plan = cutBoards({ ...terms, boards, parts: whole });
      expect([plan.missing, plan.totalPrice, plan.proven]).toEqual([
        ...[[{ partId: 'panel', missingCount: 1 }], 0, true],
      ]);
    }
    // Along an edge it spoils nothing, and two parts lie on either side of it.
    const atEdge = cutBoards({ ...terms, boards: board(0, 100, 500, 0), parts: whole });
    expect([atEdge.missing, atEdge.totalPrice]).toEqual([[], 10]);
    const halves = { ...terms, boards: board(0, 50, 500, 0), parts: [part('half', 500, 50, 2)] };
    const plan = cutBoards(halves);
    expectSound(halves, plan);
    expect([plan.missing, plan.proven]).toEqual([[], true]);
  });

  test('which comes first matters, and either takes the better', () => {
    // Ripped first: a strip of 40 for the long part, one of 60 crosscut, and its end ripped in two. Crosscut first, the
    // long part allows no crosscut before strips, and no strip gives both the wide part and two narrow ones.
    const parts = [part('long', 900, 40), part('wide', 600, 60), part('narrow', 300, 30, 2)];
    const job = { ...terms, parts, boards: [clear('board', 900, 100, 10)] };
    const [across, along, either] = (['across', 'along', 'either'] as const).map((firstCut) => {
      const plan = cutBoards({ ...job, firstCut });
      expectSound({ ...job, firstCut }, plan);
      expect(plan.proven).toBe(true);
      return plan;
    });
    expect(across?.cutShare).toBeCloseTo(81_000 / 90_000, 9);
    expect(across?.missing).toEqual([{ partId: 'narrow', missingCount: 1 }]);
    expect([along?.cutShare, either?.cutShare]).toEqual([1, 1]);
    expect(either?.boards[0]?.blank.cut?.direction).toBe('along');
    // The same board turned, and its parts with it.
    const quarter = <S extends { lengthMm: number; widthMm: number }>(one: S): S => ({
      ...one,
      ...{ lengthMm: one.widthMm, widthMm: one.lengthMm },
    });
    const turned = { ...job, parts: parts.map(quarter), boards: job.boards.map(quarter) };
    expect(cutBoards({ ...turned, firstCut: 'along' }).cutShare).toBeCloseTo(0.9, 9);
    expect(cutBoards({ ...turned, firstCut: 'across' }).cutShare).toBe(1);
  });

  test('nothing left over: two strips cut into unlike lengths, and a section past both', () => {
    // 400 + 100 over 300 + 200, then 200 by 200: all of 700 by 200, and no other way to pair the lengths ends at 500.
    const lengths = [400, 300, 200, 100].map((lengthMm) => part(`strip of ${lengthMm}`, lengthMm, 100));
    const job = { ...terms, parts: [...lengths, part('square', 200, 200)] };
    const plan = cutBoards({ ...job, boards: [clear('board', 700, 200, 10)] });
    expect([plan.missing, plan.boards[0]?.offcuts, plan.boards[0]?.usedShare]).toEqual([[], [], 1]);
    // Two kerfs of 3 along and one across ask for 706 by 203; what is then beside the square, the saw takes.
    const sawn = (lengthMm: number) =>
      cutBoards({ ...job, kerfMm: 3, boards: [clear('board', lengthMm, 203, 10)] });
    expect([sawn(706).missing, sawn(706).boards[0]?.offcuts]).toEqual([[], []]);
    // A hair less: without the 100, two of the others in one strip still reach 503, so the 200 is the least to leave.
    expect(sawn(705.9).missing).toEqual([{ partId: 'strip of 200', missingCount: 1 }]);
    expect(sawn(705.9).proven).toBe(true);
  });

  test('a shorter section is worth more than a fuller strip', () => {
    // The middle part beside the low one would leave less waste in its strip, but make the section 700 long; beside the
    // high one it leaves the section 400, and 350 for the panel.
    const strips = [part('low', 400, 100), part('middle', 300, 100), part('high', 100, 200)];
    const job = {
      ...terms,
      parts: [...strips, part('panel', 350, 300)],
      boards: [clear('board', 750, 300, 10)],
    };
    const plan = cutBoards(job);
    expectSound(job, plan);
    expect([plan.missing, plan.proven]).toEqual([[], true]);
  });

  test('across the grain only where the part says so', () => {
    const boards = [clear('board', 200, 500, 10)];
    const turning = { ...part('panel', 450, 180), grain: 'either way' } as const;
    const plan = cutBoards({ ...terms, boards, parts: [turning] });
    expect(plan.boards[0]?.parts[0]).toMatchObject({ lengthMm: 180, widthMm: 450 });
    expect(() => cutBoards({ ...terms, boards, parts: [part('panel', 450, 180)] })).toThrow(
      'parts[0] ("panel") to go into a board less its trims, got 450 by 180 mm',
    );
  });

  test('parts and a kerf to a board: what is just enough, and a hair less', () => {
    const parts = [part('rail', 500, 45.5, 4)];
    const just = { ...terms, kerfMm: 3.2, endTrimMm: 12.7, edgeTrimMm: 3, parts };
    const lengthMm = 2 * 500 + 3.2 + 2 * 12.7;
    const widthMm = 2 * 45.5 + 3.2 + 2 * 3;
    expect(cutBoards({ ...just, boards: [clear('board', lengthMm, widthMm, 1)] }).missing).toEqual([]);
    for (const [l, w] of [
      [lengthMm - 0.001, widthMm],
      [lengthMm, widthMm - 0.001],
    ] as const) {
      const plan = cutBoards({ ...just, boards: [clear('board', l, w, 1)] });
      expect([plan.missing, plan.proven]).toEqual([[{ partId: 'rail', missingCount: 2 }], true]);
    }
  });

  test('parts to boards that they fill but for rounding, in the cheapest set of them', () => {
    // Between the trims, 3 × 1529.55 and two cuts of 3 are 4594.65 of 4595, 2 × 1529.55 and a cut 3062.1 of 3063: five
    // from these two boards, for 10 + 30.04. The room that is left is then 2 × 1532.55 × 139 in one order of sums, and a
    // hair less in another.
    const boards = [clear('a', 1570, 140, 10), clear('b', 3103, 140, 10), clear('c', 4635, 140, 30.04)];
    const parts = [part('board', 1529.55, 136, 5)];
    const plan = cutBoards({ ...terms, kerfMm: 3, endTrimMm: 20, edgeTrimMm: 2, boards, parts });
    expect([plan.totalPrice, plan.leastPrice, plan.proven]).toEqual([40.04, 40.04, true]);
  });
});
