import { expect, test } from 'vitest';
import {
  exposureLimitTables,
  findExposureLimits,
  findSolvent,
  finishingHazards,
  massConcentration,
  namesLike,
  solventTable,
} from '../src/index.ts';

// Outside check: the pocket guide prints 1 ppm in mg/m³ for single substances (text seen).
test('the conversions of the pocket guide', () => {
  const printed = { 'Ethyl alcohol': 1.89, 'Isopropyl alcohol': 2.46, Toluene: 3.77, Turpentine: 5.56 };
  for (const [name, mgPerM3] of Object.entries(printed)) {
    const molarMassGPerMol = findSolvent(name)?.lowMolarMassGPerMol ?? Number.NaN;
    const ours = massConcentration({ concentrationPpm: 1, molarMassGPerMol }).concentrationMgPerM3;
    expect(Math.abs(ours - mgPerM3), name).toBeLessThanOrEqual(0.005);
  }
});

test('limits that are printed in both units agree by the molar mass, to the rounding of agencies', () => {
  const both = exposureLimitTables.flatMap(({ rows }) =>
    rows.flatMap(({ substance, limitPpm, limitMgPerM3 }) =>
      limitPpm !== null && limitMgPerM3 !== null ? [{ substance, limitPpm, limitMgPerM3 }] : [],
    ),
  );
  expect(both.length).toBeGreaterThan(35);
  for (const { substance, limitPpm, limitMgPerM3 } of both) {
    const molarMassGPerMol = findSolvent(substance)?.lowMolarMassGPerMol ?? Number.NaN;
    const ours = massConcentration({ concentrationPpm: limitPpm, molarMassGPerMol }).concentrationMgPerM3;
    // ACGIH reckons Stoddard solvent with another molar mass: 525 mg/m³ for 100 ppm.
    // VM&P naphtha is a mixture of 87 to 114 g/mol, and ACGIH takes one of its heavier kinds.
    const within = { 'Stoddard solvent': 0.13, 'VM&P naphtha': 114 / 87 - 1 }[substance] ?? 0.015;
    expect(Math.abs(ours / limitMgPerM3 - 1), `${substance} ${limitPpm}`).toBeLessThanOrEqual(within);
  }
});

test('every solvent is found by each of its names, and every limit has its citation', () => {
  expect(solventTable).toHaveLength(10);
  for (const { substance, alsoCalled } of solventTable) {
    for (const name of [substance, ...alsoCalled.split(';')]) {
      expect(findSolvent(name.toUpperCase())?.substance, name).toBe(substance);
      const candidates = namesLike(name).map((one) => one.substance);
      expect(candidates, name).toContain(substance);
    }
    const limits = findExposureLimits(substance);
    expect(limits.length, substance).toBeGreaterThan(0);
    for (const { citation, limitPpm, limitMgPerM3 } of limits) {
      expect(citation.at).toContain(substance);
      expect(limitPpm === null && limitMgPerM3 === null).toBe(false);
    }
  }
  const rows = exposureLimitTables.flatMap((table) => table.rows);
  const found = [...solventTable.map(({ substance }) => substance), 'Wood dust'].flatMap(findExposureLimits);
  expect(found).toHaveLength(rows.length);
  expect(findExposureLimits('mineral spirits').find(({ citation }) => citation.erratum)?.limitPpm).toBe(500);
  expect(findSolvent('wood dust')).toBeNull();
  expect(findSolvent('')).toBeNull();
  expect(() => findExposureLimits(3 as unknown as string)).toThrow('name to be text, got number');
});

// Each of these was once taken for the substance behind it, whose longer name holds it.
test('a part of a name is no name: it finds nothing, and says what could be meant', () => {
  const parts = {
    benzene: 'Toluene',
    ketone: 'Acetone',
    acetate: 'n-Butyl acetate',
    butyl: 'n-Butyl acetate',
    propanol: 'Isopropyl alcohol',
    ethyl: 'Ethyl alcohol',
    solvent: 'Stoddard solvent',
    safety: 'Stoddard solvent',
    white: 'Stoddard solvent',
    '2': 'Acetone',
    alcohol: 'Methyl alcohol',
  };
  for (const [part, meant] of Object.entries(parts)) {
    expect(findSolvent(part), part).toBeNull();
    expect(findExposureLimits(part), part).toEqual([]);
    expect(
      namesLike(part).map(({ substance }) => substance),
      part,
    ).toContain(meant);
  }
  const words = solventTable.flatMap((row) => `${row.substance} ${row.alsoCalled}`.split(/[^A-Za-z0-9]+/));
  const names = solventTable.flatMap((row) => [row.substance, ...row.alsoCalled.split('; ')]);
  expect(words.length).toBeGreaterThan(40);
  for (const word of words) {
    const isName = names.some((name) => name.toLowerCase() === word.toLowerCase());
    expect(findSolvent(word) !== null, word).toBe(isName);
  }
});

test('no name means two substances, and mixtures lead to what they often hold', () => {
  const names = solventTable.flatMap((row) => [row.substance, ...row.alsoCalled.split('; ')]);
  expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
  const mixtures = ['denatured alcohol', 'methylated spirits', 'paint thinner', 'lacquer thinner'];
  for (const mixture of mixtures) {
    expect(findSolvent(mixture), mixture).toBeNull();
    const candidates = namesLike(mixture);
    expect(candidates.length, mixture).toBeGreaterThan(0);
    for (const { substance } of candidates) expect(findSolvent(substance)?.substance).toBe(substance);
  }
  expect(namesLike('denatured alcohol').map(({ substance }) => substance)).toContain('Methyl alcohol');
  expect(namesLike('')).toEqual([]);
  expect(() => namesLike(2 as unknown as string)).toThrow('namesLike requires name to be text, got number');
});

test('limits of ACGIH that have since gone down say so', () => {
  const gone = ['turpentine', 'toluene', 'isopropyl alcohol', 'butyl acetate', 'xylene'];
  for (const name of gone) {
    const old = findExposureLimits(name).filter(({ setBy }) => setBy === 'ACGIH');
    expect(old.length, name).toBeGreaterThan(0);
    for (const { citation } of old) expect(citation.erratum, name).toMatch(/^Out of date: .* \(recalled\)/);
  }
});

// Source: NIST, the definition of the degree Fahrenheit: 32 °F is 0 °C and 212 °F is 100 °C.
test('flash points stand in °C too', () => {
  for (const { substance } of solventTable) {
    const found = findSolvent(substance);
    for (const side of ['low', 'high'] as const) {
      const fahrenheit = found?.[`${side}FlashPointF`] ?? Number.NaN;
      expect(found?.[`${side}FlashPointC`]).toBeCloseTo(((fahrenheit - 32) * 100) / (212 - 32), 9);
    }
  }
});

// The tip sheet on oily rags: not in a pile, outdoors to dry, then a tight metal container of water.
test('cautions on rags and on waste tell the same order', () => {
  const saying = (kind: string) => finishingHazards.find((one) => one.kind === kind)?.says ?? '';
  for (const says of [saying('oily rags'), saying('waste')]) {
    expect(says).toMatch(/flat outdoors.*then .*metal can.*water.*every day/);
    expect(says).not.toMatch(/at once|, or /);
  }
});

test('every caution is a sentence with a source, but for the one that leads to the product', () => {
  const kinds = finishingHazards.map(({ kind }) => kind);
  expect(kinds).toEqual(['oily rags', 'waste', 'vapour', 'ignition', 'dust', 'product']);
  for (const { kind, says, citations } of finishingHazards) {
    expect(says, kind).toMatch(/^[A-Z].{30,}\.$/);
    expect(citations.length > 0, kind).toBe(kind !== 'product');
    for (const { confirmed, at } of citations) expect([confirmed, at.length > 10]).toEqual(['text', true]);
  }
});
