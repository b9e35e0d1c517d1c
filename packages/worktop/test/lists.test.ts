import { csvParse } from 'd3-dsv';
import { describe, expect, test } from 'vitest';
import { cutList, type Plan, planWorktop, shoppingList, shoppingPlan } from '../src/index.ts';
import { bench } from './bindery-bench.ts';
import { type Stock, wholeBench, withStock } from './whole-bench.ts';

const shop = (plan: Plan) => shoppingPlan(planWorktop(plan));

const verdict = (plan: Plan, id: string) => shop(plan).checks.find((check) => check.id === id);

describe('the whole bench', () => {
  const result = planWorktop(wholeBench());
  const shopping = shoppingPlan(result);

  test('buys the cheapest boards that give five, by hand', () => {
    // Each is 1479.55 + 50 = 1529.55 long, (640 + 10) / 5 + 6 = 136 wide and 44.45 + 2 + 4 = 50.45 thick. Less trims of 20
    // at each end, A (3160) and B (3260) give two with a cut between them (3062.1), C one; E, with a knot from 300 to 380,
    // one; D is too thin. Five are A + B + C for 185 or A + B + E for 199; the others are too few.
    const { needed, offer } = shopping.boards ?? {};
    expect(needed).toMatchObject({ count: 5, widthMm: 136 });
    expect(needed?.lengthMm).toBeCloseTo(1529.55, 9);
    expect(needed?.thicknessMm).toBeCloseTo(50.45, 9);
    expect(offer?.buy.map(({ boardId, parts }) => [boardId, parts.length])).toEqual([
      ['A', 2],
      ['B', 2],
      ['C', 1],
    ]);
    expect(offer).toMatchObject({ totalPrice: 185, boundPrice: 185, proven: true, tooThin: ['D'] });
  });

  test('buys the cheapest bars, by hand', () => {
    // 4 × 640 + 2 × 1020 + 4 × 560 = 6840 mm of tube are more than two lengths of 3 m; three are one bar of 6 m, cut in
    // two to be carried, and one of 3 m: 48 + 27.50.
    expect(shopping.bars.map(({ section, totalPrice, proven }) => [section, totalPrice, proven])).toEqual([
      ['tube 40 × 40 × 3', 75.5, true],
      ['brass 25 × 6', 39, true],
    ]);
  });

  test('buys what is short of the finish, and no more', () => {
    const [varnish, spirits] = shopping.liquids;
    expect(varnish?.missingMl).toBeCloseTo(result.finish.volumeMl / 2 - 40, 9);
    expect(varnish?.buy).toEqual([{ volumeMl: 250, eachPrice: 11.5, count: 1 }]);
    expect(spirits?.buy).toEqual([]);
  });

  test('adds up: 185 + 75.50 + 39 + 11.50', () => {
    expect([shopping.totalPrice, shopping.boundPrice, shopping.proven]).toEqual([311, 311, true]);
    const rows = csvParse(shoppingList(result));
    const total = rows.at(-1);
    expect(total).toMatchObject({ item: 'total', price: '311.00' });
    expect(rows.slice(0, -1).reduce((sum, { price }) => sum + Number(price), 0)).toBeCloseTo(311, 9);
  });

  test('counts its screws, and the strip only once', () => {
    expect(shopping.screws.map(({ count, lengthMm }) => [count, lengthMm])).toEqual([
      [6, 45],
      [result.strip?.screws.length, 25],
    ]);
    expect(shopping.strip).toBe(null);
    expect(shop(withStock({ bars: undefined })).strip).toMatchObject({ lengthMm: 1400, thicknessMm: 6 });
  });

  test('its cut list holds every part, with its place', () => {
    const rows = csvParse(cutList(result));
    const count = (part: string) =>
      rows.filter((row) => row.part === part).reduce((sum, row) => sum + Number(row.count), 0);
    expect(['board of the top', 'leg', 'rail', 'foot', 'brass cutting guide'].map(count)).toEqual([
      5, 4, 2, 4, 1,
    ]);
    expect(rows[0]).toMatchObject({
      length_mm: '1529.55',
      width_mm: '136.00',
      from: 'A',
      x_mm: '20.00',
      y_mm: '2.00',
    });
    expect(rows.every(({ from }) => from !== '')).toBe(true);
  });
});

describe('what is not on offer', () => {
  test('without a stock the lists say what is needed, and no prices', () => {
    const { stock, ...plan } = wholeBench();
    const result = planWorktop(plan);
    const shopping = shoppingPlan(result);
    expect([shopping.totalPrice, shopping.boundPrice, shopping.checks, shopping.status]).toEqual([
      null,
      null,
      [],
      'pass',
    ]);
    const rows = csvParse(shoppingList(result));
    expect(rows.map(({ item, count, size }) => [item, count, size]).slice(0, 2)).toEqual([
      ['rough boards', '5', 'at least 1529.6 × 136 × 50.5 mm'],
      ['glue: PVA glue', '', `${Math.ceil(result.glueUp?.glueMassG ?? 0)} g`],
    ]);
    expect(rows.every(({ price }) => price === '')).toBe(true);
    expect(csvParse(cutList(result)).map(({ part, count }) => [part, count])).toEqual([
      ['board of the top', '5'],
      ['brass cutting guide', '1'],
    ]);
  });

  test('a plan without a glue-up or a strip still names its screws and its finish', () => {
    const result = planWorktop(bench());
    expect(csvParse(cutList(result))).toHaveLength(0);
    expect(csvParse(shoppingList(result)).map(({ item }) => item)).toEqual(['screws that hold the top']);
  });

  test('boards that are too few fail, and say how many are missing', () => {
    const { boards } = wholeBench().stock as Stock;
    const few = withStock({ boards: boards.filter(({ name }) => name !== 'A' && name !== 'E') });
    expect(verdict(few, 'boards')).toMatchObject({ status: 'fail', margin: { given: 3, min: 5 } });
    expect(verdict(few, 'boards')?.says).toMatch(
      /^stock\.boards: 2 of 5 boards can't be had .*1529\.6 mm × 136\.0 mm/,
    );
    const short = withStock({ boards: boards.map((board) => ({ ...board, lengthMm: 1500 })) });
    expect(verdict(short, 'boards')).toMatchObject({ status: 'fail', margin: { given: 0, min: 5 } });
  });

  test('a single board that is missing stands in both lists', () => {
    const { boards } = wholeBench().stock as Stock;
    // A and B give two each.
    const result = planWorktop(
      withStock({ boards: boards.filter(({ name }) => name === 'A' || name === 'B') }),
    );
    const bought = csvParse(shoppingList(result)).find(({ item }) => item === 'rough boards, not on offer');
    expect(bought).toMatchObject({ count: '1', size: 'at least 1529.6 × 136 × 50.5 mm', price: '' });
    const uncut = csvParse(cutList(result)).filter(
      ({ part, from }) => part === 'board of the top' && from === '',
    );
    expect(uncut.map(({ count }) => count)).toEqual(['1']);
  });

  test('boards count as too thin from a twentieth of a millimetre below', () => {
    const { boards } = wholeBench().stock as Stock;
    // 44.45 + 2 + 4 = 50.45 mm are needed.
    const thick = (thicknessMm: number) =>
      shop(withStock({ boards: boards.map((board) => ({ ...board, thicknessMm })) })).boards?.offer;
    expect(thick(50.4)).toMatchObject({ buy: [], missingCount: 5, tooThin: ['A', 'B', 'C', 'D', 'E'] });
    expect(thick(50.45)).toMatchObject({ missingCount: 0, tooThin: [] });
  });

  test('a part that comes out of no bar fails by its name, and the others are cut', () => {
    const { bars } = wholeBench().stock as Stock;
    const parts = bars?.parts.map((part) => (part.name === 'rail' ? { ...part, lengthMm: 2995 } : part));
    const shopping = shop(withStock({ bars: { ...bars, parts } as Stock['bars'] }));
    const check = shopping.checks.find(({ id }) => id === 'bars');
    expect(check?.status).toBe('fail');
    expect(check?.says).toMatch(/^stock\.bars\.parts, rail: 2995\.0 mm comes out of no bar tube 40 × 40 × 3/);
    expect(shopping.bars[0]?.cuts.flatMap(({ pieces }) => pieces.map(({ name }) => name)).sort()).toEqual([
      ...Array.from({ length: 4 }, () => 'foot'),
      ...Array.from({ length: 4 }, () => 'leg'),
    ]);
  });

  test('a liquid that is short and not on offer fails', () => {
    expect(verdict(withStock({ containers: [] }), 'liquids')).toMatchObject({
      status: 'fail',
      says: expect.stringMatching(/^stock\.containers: \d+ mL of varnish is missing, and no container/),
    });
  });

  test.each<[string, Partial<Stock>, RegExp]>([
    [
      'a container of something else',
      { containers: [{ liquid: 'varnsh', volumeMl: 250, eachPrice: 1 }] },
      /stock\.containers\[0\]\.liquid to be the name of one of the liquids of finish: "varnish", "mineral spirits", got varnsh$/,
    ],
    [
      'a price of thirds of a cent',
      { containers: [{ liquid: 'varnish', volumeMl: 250, eachPrice: 1.003 }] },
      /stock\.containers\[0\]\.eachPrice to be a price of at most two decimals, got 1\.003$/,
    ],
    [
      'a board that is all trim',
      { boardEdgeTrimMm: 80 },
      /stock\.boards\[1\]\.widthMm to be more than both trims and a saw cut, 163 mm, got 150$/,
    ],
  ])('%s is refused by its path', (_, changes, message) => {
    expect(() => planWorktop(withStock(changes))).toThrow(message);
  });
});
