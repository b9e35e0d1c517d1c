import { describe, expect, test } from 'vitest';
import {
  dressedSize,
  dressedSizeTable,
  gluePressureTable,
  roughThickness,
  surfacedThickness,
  surfacedThicknessTable,
} from '../src/index.ts';

const IN = 25.4;

test('every row of the softwood table is found by its nominal size, dry and green', () => {
  expect(dressedSizeTable.length).toBeGreaterThan(30);
  for (const { use, side, nominalIn, dryIn, greenIn } of dressedSizeTable) {
    const asked = { use, side, nominalMm: nominalIn * IN };
    expect(dressedSize({ ...asked, dressed: 'dry' })?.actualMm).toBe(dryIn * IN);
    expect(dressedSize({ ...asked, dressed: 'green' })?.actualMm).toBe(greenIn * IN);
  }
});

test('green lumber is dressed larger than dry, and both smaller than their name', () => {
  for (const { nominalIn, dryIn, greenIn } of dressedSizeTable) {
    expect(greenIn).toBeGreaterThan(dryIn);
    expect(nominalIn).toBeGreaterThan(greenIn);
  }
});

// Section of dressed lumber: a table of structural lumber (see `structuralLumberPage`), actual dimensions of the names.
test.each([
  [2, 4, 1.5, 3.5],
  [2, 8, 1.5, 7.25],
  [2, 12, 1.5, 11.25],
  [4, 10, 3.5, 9.25],
] as const)('a %i × %i measures %f × %f in, as another table has it', (thick, wide, thickIn, wideIn) => {
  const use = 'dimension' as const;
  const dressed = 'dry' as const;
  expect(dressedSize({ use, side: 'thickness', nominalMm: thick * IN, dressed })?.actualMm).toBeCloseTo(
    thickIn * IN,
    9,
  );
  expect(dressedSize({ use, side: 'width', nominalMm: wide * IN, dressed })?.actualMm).toBeCloseTo(
    wideIn * IN,
    9,
  );
});

describe('hardwood', () => {
  test('what is thinnest to buy leaves enough, and the next thinner does not', () => {
    expect(surfacedThicknessTable.length).toBeGreaterThan(10);
    for (const faces of ['one', 'two'] as const) {
      for (let finishedMm = 2; finishedMm <= 95; finishedMm += 0.5) {
        const bought = roughThickness({ finishedMm, faces });
        expect(bought?.surfacedMm).toBeGreaterThanOrEqual(finishedMm - 0.01);
        const thinner = surfacedThicknessTable
          .filter(({ roughIn }) => roughIn * IN < (bought?.roughMm ?? 0))
          .flatMap(({ roughIn }) => surfacedThickness({ roughMm: roughIn * IN, faces })?.surfacedMm ?? []);
        expect(Math.max(0, ...thinner)).toBeLessThan(finishedMm);
      }
    }
  });

  test('planing the second face takes more, and says where it is from', () => {
    for (const { roughIn, oneFaceIn, twoFacesIn } of surfacedThicknessTable) {
      expect(twoFacesIn).toBeLessThan(oneFaceIn ?? roughIn);
      expect(surfacedThickness({ roughMm: roughIn * IN, faces: 'two' })?.citation.confirmed).toBe(
        roughIn === 2.5 ? 'memory' : 'text',
      );
    }
  });

  test('has no figure where none is printed', () => {
    expect(surfacedThickness({ roughMm: 1.75 * IN, faces: 'one' })).toBeNull();
    expect(roughThickness({ finishedMm: 120, faces: 'two' })).toBeNull();
  });
});

test('published pressures are those of an edge joint: between half and twice a megapascal', () => {
  expect(gluePressureTable).toHaveLength(2);
  for (const { pressurePsi } of gluePressureTable) {
    expect(pressurePsi * 0.00689476).toBeGreaterThan(0.5);
    expect(pressurePsi * 0.00689476).toBeLessThan(2);
  }
});

test('says what is wrong', () => {
  expect(() =>
    dressedSize({ use: 'timber' as never, side: 'width', nominalMm: 50.8, dressed: 'dry' }),
  ).toThrow('dressedSize requires use to be one of board, dimension, got "timber"');
  expect(() => surfacedThickness({ roughMm: 0, faces: 'two' })).toThrow('roughMm between 1 and 1000, got 0');
  expect(() => roughThickness({ finishedMm: 20, faces: 'three' as never })).toThrow(
    'faces to be one of one, two',
  );
});
