import { describe, expect, test } from 'vitest';
import { bestOffset, type GridTerms } from '../src/index.ts';

const rail = { shape: 'rectangle' as const, belongsTo: 'base' as const };

describe('bestOffset, worked by hand', () => {
  const bench: GridTerms = {
    panel: { lengthMm: 500, widthMm: 300 },
    ...{ pitchXMm: 100, pitchYMm: 100, holeDiameterMm: 20, edgeMarginMm: 20, keepOuts: [] },
  };

  test('without anything in the way the grid stands in the middle', () => {
    // 500 − 2 × 30 = 440 holds 5 holes, 240 holds 3: 50 + 4 × 100 + 50, and 50 − 30 = 20 to spare all round.
    expect(bestOffset(bench)).toMatchObject({
      keptCount: 15,
      spareMm: 20,
      proven: true,
      firstHole: { xMm: 50, yMm: 50 },
    });
  });

  test('an exact fit is found, with nothing to spare', () => {
    // 4 × 100 + 2 × 30 = 460 holds 5 holes and not a hair more.
    const exact = { ...bench, panel: { lengthMm: 460, widthMm: 300 } };
    expect(bestOffset(exact)).toMatchObject({
      keptCount: 15,
      spareMm: 0,
      proven: true,
      firstHole: { xMm: 30 },
    });
  });

  test('holes stand midway between rails', () => {
    // Rails at 90 to 110 and 190 to 210 leave 80 mm between: 30 mm each side of a hole, 25 more than 5.
    const rails = [90, 190].map((yMm, i) => ({
      ...rail,
      id: `rail ${i}`,
      xMm: 0,
      yMm,
      lengthMm: 500,
      widthMm: 20,
      clearanceMm: 5,
    }));
    const best = bestOffset({ ...bench, keepOuts: rails });
    expect(best).toMatchObject({ keptCount: 15, firstHole: { yMm: 50 } });
    expect(best.spareMm).toBeCloseTo(20, 2);
  });

  test('with a season the grid moves away from where the top takes it', () => {
    // One row, with room for it only between two rails 60 mm apart; held at y = 0, 5 % of swelling takes a hole at y by y / 20 to the back.
    const rails = [70, 150].map((yMm, i) => ({
      ...rail,
      id: `rail ${i}`,
      xMm: 0,
      yMm,
      lengthMm: 500,
      widthMm: 20,
      clearanceMm: 0,
    }));
    const swelling = { fixedLineYMm: 0, shrinkPct: 0, swellPct: 5 };
    const grid = {
      ...bench,
      rows: 1,
      keepOuts: rails,
      panel: { lengthMm: 500, widthMm: 240 },
      edgeMarginMm: 60,
    };
    const [still, moving] = [bestOffset(grid), bestOffset({ ...grid, movement: swelling })];
    // Still: 120, with 20 on both sides. Moving: y − 90 = 150 − 1.05 y, so y = 240 / 2.05.
    expect(still.firstHole?.yMm).toBeCloseTo(120, 1);
    expect(moving.firstHole?.yMm).toBeCloseTo(240 / 2.05, 1);
    expect(moving.spareMm).toBeCloseTo(240 / 2.05 - 100, 1);
  });

  test('where nothing fits it says so', () => {
    const covered = { ...rail, id: 'plate', xMm: -10, yMm: -10, lengthMm: 600, widthMm: 400, clearanceMm: 0 };
    const nothing = { firstHole: null, keptCount: 0, spareMm: null, spareBoundMm: null, proven: true };
    expect(bestOffset({ ...bench, keepOuts: [covered] })).toEqual(nothing);
    expect(bestOffset({ ...bench, edgeMarginMm: 200 })).toEqual(nothing);
  });

  test('refuses what layoutHoles refuses, by its own name', () => {
    expect(() => bestOffset({ ...bench, pitchXMm: Number.NaN })).toThrow(
      'bestOffset requires pitchXMm between 20',
    );
    expect(() => bestOffset({ ...bench, columns: 1000, rows: 1000 })).toThrow(
      'bestOffset requires at most 20000 holes',
    );
    expect(() =>
      bestOffset({ ...bench, panel: { lengthMm: 20_000, widthMm: 20_000 }, pitchXMm: 20, pitchYMm: 20 }),
    ).toThrow('bestOffset requires at most 20000 holes');
  });
});
