import { panelChange } from '@scantling/movement';
import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { glueMass, type PlanPanelInput, pickBoards, planPanel } from '../src/index.ts';

const near = (ours: number, theirs: number, relative = 1e-9) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 + relative * Math.abs(theirs));

const top: PlanPanelInput = {
  lengthMm: 1800,
  widthMm: 640,
  thicknessMm: 45,
  leastWidthMm: 100,
  mostWidthMm: 180,
  leastBoardCount: 1,
  planingMm: 4,
  jointingMm: 6,
  flatteningMm: 3,
  trimWidthMm: 10,
  trimLengthMm: 50,
  densityKgPerM3: 700,
  order: 'alternate',
  ringAnglesDeg: [20],
};

const panelArb: fc.Arbitrary<PlanPanelInput> = fc
  .record({
    lengthMm: numberArb({ min: 200, max: 4000 }),
    widthMm: numberArb({ min: 150, max: 1500 }),
    thicknessMm: numberArb({ min: 10, max: 120 }),
    leastWidthMm: numberArb({ min: 40, max: 90 }),
    mostWidthMm: numberArb({ min: 90, max: 300 }),
    leastBoardCount: fc.integer({ min: 1, max: 4 }),
    planingMm: numberArb({ min: 0, max: 10 }),
    jointingMm: numberArb({ min: 0, max: 12 }),
    flatteningMm: numberArb({ min: 0, max: 8 }),
    trimWidthMm: numberArb({ min: 0, max: 30 }),
    trimLengthMm: numberArb({ min: 0, max: 150 }),
    densityKgPerM3: numberArb({ min: 300, max: 1000 }),
    order: fc.constantFrom('alternate', 'match'),
    ringAngle: numberArb({ min: 0, max: 90 }),
  })
  .map(({ ringAngle, ...rest }) => ({ ...rest, ringAnglesDeg: [ringAngle] }) as PlanPanelInput);

describe('a panel', () => {
  test('its boards lie side by side and make up its width', () => {
    fc.assert(
      fc.property(panelArb, (panel) => {
        const { boards, boardCount, jointCount } = planPanel(panel);
        expect(boards).toHaveLength(boardCount);
        expect(jointCount).toBe(boardCount - 1);
        near(
          boards.reduce((sum, { widthMm }) => sum + widthMm, 0),
          panel.widthMm,
        );
        boards.forEach(({ fromFrontMm, widthMm, ringAngleDeg, heart }, i) => {
          near(fromFrontMm + widthMm, boards[i + 1]?.fromFrontMm ?? panel.widthMm);
          expect(ringAngleDeg).toBe(panel.ringAnglesDeg[0]);
          expect(heart).toBe(panel.order === 'alternate' && i % 2 === 1 ? 'down' : 'up');
        });
      }),
    );
  });

  test('its rough boards are on offer, enough, and as few as can be', () => {
    fc.assert(
      fc.property(panelArb, (panel) => {
        const { boardCount, roughWidthMm, boughtWidthMm } = planPanel(panel);
        expect(boughtWidthMm).toBeGreaterThanOrEqual(panel.leastWidthMm);
        expect(boughtWidthMm).toBeLessThanOrEqual(panel.mostWidthMm * (1 + 1e-9));
        const glued = panel.widthMm + panel.trimWidthMm;
        near(boardCount * (roughWidthMm - panel.jointingMm), glued);
        if (boardCount > panel.leastBoardCount) {
          expect((boardCount - 1) * (panel.mostWidthMm - panel.jointingMm)).toBeLessThan(glued);
        }
      }),
    );
  });

  test('it only gets lighter, by what each stage takes off', () => {
    fc.assert(
      fc.property(panelArb, (panel) => {
        const { stages, boardCount, roughLengthMm, roughThicknessMm, boughtWidthMm } = planPanel(panel);
        const masses = stages.map(({ massKg }) => massKg);
        masses.slice(1).forEach((mass, i) => {
          expect(mass).toBeLessThanOrEqual((masses[i] as number) * (1 + 1e-9));
        });
        const board = (roughLengthMm * roughThicknessMm * boughtWidthMm) / 1e9;
        near(masses[0] as number, boardCount * board * panel.densityKgPerM3);
        near(
          masses[3] as number,
          (panel.lengthMm * panel.widthMm * panel.thicknessMm * panel.densityKgPerM3) / 1e9,
        );
      }),
    );
  });

  test('its glue lines are those that glue is reckoned for', () => {
    const { jointCount, roughLengthMm, gluedThicknessMm, glueLineM2 } = planPanel(top);
    const joints = { lengthMm: roughLengthMm, thicknessMm: gluedThicknessMm, jointCount };
    near(glueMass({ ...joints, spreadGPerM2: 200, lossPct: 0 }).massG, 200 * glueLineM2);
  });

  test('its boards go on to movement as they are', () => {
    const { boards } = planPanel({ ...top, ringAnglesDeg: [0, 30, 60, 90] });
    const sugarMaple = { radialPerPct: 0.00165, tangentialPerPct: 0.00353 };
    const { changeMm } = panelChange({
      boards: boards.map((board) => ({ ...board, ...sugarMaple })),
      fromMoisturePct: 8,
      toMoisturePct: 10,
      heldAtMm: 0,
    });
    // Between all quartersawn and all flatsawn.
    expect(changeMm).toBeGreaterThan(640 * 0.00165 * 2);
    expect(changeMm).toBeLessThan(640 * 0.00353 * 2);
  });

  test('says what is wrong', () => {
    expect(() => planPanel({ ...top, mostWidthMm: 90 })).toThrow(
      'planPanel requires mostWidthMm from leastWidthMm 100 on and above jointingMm 6, got 90',
    );
    expect(() => planPanel({ ...top, leastWidthMm: 5, mostWidthMm: 6 })).toThrow('above jointingMm 6, got 6');
    expect(() => planPanel({ ...top, ringAnglesDeg: [10, 20] })).toThrow(
      'ringAnglesDeg to be one or 4, got 2',
    );
    expect(() => planPanel({ ...top, trimWidthMm: 400, leastBoardCount: 40 })).toThrow(
      'trimWidthMm to leave something of the outer boards, got 400',
    );
    expect(() => planPanel({ ...top, order: 'random' as never })).toThrow(
      'order to be one of alternate, match',
    );
  });
});

describe('boards from a stack', () => {
  const stackArb = fc.record({
    widthsMm: fc.array(
      fc.integer({ min: 600, max: 3000 }).map((ticks) => ticks / 10),
      { minLength: 1, maxLength: 9 },
    ),
    jointingMm: fc.integer({ min: 0, max: 100 }).map((ticks) => ticks / 10),
    neededWidthMm: fc.integer({ min: 100, max: 15_000 }).map((ticks) => ticks / 10),
  });

  test('nobody who tries every choice finds a better one', () => {
    fc.assert(
      fc.property(stackArb, ({ widthsMm, jointingMm, neededWidthMm }) => {
        let best: { surplus: number; count: number } | null = null;
        const tenths = widthsMm.map((width) => Math.round(width * 10) - Math.round(jointingMm * 10));
        for (let choice = 1; choice < 2 ** widthsMm.length; choice++) {
          const chosen = tenths.filter((_, i) => choice & (1 << i));
          const surplus = chosen.reduce((sum, width) => sum + width, 0) - Math.round(neededWidthMm * 10);
          if (surplus < 0) continue;
          const better =
            !best || surplus < best.surplus || (surplus === best.surplus && chosen.length < best.count);
          if (better) best = { surplus, count: chosen.length };
        }
        const picked = pickBoards({ widthsMm, jointingMm, neededWidthMm });
        expect(picked === null).toBe(best === null);
        if (!picked || !best) return;
        expect(picked.surplusMm * 10).toBeCloseTo(best.surplus, 6);
        expect(picked.boards).toHaveLength(best.count);
        expect(new Set(picked.boards.map(({ index }) => index)).size).toBe(picked.boards.length);
        const glued = picked.boards.reduce(
          (sum, { index }) => sum + (widthsMm[index] as number) - jointingMm,
          0,
        );
        near(picked.gluedWidthMm, glued, 1e-9);
      }),
    );
  });

  test('boards narrower than what jointing takes are left', () => {
    expect(pickBoards({ widthsMm: [5, 80], jointingMm: 6, neededWidthMm: 74 })?.boards).toEqual([
      { index: 1, widthMm: 80 },
    ]);
  });

  test('says what is wrong', () => {
    expect(() => pickBoards({ widthsMm: [], jointingMm: 6, neededWidthMm: 400 })).toThrow(
      'pickBoards requires widthsMm to have 1 to 60 numbers, got 0',
    );
    expect(() => pickBoards({ widthsMm: [100, Number.NaN], jointingMm: 6, neededWidthMm: 400 })).toThrow(
      'pickBoards requires widthsMm[1] between 1 and 1000, got NaN',
    );
  });
});
