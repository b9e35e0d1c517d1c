import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  kindOfFit,
  limitDeviationsTable,
  type StandardFitInput,
  standardFit,
  standardTolerance,
  type ToleranceGrade,
} from '../src/index.ts';

/**
 * Standard tolerances, µm, by grade and step of nominal sizes.
 * Source: "Index of ISO hole and shaft tolerances" (2007), tolerance band in micrometres, as text.
 */
const steps = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315];
const printed: Readonly<Record<number, readonly number[]>> = {
  6: [8, 9, 11, 13, 16, 19, 22, 25, 29, 32],
  7: [12, 15, 18, 21, 25, 30, 35, 40, 46, 52],
  8: [18, 22, 27, 33, 39, 46, 54, 63, 72, 81],
  9: [30, 36, 43, 52, 62, 74, 87, 100, 115, 130],
  10: [48, 58, 70, 84, 100, 120, 140, 160, 185, 210],
  11: [75, 90, 110, 130, 160, 190, 220, 250, 290, 320],
  12: [120, 150, 180, 210, 250, 300, 350, 400, 460, 520],
  13: [180, 220, 270, 330, 390, 460, 540, 630, 720, 810],
  14: [300, 360, 430, 520, 620, 740, 870, 1000, 1150, 1300],
};

/** To what a table of ISO 286 rounds a width of this size. From memory, and borne out by the figures above. */
const roundedTo = (widthUm: number) => (widthUm < 100 ? 1 : widthUm < 200 ? 5 : widthUm < 500 ? 10 : 20);

/** Annex A.3.1 of ISO 286-1:1988 says itself that the system has discontinuities, being older than its formula. */
const otherwiseRounded = [
  ...['IT6 over 3', 'IT7 over 6', 'IT7 over 10', 'IT9 over 3'],
  ...['IT10 over 3', 'IT10 over 6', 'IT10 over 10', 'IT11 over 3', 'IT11 over 30', 'IT11 over 50'],
  ...['IT12 over 3', 'IT12 over 6', 'IT12 over 10', 'IT13 over 3', 'IT14 over 3'],
];

describe('standardTolerance beside the printed tables', () => {
  const cells = Object.entries(printed).flatMap(([grade, widths]) =>
    widths.map((printedUm, i) => {
      const [overMm = Number.NaN, upToMm = Number.NaN] = steps.slice(i);
      const ours = standardTolerance({ overMm, upToMm, grade: `IT${grade}` as ToleranceGrade }).toleranceUm;
      return { cell: `IT${grade} over ${overMm}`, printedUm, off: Math.abs(ours - printedUm) };
    }),
  );

  test('is the printed figure once rounded, but for fifteen that the standard did not round so', () => {
    const rounded = (one: (typeof cells)[number]) => one.off <= roundedTo(one.printedUm) / 2;
    expect(cells).toHaveLength(90);
    expect(cells.filter((one) => !rounded(one)).map(({ cell }) => cell)).toEqual(otherwiseRounded);
    for (const { printedUm, off } of cells) expect(off).toBeLessThan(2 * roundedTo(printedUm));
  });

  // Source: as an engineering reference site quotes ISO 286-1: from IT6 upwards, ten times as much at each fifth step.
  test('is ten times as wide five grades on', () => {
    const width = (grade: number) =>
      standardTolerance({ overMm: 18, upToMm: 30, grade: `IT${grade}` as ToleranceGrade }).toleranceUm;
    for (let grade = 6; grade <= 13; grade++) {
      expect(width(grade + 5) / width(grade)).toBeCloseTo(10, 10);
      expect(width(grade + 1)).toBeGreaterThan(width(grade));
    }
  });

  test('the widths of our own table are those of the printed one', () => {
    for (const row of limitDeviationsTable) {
      const widths = printed[Number(row.toleranceClass.slice(1))] ?? [];
      expect(row.upperDeviationUm - row.lowerDeviationUm).toBe(widths[steps.indexOf(row.overMm)]);
      expect(steps[steps.indexOf(row.overMm) + 1]).toBe(row.upToMm);
    }
    expect(limitDeviationsTable).toHaveLength(24);
  });

  test('the recalled rows of g6 are those that a page prints which reprints JIS B 0401:1999', () => {
    const g6 = limitDeviationsTable.filter(({ toleranceClass }) => toleranceClass === 'g6');
    expect(g6.map((row) => [row.upperDeviationUm, row.lowerDeviationUm])).toEqual([
      [-4, -12],
      [-5, -14],
      [-6, -17],
      [-7, -20],
    ]);
  });
});

describe('standardFit', () => {
  const sizes = fc.record({
    nominalMm: numberArb({ min: 3, max: 30 }),
    holeClass: fc.constantFrom('H7', 'H8', 'H11', 'H13'),
    shaftClass: fc.constantFrom('g6', 'h6'),
  }) as fc.Arbitrary<StandardFitInput>;

  // Source: "Engineering Drawing (Mechanical)", National Instructional Media Institute, p. 219.
  test('20 H7/g6 has 0.007 to 0.041 mm of play, as a course book works it out', () => {
    const fit = standardFit({ nominalMm: 20, holeClass: 'H7', shaftClass: 'g6' });
    expect(fit?.leastClearanceMm).toBeCloseTo(0.007, 12);
    expect(fit?.mostClearanceMm).toBeCloseTo(0.041, 12);
    expect(fit?.kind).toBe('clearance');
  });

  test('the play varies by both tolerances together, and every fit to a hole H of h or g slides', () => {
    fc.assert(
      fc.property(sizes, (input) => {
        const fit = standardFit(input);
        expect(fit === null).toBe(input.nominalMm === 3);
        if (!fit) return;
        const { hole, shaft, leastClearanceMm, mostClearanceMm } = fit;
        const width = hole.upperLimitMm - hole.lowerLimitMm + shaft.upperLimitMm - shaft.lowerLimitMm;
        expect(mostClearanceMm - leastClearanceMm).toBeCloseTo(width, 12);
        expect(fit.kind).toBe('clearance');
        expect(hole.lowerLimitMm).toBe(input.nominalMm);
      }),
    );
  });

  // Source: as above, p. 220: 25 H7/p6 and 75 H8/j7.
  test('tells the three kinds of fit apart', () => {
    expect(kindOfFit({ leastClearanceMm: -0.035, mostClearanceMm: -0.001 })).toBe('interference');
    expect(kindOfFit({ leastClearanceMm: -0.018, mostClearanceMm: 0.058 })).toBe('transition');
    expect(kindOfFit({ leastClearanceMm: 0.007, mostClearanceMm: 0.041 })).toBe('clearance');
    expect(kindOfFit({ leastClearanceMm: 0, mostClearanceMm: 0 })).toBe('clearance');
    expect(kindOfFit({ leastClearanceMm: -0.001, mostClearanceMm: 0 })).toBe('interference');
  });

  test.each([
    [{ nominalMm: Number.NaN, holeClass: 'H7', shaftClass: 'g6' }, 'nominalMm between 0 and 500, got NaN'],
    [
      { nominalMm: 20, holeClass: 'h6', shaftClass: 'g6' },
      'holeClass to be one of H7, H8, H11, H13, got "h6"',
    ],
    [{ nominalMm: 20, holeClass: 'H7', shaftClass: 'H7' }, 'shaftClass to be one of g6, h6, got "H7"'],
    [undefined, 'nominalMm between 0 and 500, got undefined'],
  ])('refuses %o', (input, says) => {
    expect(() => standardFit(input as StandardFitInput)).toThrow(`standardFit requires ${says}`);
  });
});
