import { expectWithin, numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeAtRingAngle, type PanelBoard, type PanelChange, panelChange } from '../src/index.ts';
import { figuresIn, isPlain } from './figures.ts';

const coefficient = numberArb({ min: 0, max: 0.02 });
const moisture = numberArb({ min: 0, max: 30 });
const share = numberArb({ min: 0, max: 1 });
const plainBoard = fc.record({
  widthMm: numberArb({ min: 2, max: 1000 }),
  thicknessMm: numberArb({ min: 1, max: 100 }),
  ringAngleDeg: numberArb({ min: 0, max: 90 }),
  radialPerPct: coefficient,
  tangentialPerPct: coefficient,
});
const board: fc.Arbitrary<PanelBoard> = fc.oneof(
  plainBoard,
  fc.tuple(plainBoard, moisture).map(([one, fromMoisturePct]) => ({ ...one, fromMoisturePct })),
);
const boardList = fc.array(board, { minLength: 1, maxLength: 8 });
const year = fc.record({ fromMoisturePct: moisture, toMoisturePct: moisture });

const widthOf = (boards: readonly PanelBoard[]) => boards.reduce((sum, { widthMm }) => sum + widthMm, 0);
function near(ours: number, expected: number): void {
  expect(Math.abs(ours - expected)).toBeLessThan(1e-8);
}

test('one board is the change at its ring angle, and has no joint', () => {
  fc.assert(
    fc.property(plainBoard, year, (one, moistures) => {
      const { boards, joints, largestStepMm, changeMm } = panelChange({
        boards: [one],
        ...moistures,
        heldAtMm: 0,
      });
      const alone = changeAtRingAngle({ ...one, ...moistures });
      expect(boards).toEqual([alone]);
      expect(changeMm).toBe(alone.widthChangeMm);
      expect(joints).toEqual([]);
      expect(largestStepMm).toBeNull();
    }),
  );
});

test('the boards together are the panel, and joints and edges move with them', () => {
  fc.assert(
    fc.property(boardList, year, share, (boards, moistures, part) => {
      const widthMm = widthOf(boards);
      const panel = panelChange({ boards, ...moistures, heldAtMm: Math.min(widthMm, part * widthMm) });
      near(
        panel.changeMm,
        panel.boards.reduce((sum, { widthChangeMm }) => sum + widthChangeMm, 0),
      );
      near(panel.widthAfterMm, panel.widthBeforeMm + panel.changeMm);
      expect(figuresIn(panel).filter((figure) => !isPlain(figure))).toEqual([]);
      near(panel.backEdgeMoveMm - panel.frontEdgeMoveMm, panel.changeMm);
      const lines = [
        panel.frontEdgeMoveMm,
        ...panel.joints.map(({ moveMm }) => moveMm),
        panel.backEdgeMoveMm,
      ];
      expect(lines).toHaveLength(boards.length + 1);
      panel.boards.forEach(({ widthChangeMm }, i) => {
        near((lines[i + 1] ?? Number.NaN) - (lines[i] ?? Number.NaN), widthChangeMm);
      });
    }),
  );
});

test('a board sawn in two and glued again is the same board with a joint more', () => {
  fc.assert(
    fc.property(
      boardList,
      year,
      fc.nat(),
      numberArb({ min: 0.25, max: 0.75 }),
      (boards, moistures, pick, part) => {
        const i = pick % boards.length;
        const sawn = boards[i] as PanelBoard;
        const first = { ...sawn, widthMm: sawn.widthMm * part };
        const second = { ...sawn, widthMm: sawn.widthMm - first.widthMm };
        fc.pre(first.widthMm >= 1 && second.widthMm >= 1);
        const whole = panelChange({ boards, ...moistures, heldAtMm: 0 });
        const halves = [...boards.slice(0, i), first, second, ...boards.slice(i + 1)];
        const split = panelChange({ boards: halves, ...moistures, heldAtMm: 0 });
        near(split.changeMm, whole.changeMm);
        expect(split.joints[i]?.stepMm).toBeLessThan(1e-12);
        const kept = split.joints.filter((_, joint) => joint !== i);
        expect(kept).toHaveLength(whole.joints.length);
        whole.joints.forEach(({ afterMm, stepMm }, joint) => {
          near(kept[joint]?.afterMm ?? Number.NaN, afterMm);
          near(kept[joint]?.stepMm ?? Number.NaN, stepMm);
        });
      },
    ),
  );
});

test('the panel turned about is its mirror image', () => {
  fc.assert(
    fc.property(boardList, year, share, (boards, moistures, part) => {
      const widthMm = widthOf(boards);
      const heldAtMm = Math.min(widthMm, part * widthMm);
      const panel = panelChange({ boards, ...moistures, heldAtMm });
      const turnedBoards = [...boards].reverse();
      const turned = panelChange({
        boards: turnedBoards,
        ...moistures,
        heldAtMm: Math.min(widthOf(turnedBoards), Math.max(0, widthMm - heldAtMm)),
      });
      near(turned.frontEdgeMoveMm, -panel.backEdgeMoveMm);
      const mirrored = [...turned.joints].reverse();
      panel.joints.forEach(({ beforeMm, moveMm, stepMm }, i) => {
        near(mirrored[i]?.beforeMm ?? Number.NaN, widthMm - beforeMm);
        near(mirrored[i]?.moveMm ?? Number.NaN, -moveMm);
        near(mirrored[i]?.stepMm ?? Number.NaN, stepMm);
      });
    }),
  );
});

test('holding another line shifts everything alike, and the line held keeps its place', () => {
  fc.assert(
    fc.property(boardList, year, share, share, (boards, moistures, a, b) => {
      const widthMm = widthOf(boards);
      const heldAt = (part: number) =>
        panelChange({ boards, ...moistures, heldAtMm: Math.min(widthMm, part * widthMm) });
      const moves = ({ frontEdgeMoveMm, backEdgeMoveMm, joints }: PanelChange) => [
        frontEdgeMoveMm,
        ...joints.map(({ moveMm }) => moveMm),
        backEdgeMoveMm,
      ];
      const [one, other] = [moves(heldAt(a)), moves(heldAt(b))];
      const shiftMm = (other[0] ?? Number.NaN) - (one[0] ?? Number.NaN);
      for (const [i, moveMm] of one.entries()) near((other[i] ?? Number.NaN) - moveMm, shiftMm);
      const { joints } = heldAt(a);
      const atJoint = joints.map(({ beforeMm }) => panelChange({ boards, ...moistures, heldAtMm: beforeMm }));
      for (const [i, panel] of atJoint.entries()) near(panel.joints[i]?.moveMm ?? Number.NaN, 0);
      expect(heldAt(0).frontEdgeMoveMm).toBe(0);
    }),
  );
});

test('there and back again changes the other way, and an unchanged moisture changes nothing', () => {
  fc.assert(
    fc.property(fc.array(plainBoard, { minLength: 1, maxLength: 8 }), year, (boards, moistures) => {
      const { fromMoisturePct, toMoisturePct } = moistures;
      const there = panelChange({ boards, ...moistures, heldAtMm: 0 });
      const back = panelChange({
        boards,
        fromMoisturePct: toMoisturePct,
        toMoisturePct: fromMoisturePct,
        heldAtMm: 0,
      });
      near(back.changeMm, -there.changeMm);
      near(back.largestStepMm ?? 0, there.largestStepMm ?? 0);
      expect(
        panelChange({ boards, fromMoisturePct, toMoisturePct: fromMoisturePct, heldAtMm: 0 }).changeMm,
      ).toBe(0);
    }),
  );
});

test('a panel twice as wide and thick moves twice as far', () => {
  fc.assert(
    fc.property(boardList, year, share, (boards, moistures, part) => {
      const heldAtMm = Math.min(widthOf(boards), part * widthOf(boards));
      const twice = boards.map((one) => ({
        ...one,
        widthMm: 2 * one.widthMm,
        thicknessMm: 2 * one.thicknessMm,
      }));
      const panel = panelChange({ boards, ...moistures, heldAtMm });
      const larger = panelChange({ boards: twice, ...moistures, heldAtMm: 2 * heldAtMm });
      near(larger.changeMm, 2 * panel.changeMm);
      near(larger.frontEdgeMoveMm, 2 * panel.frontEdgeMoveMm);
      near(larger.largestStepMm ?? 0, 2 * (panel.largestStepMm ?? 0));
    }),
  );
});

test('the step between boards of one thickness is half the difference of what they swell', () => {
  fc.assert(
    fc.property(plainBoard, plainBoard, year, (a, b, moistures) => {
      const boards = [a, { ...b, thicknessMm: a.thicknessMm }];
      const panel = panelChange({ boards, ...moistures, heldAtMm: 0 });
      const [first, second] = panel.boards.map(({ thicknessChangeMm }) => thicknessChangeMm);
      near(panel.largestStepMm ?? Number.NaN, Math.abs((first ?? Number.NaN) - (second ?? Number.NaN)) / 2);
    }),
  );
});

describe('published panels', () => {
  const inches = (panel: PanelChange) => panel.changeMm / 25.4;
  const panelOf = (widthsIn: readonly number[], ringAngleDeg: number, coefficients: [number, number]) => {
    const [radialPerPct, tangentialPerPct] = coefficients;
    return widthsIn.map((widthIn) => ({
      widthMm: widthIn * 25.4,
      thicknessMm: 20,
      ringAngleDeg,
      radialPerPct,
      tangentialPerPct,
    }));
  };
  const thread = 'a newsgroup on woodworking, panel expansion allowance';
  const cherry: [number, number] = [0.00126, 0.00248];
  const whiteOak: [number, number] = [0.0018, 0.00365];

  test('12 in of flatsawn cherry, from 8 to 12 %', () => {
    const boards = panelOf([3, 5, 4], 0, cherry);
    const panel = panelChange({ boards, fromMoisturePct: 8, toMoisturePct: 12, heldAtMm: 0 });
    expectWithin(inches(panel), 0.12, 0.005, `${thread}: example 1`);
  });

  test('18 in of quartersawn white oak, from 13 to 7 %', () => {
    const boards = panelOf([4.5, 4.5, 6, 3], 90, whiteOak);
    const panel = panelChange({ boards, fromMoisturePct: 13, toMoisturePct: 7, heldAtMm: 100 });
    expectWithin(inches(panel), -0.194, 0.0005, `${thread}: example 2`);
  });

  test('random widths move as even widths do', () => {
    // Wood industry question and answer, "Standardizing to shrink panels": a panel of random widths "will behave the same".
    const [even, random] = [
      [6, 6, 6],
      [2, 9, 7],
    ].map((widths) =>
      panelChange({
        boards: panelOf(widths, 0, whiteOak),
        fromMoisturePct: 9,
        toMoisturePct: 6,
        heldAtMm: 0,
      }),
    );
    expect(even?.changeMm).toBeCloseTo(random?.changeMm ?? Number.NaN, 10);
    // It goes on: from 9 to 6 %, about 1 % of shrinkage in oak.
    expectWithin((-100 * (even?.changeMm ?? 0)) / (18 * 25.4), 1, 0.5, 'the same answer');
  });
});

test('boards glued at moisture contents of their own, worked by hand', () => {
  // 100 mm of flatsawn maple at 12 % beside 50 mm of quartersawn cherry at 8 %, both coming to 7 %.
  const boards = [
    {
      widthMm: 100,
      thicknessMm: 30,
      ringAngleDeg: 0,
      radialPerPct: 0.00165,
      tangentialPerPct: 0.00353,
      fromMoisturePct: 12,
    },
    { widthMm: 50, thicknessMm: 20, ringAngleDeg: 90, radialPerPct: 0.00126, tangentialPerPct: 0.00248 },
  ];
  const panel = panelChange({ boards, fromMoisturePct: 8, toMoisturePct: 7, heldAtMm: 25 });
  // Width: 100 × 0.00353 × −5 = −1.765; 50 × 0.00126 × −1 = −0.063.
  expectWithin(panel.changeMm, -1.828, 1e-9, 'by hand');
  // The quarter of the first board before the line: 1.765 / 4.
  expectWithin(panel.frontEdgeMoveMm, 0.44125, 1e-9, 'by hand');
  expectWithin(panel.backEdgeMoveMm, -1.38675, 1e-9, 'by hand');
  expectWithin(panel.joints[0]?.afterMm, 100 - 1.32375, 1e-9, 'by hand');
  // Thickness: 0.00165 × 5 = 0.825 % against 0.00248 × 1 = 0.248 %, over half of 20 mm.
  expectWithin(panel.largestStepMm, 0.0577, 1e-9, 'by hand');
});

describe('refusals name what was given', () => {
  const maple = {
    widthMm: 100,
    thicknessMm: 30,
    ringAngleDeg: 0,
    radialPerPct: 0.00165,
    tangentialPerPct: 0.00353,
  };
  const call = (change: object) => () =>
    panelChange({
      boards: [maple, maple, maple],
      fromMoisturePct: 8,
      toMoisturePct: 7,
      heldAtMm: 0,
      ...change,
    });

  test.each([
    [
      { boards: [maple, maple, { ...maple, widthMm: Number.NaN }] },
      'boards[2].widthMm between 1 and 10000, got NaN',
    ],
    [
      { boards: [maple, { ...maple, fromMoisturePct: 31 }] },
      'boards[1].fromMoisturePct between 0 and 30, got 31',
    ],
    [{ boards: [undefined] }, 'boards[0].widthMm between 1 and 10000, got undefined'],
    [{ boards: [] }, 'boards to be a list of 1 to 200 boards, got 0'],
    [{ boards: 'maple' }, 'boards to be a list of 1 to 200 boards, got string'],
    [{ boards: Array.from({ length: 201 }, () => maple) }, 'boards to be a list of 1 to 200 boards, got 201'],
    [{ heldAtMm: 301 }, 'heldAtMm between 0 and 300, got 301'],
    [{ toMoisturePct: undefined }, 'toMoisturePct between 0 and 30, got undefined'],
  ])('%o', (change, message) => {
    expect(call(change)).toThrow(new RangeError(`panelChange requires ${message}`));
  });
});
