import { defineRule, requireInputs } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign } from '../cautions.ts';
import { inPsi, MM_PER_IN, MPA_PER_PSI } from '../inch-pound.ts';

const limits = { diameterMm: { min: 2.5146, max: 25.4 } } as const;

export interface BendingYieldStrengthInput {
  /** Nominal diameter of the screw or nail, mm, 2.5146 (0.099 in) to 25.4. */
  readonly diameterMm: number;
}

export interface BendingYieldStrength {
  /** Stress at which the shank stays bent, MPa. */
  readonly strengthMPa: number;
}

/**
 * The bending yield strength that the American design code for timber takes for nails, wood screws and lag screws of low
 * or medium carbon steel, where their maker states none. Thin wire is drawn harder than thick.
 *
 * @returns The bending yield strength, MPa.
 * @throws RangeError where the diameter is outside its limits.
 * Source: NDS 2018, Table I1.
 * @example
 * ```ts
 * import { bendingYieldStrength } from '@scantling/fastening';
 * // A No. 10 screw, 0.190 in: 80,000 psi
 * bendingYieldStrength({ diameterMm: 4.826 }).strengthMPa // => 551.58
 * bendingYieldStrength({ diameterMm: 2 }) // throws bendingYieldStrength requires diameterMm between 2.5146 and 25.4, got 2
 * ```
 */
export function bendingYieldStrength(input: BendingYieldStrengthInput): BendingYieldStrength {
  requireInputs('bendingYieldStrength', input, limits);
  // Up to the rounding of arithmetic, so that 0.142 in, given in mm, is not taken for more.
  const thousandths = Math.round(input.diameterMm * (1e6 / MM_PER_IN)) / 1000;
  const steps = [142, 177, 236, 273, 344].filter((upTo) => thousandths > upTo).length;
  return { strengthMPa: ([100, 90, 80, 70, 60, 45][steps] as number) * 1000 * MPA_PER_PSI };
}

export const bendingYieldStrengthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/bending-yield-strength',
  title: 'Bending yield strength of screws and nails',
  summary:
    'The stress at which the shank of a screw or nail stays bent, as a design code takes it where the maker states none.',
  basis: 'convention',
  inputs: {
    diameterMm: { kind: 'number', label: 'Nominal diameter', unit: 'mm', ...limits.diameterMm },
  },
  outputs: { strengthMPa: { label: 'Bending yield strength', unit: 'MPa' } },
  compute: bendingYieldStrength,
  formula: String.raw`F_{yb} = \begin{cases}
100\,000 & D \le 0.142 \\ 90\,000 & 0.142 < D \le 0.177 \\ 80\,000 & 0.177 < D \le 0.236 \\
70\,000 & 0.236 < D \le 0.273 \\ 60\,000 & 0.273 < D \le 0.344 \\ 45\,000 & D > 0.344
\end{cases}`,
  symbols: { 'F_{yb}': 'bending yield strength, psi', D: 'nominal diameter, in' },
  inSymbols: (input, output) => ({
    'F_{yb}': output.strengthMPa / MPA_PER_PSI,
    D: Math.round(input.diameterMm * (1e6 / MM_PER_IN)) / 1e6,
  }),
  sources: [
    {
      source: nds2018,
      at: 'Table I1, p. 175',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: (
    [
      ['0.113', '100000'],
      ['0.142', '100000'],
      ['0.143', '90000'],
      ['0.162', '90000'],
      ['0.177', '90000'],
      ['0.178', '80000'],
      ['0.190', '80000'],
      ['0.236', '80000'],
      ['0.237', '70000'],
      ['0.242', '70000'],
      ['0.273', '70000'],
      ['0.274', '60000'],
      ['0.3125', '60000'],
      ['0.344', '60000'],
      ['0.345', '45000'],
      ['0.375', '45000'],
      ['0.500', '45000'],
    ] as const
  ).map(([diameterIn, printed]) => ({
    given: { diameterMm: Number(diameterIn) * 25.4 },
    expect: { strengthMPa: inPsi(printed) },
    from: {
      source: nds2018,
      at: `Table I1, ${diameterIn} in`,
      confirmed: 'text' as const,
      tier: 'reprint' as const,
    },
  })),
  laws: [{ of: 'strengthMPa', by: { diameterMm: 'decreasing' } }],
  cautions: [ndsDecides, notStructuralDesign],
}));
