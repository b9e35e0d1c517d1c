import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { equivalentGrits, findGrit, type GritList, gritTables, nearestGrit } from '../src/index.ts';

const lists = Object.keys(gritTables) as GritList[];
const everyRow = lists.flatMap((list) => gritTables[list].rows.map((row) => ({ list, row })));
const rising = (list: GritList) =>
  gritTables[list].rows.flatMap(({ grade, medianUm }, i, rows) => {
    const before = rows[i - 1];
    return before && medianUm >= before.medianUm ? [`${before.grade} ${grade}`] : [];
  });

test('every list gets finer row by row, but for the American one, which the unit database remarks on', () => {
  expect(everyRow).toHaveLength(28 + 39 + 41 + 23 + 19);
  expect(Object.fromEntries(lists.map((list) => [list, rising(list)]))).toEqual({
    'FEPA P': [],
    'FEPA F': [],
    ANSI: ['ANSI 600 ANSI 800'],
    CAMI: [],
    JIS: [],
  });
});

// Outside check: a dictionary of sizes (the source `sandpaper-sizes-page`, text seen as far as P120) beside the database.
test('a second table prints the same sizes of the coarse FEPA grades', () => {
  const printed =
    'P12 1815 P16 1324 P20 1000 P24 764 P30 642 P36 538 P40 425 P50 336 P60 269 P80 201 P100 162 P120 125';
  const pairs = [...printed.matchAll(/(P\d+) (\d+)/g)];
  expect(pairs).toHaveLength(12);
  for (const [, grade = '', size] of pairs) expect(findGrit(grade)?.medianUm, grade).toBe(Number(size));
});

// The unit database (GNU units, text) says that its ANSI grades coarser than 240 are those of FEPA F.
test('American grades coarser than 240 are those of FEPA F', () => {
  const macro = gritTables.ANSI.rows.filter(({ grade }) => Number(grade.slice(5)) < 240);
  expect(macro.length).toBeGreaterThan(25);
  for (const { grade, medianUm } of macro) {
    expect(findGrit(`F${grade.slice(5)}`)?.medianUm, grade).toBe(medianUm);
  }
});

test('the two American lists disagree, and each row that is known to says so', () => {
  const apart = gritTables.CAMI.rows.map(({ grade, medianUm }) => {
    const number = grade.slice(5);
    return [number, medianUm / (findGrit(`ANSI ${number}`)?.medianUm ?? Number.NaN)] as const;
  });
  const known = apart.filter(([, ratio]) => Number.isFinite(ratio));
  expect(known.length).toBeGreaterThan(15);
  expect(Math.max(...known.map(([, ratio]) => ratio))).toBeGreaterThan(1.3);
  for (const number of ['80', '220', '320', '400', '600']) {
    expect(findGrit(`CAMI ${number}`)?.citation?.erratum).toMatch(/^The list of ANSI coated grades/);
  }
  expect(findGrit('ANSI 800')?.citation?.erratum).toMatch(/^The list is not monotone/);
  expect(findGrit('P120')?.citation?.erratum).toBeUndefined();
});

test('a grade of a list is found by its name, however it is written', () => {
  for (const { list, row } of everyRow) {
    for (const name of [row.grade, row.grade.toLowerCase(), `  ${row.grade.replace(/(\D)(?=\d)/, '$1 ')} `]) {
      expect(findGrit(name)).toMatchObject({ list, grade: row.grade, medianUm: row.medianUm });
    }
  }
  for (const micro of ['15 µm', '15 μm', '15um', '15 micron', '15 microns']) {
    expect(findGrit(micro)).toEqual({ list: 'micron', grade: '15 µm', medianUm: 15, citation: null });
  }
});

test('what is no grade is null, and what may be several is refused', () => {
  for (const name of ['', 'P', 'P0', 'P120.5', '120P', 'X120', '-120', '77', 'ansi', '1e3 µm']) {
    expect(findGrit(name), name).toBeNull();
  }
  for (const bare of ['120', '#220', ' 400 ']) {
    expect(() => findGrit(bare)).toThrow(RangeError);
    expect(() => findGrit(bare)).toThrow(/to name its list/);
  }
  expect(() => findGrit(7 as unknown as string)).toThrow('findGrit requires grade to be text, got number');
  expect(() => findGrit('0 µm')).toThrow('between 0.1 and 5000 µm');
  expect(() => equivalentGrits('220')).toThrow('equivalentGrits requires grade to name its list');
  expect(equivalentGrits('P7')).toBeNull();
  expect(() => nearestGrit({ medianUm: 0, list: 'JIS' })).toThrow('medianUm between');
  expect(() => nearestGrit({ medianUm: 50, list: 'toString' as GritList })).toThrow('list');
});

test('the nearest grade has none nearer, and a grade is its own nearest in size', () => {
  fc.assert(
    fc.property(numberArb({ min: 0.1, max: 5000 }), fc.constantFrom(...lists), (medianUm, list) => {
      const sizes = gritTables[list].rows.map((row) => row.medianUm);
      const found = nearestGrit({ medianUm, list });
      const inside = medianUm >= Math.min(...sizes) && medianUm <= Math.max(...sizes);
      expect(found !== null).toBe(inside);
      if (!found) return;
      expect(found.sizeRatio).toBeCloseTo(found.medianUm / medianUm, 12);
      const off = (size: number) => Math.max(size / medianUm, medianUm / size);
      expect(off(found.medianUm)).toBeLessThanOrEqual(Math.min(...sizes.map(off)) * (1 + 1e-12));
    }),
  );
  for (const { list, row } of everyRow) {
    expect(nearestGrit({ medianUm: row.medianUm, list })?.medianUm).toBe(row.medianUm);
  }
});

test('equivalents are of every other list that goes so far, and of no other size than the nearest', () => {
  for (const { list, row } of everyRow) {
    const found = equivalentGrits(row.grade) ?? [];
    const expected = lists
      .filter((other) => other !== list)
      .flatMap((other) => nearestGrit({ medianUm: row.medianUm, list: other }) ?? []);
    expect(found).toEqual(expected);
  }
  expect(equivalentGrits('15 µm')?.map(({ list }) => list)).toEqual(lists);
});
