import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import { structuralLumberPage, woodHandbook2010 } from '@scantling/rules/sources';
import { notStructural } from '../cautions.ts';

const limits = {
  widthMm: { min: 1, max: 5000 },
  depthMm: { min: 1, max: 1000 },
  holesMm: { min: 0, max: 5000 },
} as const;

export interface RectangularSectionInput {
  /** Width of the section, mm, 1 to 5000: of a top, its width. */
  readonly widthMm: number;
  /** Depth in the direction of the load, mm, 1 to 1000: of a top, its thickness. */
  readonly depthMm: number;
  /** Diameters of the holes through the depth that the section cuts, together, mm, 0 to below the width. */
  readonly holesMm: number;
}

export interface RectangularSection {
  /** Second moment of area about the middle of the depth, mm⁴: what resists bending. */
  readonly secondMomentMm4: number;
  /** Five sixths of the area, mm²: what resists shear. */
  readonly shearAreaMm2: number;
}

/**
 * What a rectangular section has to resist bending and shear, holes taken out. A section through a row of holes, taken
 * for the whole length, overstates the sag; one without holes understates it.
 *
 * @returns Second moment of area, mm⁴, and shear area, mm².
 * @throws RangeError where an input is outside its limits, or the holes leave no wood.
 * Source: Wood Handbook (FPL-GTR-190), Eqs. 9-3 and 9-4, for the width that the holes leave.
 * @example
 * ```ts
 * import { rectangularSection } from '@scantling/stock';
 * // A top 600 × 45 mm, and the same through a row of five holes of 20 mm
 * rectangularSection({ widthMm: 600, depthMm: 45, holesMm: 0 }) // => { secondMomentMm4: 4556250, shearAreaMm2: 22500 }
 * rectangularSection({ widthMm: 600, depthMm: 45, holesMm: 100 }) // => { secondMomentMm4: 3796875, shearAreaMm2: 18750 }
 * ```
 */
export function rectangularSection(input: RectangularSectionInput): RectangularSection {
  requireInputs('rectangularSection', input, limits);
  const { widthMm, depthMm, holesMm } = input;
  requireThat('rectangularSection', holesMm < widthMm, `holesMm below widthMm, got ${holesMm}`);
  const solidMm = widthMm - holesMm;
  return { secondMomentMm4: (solidMm * depthMm ** 3) / 12, shearAreaMm2: (solidMm * depthMm * 5) / 6 };
}

export const rectangularSectionRule = /* @__PURE__ */ defineRule(() => {
  const IN4 = 25.4 ** 4;
  const listed = (row: string) => ({
    source: structuralLumberPage,
    at: `moment of inertia, row ${row}`,
    confirmed: 'text' as const,
  });
  return {
    id: 'stock/rectangular-section',
    title: 'Section of a top or bar',
    summary: 'What a rectangular section has to resist bending and shear, with holes taken out of it.',
    basis: 'derived',
    inputs: {
      widthMm: { kind: 'number', label: 'Width', unit: 'mm', ...limits.widthMm },
      depthMm: {
        kind: 'number',
        label: 'Depth',
        unit: 'mm',
        ...limits.depthMm,
        help: 'In the direction of the load: the thickness of a top.',
      },
      holesMm: {
        kind: 'number',
        label: 'Holes cut by the section, together',
        unit: 'mm',
        ...limits.holesMm,
        help: 'The sum of the diameters of holes that go through the depth, along one row across.',
      },
    },
    outputs: {
      secondMomentMm4: { label: 'Second moment of area', unit: 'mm⁴' },
      shearAreaMm2: { label: 'Shear area', unit: 'mm²' },
    },
    compute: rectangularSection,
    formula: String.raw`I = \frac{(b - d) \, h^3}{12}, \qquad A' = \frac{5}{6} \, (b - d) \, h`,
    symbols: { b: 'width', d: 'holes together', h: 'depth', I: 'second moment of area', "A'": 'shear area' },
    inSymbols: (input, output) => ({
      I: output.secondMomentMm4,
      "A'": output.shearAreaMm2,
      b: input.widthMm,
      d: input.holesMm,
      h: input.depthMm,
    }),
    requires: [
      { says: 'Holes narrower than the width.', holds: ({ widthMm, holesMm }) => holesMm < widthMm },
    ],
    sources: [
      {
        source: woodHandbook2010,
        at: 'ch. 9, Eqs. 9-3 and 9-4, what they are for; that holes make beams sag more',
        confirmed: 'text',
      },
      { source: woodHandbook2010, at: 'the two formulas themselves', confirmed: 'memory' },
    ],
    examples: [
      {
        given: { widthMm: 1.5 * 25.4, depthMm: 3.5 * 25.4, holesMm: 0 },
        expect: { secondMomentMm4: { printed: '5.36', unit: 'in⁴', times: IN4 } },
        from: listed('2 × 4, 1.5 × 3.5 in'),
      },
      {
        given: { widthMm: 11.25 * 25.4, depthMm: 2.5 * 25.4, holesMm: 0 },
        expect: { secondMomentMm4: { printed: '14.6', unit: 'in⁴', times: IN4 } },
        from: { workedByHand: '11.25 × 2.5³ / 12 = 14.6 in⁴' },
      },
      {
        given: { widthMm: 600, depthMm: 45, holesMm: 100 },
        expect: { secondMomentMm4: '3796875', shearAreaMm2: '18750' },
        from: {
          workedByHand:
            '600 − 100 = 500 mm of wood; 500 × 45³ / 12 = 3796875 mm⁴; 500 × 45 × 5 / 6 = 18750 mm²',
        },
      },
    ],
    laws: [
      { of: 'secondMomentMm4', by: { depthMm: 'increasing', widthMm: 'linear', holesMm: 'decreasing' } },
      { of: 'shearAreaMm2', by: { depthMm: 'proportional', holesMm: 'linear' } },
    ],
    cautions: [notStructural],
  };
});
