import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type AnyRule, checkRange, defineRule, rulesIn, unitOf } from '../src/index.ts';
import * as sources from '../src/sources.ts';

const moisture = { kind: 'number', label: 'Moisture content', unit: '%', min: 0, max: 30 } as const;
const readings = {
  kind: 'numbers',
  label: 'Readings',
  unit: 'mm',
  min: 0,
  max: 99,
  minItems: 0,
  maxItems: 9,
} as const;
const inputs = {
  moisturePct: moisture,
  readingsMm: readings,
  factor: { ...moisture, label: 'Factor', unit: '1' as const },
};
/** A card of these inputs, with nothing else on it. */
const rule = (valid?: AnyRule['valid']) =>
  ({ inputs, valid }) as unknown as Pick<AnyRule, 'inputs' | 'valid'>;

const valid = { moisturePct: [6, 14], readingsMm: [10, 20] } as const;

test('each input outside the claimed range has a note, and no other', () => {
  const number = fc.double({ min: 0, max: 30, noNaN: true });
  fc.assert(
    fc.property(number, fc.array(number, { maxLength: 5 }), number, (moisturePct, readingsMm, factor) => {
      const notes = checkRange(rule(valid), { moisturePct, readingsMm, factor });
      const expected = [
        ...[moisturePct].filter((x) => x < 6 || x > 14).map((given) => ({ input: 'moisturePct', given })),
        ...readingsMm.filter((x) => x < 10 || x > 20).map((given) => ({ input: 'readingsMm', given })),
      ];
      expect(notes.map(({ input, given }) => ({ input, given }))).toEqual(expected);
      for (const { message, given, valid } of notes) {
        const said = Number(/(-?\d\S*)/.exec(message)?.[1]);
        expect(Math.abs(said - given)).toBeLessThanOrEqual(5.001e-4 * given);
        expect(said < valid[0] || said > valid[1]).toBe(true);
      }
    }),
  );
});

test('the limits of the claimed range have no note; NaN has', () => {
  const narrow = rule({ moisturePct: [6, 14] });
  expect(checkRange(narrow, { moisturePct: 6 })).toEqual([]);
  expect(checkRange(narrow, { moisturePct: 14 })).toEqual([]);
  expect(checkRange(narrow, { moisturePct: Number.NaN })).toHaveLength(1);
});

test('a note says what, how much and which range; a pure number has no unit', () => {
  const both = rule({ moisturePct: [6, 14], factor: [1, 2] });
  expect(checkRange(both, { moisturePct: 20, factor: 3 }).map(({ message }) => message)).toEqual([
    'Moisture content 20 % is outside 6 to 14 %, the range that the source claims.',
    'Factor 3 is outside 1 to 2, the range that the source claims.',
  ]);
});

test('a note says four digits of a number, unless they would be inside the range', () => {
  const note = (moisturePct: number) => checkRange(rule({ moisturePct: [6, 14] }), { moisturePct })[0];
  expect(note(27.524918021643558)).toMatchObject({
    given: 27.524918021643558,
    message: 'Moisture content 27.52 % is outside 6 to 14 %, the range that the source claims.',
  });
  expect(note(14.0004)?.message).toContain('Moisture content 14.0004 % is outside 6 to 14 %');
});

test('a rule without a claimed range has no notes', () => {
  expect(checkRange(rule(), { moisturePct: 29 })).toEqual([]);
});

test.each([
  ['widthMm', 'mm'],
  ['areaM2', 'm²'],
  ['volumeMm3', 'mm³'],
  ['spreadingRateM2PerL', 'm²/L'],
  ['densityKgPerM3', 'kg/m³'],
  ['coefficientPerPct', '1/%'],
  ['moisturePct', '%'],
  ['temperatureC', '°C'],
  ['massKg', 'kg'],
  ['massG', 'g'],
  ['modulusMPa', 'MPa'],
  ['pressurePa', 'Pa'],
  ['volumeMl', 'mL'],
  ['volumeL', 'L'],
  ['forceN', 'N'],
  ['pitchXMm', 'mm'],
  ['parts', '1'],
  ['count', '1'],
  ['Mm', '1'],
  ['RAM', '1'],
  ['', '1'],
])('the unit in %s is %s', (name, unit) => {
  expect(unitOf(name)).toBe(unit);
});

test('what stands before a unit does not change it', () => {
  const stem = fc.stringMatching(/^[a-z]{1,8}([A-Z][a-z]{1,8}){0,2}$/);
  fc.assert(
    fc.property(stem, fc.constantFrom('Mm', 'M2', 'Pct', 'KgPerM3', 'C', 'L', 'Ml'), (name, suffix) => {
      expect(unitOf(name + suffix)).toBe(unitOf(`x${suffix}`));
    }),
  );
});

const card = (id: string) =>
  defineRule(() => ({ id, formula: 'x', compute: () => ({}) }) as unknown as AnyRule);

test('the rules of a package are found among whatever else it exports, in the order of their ids', () => {
  const exports = {
    b: card('demo/b'),
    half: () => 1,
    a: card('demo/a'),
    table: [1],
    none: null,
    text: 'demo/c',
  };
  expect(rulesIn(exports).map(({ id }) => id)).toEqual(['demo/a', 'demo/b']);
});

test('every source file is exported, and every source can be found again', () => {
  const files = readdirSync(new URL('../src/sources', import.meta.url)).map((file) =>
    file.replace(/\.ts$/, ''),
  );
  const all = Object.values(sources);
  expect(files.length).toBeGreaterThan(0);
  expect(all.map(({ id }) => id).sort()).toEqual(files.sort());
  for (const { title, author, year, url } of all) {
    expect(title).toMatch(/\S{2}/);
    expect(author).toMatch(/\S{2}/);
    if (year !== undefined) expect(Number.isInteger(year)).toBe(true);
    if (url !== undefined) expect(new URL(url).protocol).toMatch(/^https?:$/);
  }
});
