import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { woodHandbook2010, woodHandbook2021 } from '@scantling/rules/sources';
import { notStructuralDesign, slipsFirst } from '../cautions.ts';
import { MM_PER_IN, N_PER_LBF } from '../inch-pound.ts';
import { airDryInput, shankInput } from '../withdrawal-terms.ts';

const limits = {
  shankDiameterMm: { min: 0.5, max: 30 },
  airDrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

/** K in N and mm: up to which specific gravity, then nail, screw, lag screw; the first row says from where. */
const coefficients = {
  hardwood: [[0.32], [0.47, 50.04, 23.17, 26.34], [0.56, 69.5, 31.99, 29.51], [0.74, 94.52, 44.13, 34.13]],
  softwood: [[0.28], [0.42, 50.04, 23.17, 23.3], [0.47, 62.55, 29.79, 26.34], [0.52, 76.45, 36.4, 29.51]],
} as const;

const column = { nail: 1, woodScrew: 2, lagScrew: 3 } as const;

export interface LateralTestValueInput {
  readonly fastener: keyof typeof column;
  /** Whether it is wood of a broadleaf or of a conifer. */
  readonly wood: keyof typeof coefficients;
  /** Diameter of the shank, mm, 0.5 to 30. */
  readonly shankDiameterMm: number;
  /** Specific gravity: ovendry mass, volume at 12 % moisture content, 0.1 to 1.3; taken to two decimals. */
  readonly airDrySpecificGravityRatio: number;
}

export interface LateralTestValue {
  /** Sideways force up to which the joint sprang back in tests, N; `null` where the table has no such wood. */
  readonly proportionalLimitN: number | null;
}

/** K of the table for the specific gravity to two decimals; `undefined` where the table has no such wood. */
function coefficientOf({ wood, fastener, airDrySpecificGravityRatio }: LateralTestValueInput) {
  const asTabulated = Math.round(100 * airDrySpecificGravityRatio) / 100;
  return coefficients[wood].find(([upTo]) => asTabulated <= upTo)?.[column[fastener]];
}

/**
 * The sideways force up to which joints with nails, wood screws or lag screws sprang back in tests, on average: a test
 * value, along the grain, for a screw that is seven diameters and more in the wood. It gave way at several times as much.
 *
 * @returns The proportional limit, N; `null` for a specific gravity that the table does not have.
 * @throws RangeError where an input is outside its limits.
 * Source: Wood Handbook (FPL-GTR-282), Table 8-4 with Eq. 8-2, 8-13 and 8-15.
 * @example
 * ```ts
 * import { lateralTestValue } from '@scantling/fastening';
 * // A No. 10 screw in sugar maple: 44.13 × 4.83²
 * const maple = { wood: 'hardwood', airDrySpecificGravityRatio: 0.63 };
 * lateralTestValue({ ...maple, fastener: 'woodScrew', shankDiameterMm: 4.83 }).proportionalLimitN // => 1029.5
 * lateralTestValue({ ...maple, fastener: 'woodScrew', shankDiameterMm: 4.83, airDrySpecificGravityRatio: 0.8 }) // => { proportionalLimitN: null }
 * ```
 */
export function lateralTestValue(input: LateralTestValueInput): LateralTestValue {
  requireInputs('lateralTestValue', input, limits);
  const { fastener, wood, shankDiameterMm } = input;
  requireChoice('lateralTestValue', 'fastener', fastener, Object.keys(column));
  requireChoice('lateralTestValue', 'wood', wood, Object.keys(coefficients));
  const coefficient = coefficientOf(input);
  if (coefficient === undefined) return { proportionalLimitN: null };
  return { proportionalLimitN: coefficient * shankDiameterMm ** (fastener === 'nail' ? 1.5 : 2) };
}

/** The same table in inches and pounds. */
function inInches({ fastener, wood, shankDiameterMm, airDrySpecificGravityRatio: g }: LateralTestValueInput) {
  const rows =
    wood === 'hardwood'
      ? [
          [0.475, 1440, 3360, 3820],
          [0.565, 2000, 4640, 4280],
          [0.745, 2720, 6400, 4950],
        ]
      : [
          [0.425, 1440, 3360, 3380],
          [0.475, 1800, 4320, 3820],
          [0.525, 2200, 5280, 4280],
        ];
  const row = rows.find(([upTo]) => g < (upTo as number)) ?? [];
  const power = fastener === 'nail' ? 1.5 : 2;
  return (row[column[fastener]] ?? Number.NaN) * (shankDiameterMm / MM_PER_IN) ** power * N_PER_LBF;
}

type Cell = readonly [keyof typeof column, keyof typeof coefficients, number, number, string, string];

/** What a figure of the table makes of 4 mm or 5 mm. */
const cells: readonly Cell[] = [
  ['nail', 'hardwood', 0.4, 4, '400.32', '50.04 × 4^1.5 = 400.32 N'],
  ['woodScrew', 'hardwood', 0.5, 5, '799.75', '31.99 × 5² = 799.75 N'],
  ['lagScrew', 'hardwood', 0.7, 5, '853.25', '34.13 × 5² = 853.25 N'],
  ['nail', 'softwood', 0.45, 4, '500.40', '62.55 × 4^1.5 = 500.40 N'],
  ['woodScrew', 'softwood', 0.5, 5, '910.00', '36.40 × 5² = 910.00 N'],
  ['lagScrew', 'softwood', 0.35, 5, '582.50', '23.30 × 5² = 582.50 N'],
];

export const lateralTestValueRule = /* @__PURE__ */ defineRule<LateralTestValueInput, LateralTestValue>(
  () => ({
    id: 'fastening/lateral-test-value',
    title: 'Screw pushed sideways: test value',
    summary:
      'The sideways force up to which joints with nails, wood screws or lag screws sprang back in tests, on average.',
    basis: 'measured',
    inputs: {
      fastener: {
        kind: 'choice',
        label: 'Fastener',
        options: { nail: 'Nail', woodScrew: 'Wood screw', lagScrew: 'Lag screw' },
      },
      wood: { kind: 'choice', label: 'Wood', options: { hardwood: 'Hardwood', softwood: 'Softwood' } },
      shankDiameterMm: shankInput(limits.shankDiameterMm),
      airDrySpecificGravityRatio: airDryInput(limits.airDrySpecificGravityRatio),
    },
    outputs: { proportionalLimitN: { label: 'Proportional limit', unit: 'N' } },
    compute: lateralTestValue,
    formula: 'p = K D^n',
    symbols: {
      p: 'proportional limit, N',
      K: 'by wood and fastener, from the table',
      D: 'shank diameter, mm',
      n: '3/2 for nails, 2 for screws',
    },
    inSymbols: (input, { proportionalLimitN }) => {
      const coefficient = coefficientOf(input);
      return {
        ...(proportionalLimitN !== null && { p: proportionalLimitN }),
        ...(coefficient !== undefined && { K: coefficient }),
        D: input.shankDiameterMm,
        n: input.fastener === 'nail' ? 1.5 : 2,
      };
    },
    valid: { airDrySpecificGravityRatio: [0.29, 0.74] },
    sources: [
      {
        source: woodHandbook2021,
        at: 'Table 8-4 in metric form, Eq. 8-2, 8-13 and 8-15, p. 8-6 to 8-13',
        confirmed: 'text',
        tier: 'reprint',
      },
      { source: woodHandbook2010, at: 'Eq. 8-15 with its conditions', confirmed: 'text' },
    ],
    examples: cells.map(
      ([fastener, wood, airDrySpecificGravityRatio, shankDiameterMm, printed, working]) => ({
        given: { fastener, wood, airDrySpecificGravityRatio, shankDiameterMm },
        expect: { proportionalLimitN: printed },
        from: { workedByHand: working },
      }),
    ),
    laws: [
      {
        of: 'proportionalLimitN',
        by: { shankDiameterMm: 'increasing', airDrySpecificGravityRatio: 'increasing' },
      },
    ],
    peers: [
      {
        name: 'the same table in inches and pounds',
        of: 'proportionalLimitN',
        compute: inInches,
        // Both tables are rounded as printed.
        relative: 4e-4,
        source: { source: woodHandbook2010, at: 'Table 8-4, inch-pound', confirmed: 'memory' },
      },
    ],
    cautions: [slipsFirst, notStructuralDesign],
  }),
);
