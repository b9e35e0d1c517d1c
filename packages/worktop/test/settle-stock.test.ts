import { describe, expect, test } from 'vitest';
import { type GlueUp, type Plan, planWorktop, type Screws, type Strip } from '../src/index.ts';
import { plainBench } from './plain-bench.ts';
import { chosenOf } from './settle-plans.ts';

const { base } = plainBench;

describe('screws and boards', () => {
  const screws: Screws = {
    ...{ lengthMm: 'choose', stockLengthsMm: [50, 30, 40], layersMm: [1.5, 3], washerDiameterMm: 20 },
    ...{ threadShare: 2 / 3, tipLengthMm: 5, leastThreadMm: 12, leastStockMm: 6, leadHoleShare: 1 },
    ...{ leadBitTipLengthMm: 2, shankBitTipLengthMm: 2, stopLengthMm: 20 },
  };
  const strip: Strip = {
    ...{ inlay: 'brass cutting guide', thicknessMm: 6, rabbetWidthMm: 27, rabbetDepthMm: 11.45 },
    ...{ expansionUmPerMK: 19, densityKgPerM3: 8500, buildingDayC: 20, toleranceMm: 0.2 },
    ...{ endDistanceMm: 30, mostPitchMm: 250, fixedScrew: 'middle', shankDiameterMm: 4 },
    ...{ headDiameterMm: 8, headHeightMm: 2.5, headBelowFaceMm: 0.2, screwLengthMm: 20 },
    ...{ slotClearanceMm: 0.3, endClearanceMm: 0.5 },
  };

  test('the longest that stays 6 mm below the face', () => {
    // 44.45 mm of wood and 4.5 of layers: 40 mm ends 8.95 below the face, 50 mm would come through by 1.05.
    const { value, says } = chosenOf({ ...plainBench, screws }, 'screws.length');
    expect(value).toBe(40);
    expect(says).toMatch(/^40 mm: 21\.67 mm of thread in the wood, 8\.95 mm above the tip/);
  });

  test('one length for all, by the wood that is left under the strip', () => {
    // The left front screw stands under the strip: 44.45 − 11.45 = 33 mm. 40 mm would leave 33 − 35.5, 30 mm leaves 7.5.
    const fixings = base.fixings.map((one) => (one.name === 'left front' ? { ...one, yMm: 40 } : one));
    const plan: Plan = { ...plainBench, base: { ...base, fixings }, screws, strip };
    const { value, says } = chosenOf(plan, 'screws.length');
    expect(value).toBe(30);
    expect(says).toMatch(/33\.0 mm of wood under the strip, at left front/);
  });

  test('where none fits, the longest that does not come too near to the face, and it is said', () => {
    const { value, says } = chosenOf(
      { ...plainBench, screws: { ...screws, leastThreadMm: 30 } },
      'screws.length',
    );
    expect(value).toBe(40);
    expect(says).toMatch(/^No length in stock fits 44\.\d mm of wood\..*Planned with 40\.0 mm\.$/);
    const result = planWorktop({ ...plainBench, screws: { ...screws, leastThreadMm: 30 } });
    expect(result.checks.find(({ id }) => id === 'engagement')?.status).toBe('fail');
  });

  const glueUp: GlueUp = {
    ...{ boardCount: 'choose', leastWidthMm: 100, mostWidthMm: 180, planingMm: 4, jointingMm: 6 },
    ...{ flatteningMm: 3, trimWidthMm: 10, trimLengthMm: 50, order: 'alternate', clampForceN: 4000 },
    glue: {
      ...{ name: 'glue', pressureMPa: 1, spreadGPerM2: 200, lossPct: 10 },
      ...{ leastMoisturePct: 6, mostMoisturePct: 12 },
    },
  };

  test('the fewest boards that are not wider than those on offer', () => {
    // 640 + 10 mm: three would be 216.7 + 6, four are 162.5 + 6 = 168.5.
    const { value, says } = chosenOf({ ...plainBench, glueUp }, 'glueUp.boardCount');
    expect(value).toBe(4);
    expect(says).toMatch(
      /^4 boards, each 168\.5 mm wide in the rough: fewer would be wider than .* 180\.0 mm\.$/,
    );
  });

  const board = (name: string, widthMm: number, more: object = {}) => ({
    ...{ name, lengthMm: 1600, widthMm, thicknessMm: 52, eachPrice: 30, defects: [] },
    ...more,
  });
  const inStock = (boards: readonly ReturnType<typeof board>[]): Plan => ({
    ...plainBench,
    glueUp,
    stock: { boards, boardKerfMm: 3, boardEndTrimMm: 10, boardEdgeTrimMm: 2, containers: [] },
  });
  const stack = (count: number, widthMm: number, more: object = {}) =>
    Array.from({ length: count }, (_, i) => board(`board ${i + 1}`, widthMm, more));

  test('more and narrower ones where the stack gives no wide ones', () => {
    // Boards of 140 less two trims of 2 leave 136 = 650 / 5 + 6.
    expect(chosenOf(inStock(stack(5, 140)), 'glueUp.boardCount').value).toBe(5);
    expect(chosenOf(inStock(stack(5, 180)), 'glueUp.boardCount').value).toBe(4);
    // One board of 290 gives two of 136 with a kerf of 3.
    const one = [...stack(3, 140), board('wide', 2 * 136 + 3 + 4)];
    expect(chosenOf(inStock(one), 'glueUp.boardCount').value).toBe(5);
  });

  test('boards that are too thin, too short or too few are none', () => {
    // 44.45 + 3 + 4 = 51.45 mm thick and 1479.55 + 50 = 1529.55 long, trims of 10 at each end.
    for (const boards of [
      stack(5, 140, { thicknessMm: 51.4 }),
      stack(5, 140, { lengthMm: 1549 }),
      stack(3, 140),
    ]) {
      expect(chosenOf(inStock(boards), 'glueUp.boardCount')).toMatchObject({
        value: 4,
        proven: false,
        says: expect.stringMatching(/none of up to 24 fits/),
      });
    }
    expect(chosenOf(inStock(stack(5, 140, { lengthMm: 1550 })), 'glueUp.boardCount').value).toBe(5);
  });

  test('a board is ripped beside its knots, and crosscut between them', () => {
    // A knot 160 to 170 from the front of a board of 180: 158 are left in front of it, enough for 650 / 5 + 6.
    const defects = [{ xMm: 700, yMm: 160, lengthMm: 30, widthMm: 10 }];
    expect(chosenOf(inStock(stack(5, 180, { defects })), 'glueUp.boardCount').value).toBe(5);
    // Behind a split of 300 at the end of a longer board there are 1700 left.
    const split = [{ xMm: 0, yMm: 0, lengthMm: 300, widthMm: 180 }];
    const long = stack(4, 180, { lengthMm: 2000, defects: split });
    expect(chosenOf(inStock(long), 'glueUp.boardCount').value).toBe(4);
  });
});
