import { defineRule, requireInputs } from '@scantling/rules';
import { nds2018, woodHandbook2021 } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign } from '../cautions.ts';
import { inPsi, MM_PER_IN, MPA_PER_PSI } from '../inch-pound.ts';
import { ovendryInput } from '../withdrawal-terms.ts';

const limits = {
  diameterMm: { min: 1, max: 25.4 },
  ovendrySpecificGravityRatio: { min: 0.1, max: 1.3 },
  loadToGrainDeg: { min: 0, max: 90 },
} as const;

export interface DowelBearingStrengthInput {
  /** Nominal diameter of the screw, nail or bolt, mm, 1 to 25.4. */
  readonly diameterMm: number;
  /** Specific gravity: ovendry mass, ovendry volume, 0.1 to 1.3. */
  readonly ovendrySpecificGravityRatio: number;
  /** Angle between the force and the grain, 0° to 90°; below 6.35 mm it makes no difference. */
  readonly loadToGrainDeg: number;
}

export interface DowelBearingStrength {
  /** Pressure of the shank that the wood bears, MPa. */
  readonly strengthMPa: number;
}

/**
 * How much pressure wood bears under a shank that is pushed sideways, before the rounding to 50 psi of the code's table.
 * From 6.35 mm (1/4 in) up it depends on the direction of the grain.
 *
 * @returns The dowel bearing strength, MPa.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS 2018, Table 12.3.3 with its footnote 2 and Eq. 12.3-11 (Hankinson).
 * @example
 * ```ts
 * import { dowelBearingStrength } from '@scantling/fastening';
 * const wood = { ovendrySpecificGravityRatio: 0.5 };
 * dowelBearingStrength({ ...wood, diameterMm: 4.826, loadToGrainDeg: 0 }).strengthMPa // => 31.97
 * dowelBearingStrength({ ...wood, diameterMm: 12.7, loadToGrainDeg: 0 }).strengthMPa // => 38.61
 * dowelBearingStrength({ ...wood, diameterMm: 12.7, loadToGrainDeg: 90 }).strengthMPa // => 21.77
 * ```
 */
export function dowelBearingStrength(input: DowelBearingStrengthInput): DowelBearingStrength {
  requireInputs('dowelBearingStrength', input, limits);
  const { diameterMm, ovendrySpecificGravityRatio, loadToGrainDeg } = input;
  let strengthPsi = 16_600 * ovendrySpecificGravityRatio ** 1.84;
  if (diameterMm >= 6.35) {
    const along = 11_200 * ovendrySpecificGravityRatio;
    const across = (6100 * ovendrySpecificGravityRatio ** 1.45) / Math.sqrt(diameterMm / MM_PER_IN);
    const share = Math.sin((loadToGrainDeg * Math.PI) / 180) ** 2;
    strengthPsi = 1 / (share / across + (1 - share) / along);
  }
  return { strengthMPa: strengthPsi * MPA_PER_PSI };
}

export const dowelBearingStrengthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/dowel-bearing-strength',
  title: 'Bearing strength of wood under a shank',
  summary: 'How much pressure wood bears under the shank of a screw, nail or bolt that is pushed sideways.',
  basis: 'measured',
  inputs: {
    diameterMm: {
      kind: 'number',
      label: 'Nominal diameter',
      unit: 'mm',
      ...limits.diameterMm,
      help: 'Of the shank, not of the root of the thread.',
    },
    ovendrySpecificGravityRatio: ovendryInput(limits.ovendrySpecificGravityRatio),
    loadToGrainDeg: {
      kind: 'number',
      label: 'Angle of the force to the grain',
      unit: '°',
      ...limits.loadToGrainDeg,
      help: 'It makes no difference below 6.35 mm.',
    },
  },
  outputs: { strengthMPa: { label: 'Dowel bearing strength', unit: 'MPa' } },
  compute: dowelBearingStrength,
  formula: String.raw`\begin{aligned}
F_{e\parallel} &= 11\,200 \, G, \qquad F_{e\perp} = \frac{6100 \, G^{1.45}}{\sqrt{D}} \\
F_e &= \begin{cases} 16\,600 \, G^{1.84} & D < 0.25 \\
\dfrac{F_{e\parallel} F_{e\perp}}{F_{e\parallel} \sin^2\theta + F_{e\perp} \cos^2\theta} & D \ge 0.25 \end{cases}
\end{aligned}`,
  symbols: {
    F_e: 'dowel bearing strength, psi',
    'F_{e\\parallel}, F_{e\\perp}': 'along the grain and across it, psi, for D from 0.25 in on',
    G: 'specific gravity, ovendry mass and volume',
    D: 'nominal diameter, in',
    '\\theta': 'angle between force and grain',
  },
  inSymbols: ({ diameterMm, ovendrySpecificGravityRatio: gravity, loadToGrainDeg }, output) => ({
    F_e: output.strengthMPa / MPA_PER_PSI,
    'F_{e\\parallel}': 11_200 * gravity,
    'F_{e\\perp}': (6100 * gravity ** 1.45) / Math.sqrt(diameterMm / MM_PER_IN),
    G: gravity,
    D: diameterMm / MM_PER_IN,
    '\\theta': loadToGrainDeg,
  }),
  valid: { diameterMm: [2.3, 25.4], ovendrySpecificGravityRatio: [0.31, 0.73] },
  sources: [
    {
      source: nds2018,
      at: 'Table 12.3.3, footnote 2, and Eq. 12.3-11',
      confirmed: 'text',
      tier: 'reprint',
      erratum: 'One reference page prints 16,000 for 16,600; only 16,600 gives the 4,650 psi of the table.',
    },
  ],
  examples: [
    {
      given: { diameterMm: 4.826, ovendrySpecificGravityRatio: 0.5, loadToGrainDeg: 0 },
      expect: { strengthMPa: inPsi('4650') },
      within: { value: 0.17, because: 'The table rounds to 50 psi.' },
      from: {
        source: nds2018,
        at: 'Table 12.3.3, D under 1/4 in, G 0.50',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { diameterMm: 12.7, ovendrySpecificGravityRatio: 0.5, loadToGrainDeg: 0 },
      expect: { strengthMPa: inPsi('5600') },
      from: {
        source: nds2018,
        at: 'Table 12.3.3, along the grain, G 0.50',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { diameterMm: 12.7, ovendrySpecificGravityRatio: 0.5, loadToGrainDeg: 90 },
      expect: { strengthMPa: inPsi('3150') },
      within: { value: 0.1, because: 'The table rounds to 50 psi.' },
      from: {
        source: nds2018,
        at: 'Table 12.3.3, across the grain, 1/2 in, G 0.50',
        confirmed: 'text',
        tier: 'reprint',
      },
    },
    {
      given: { diameterMm: 9.525, ovendrySpecificGravityRatio: 0.5, loadToGrainDeg: 45 },
      expect: { strengthMPa: '30.451' },
      from: {
        workedByHand:
          '11200 × 0.5 = 5600 psi; 6100 × 0.5^1.45 / √0.375 = 3646.034 psi; ' +
          '5600 × 3646.034 / (5600 × 0.5 + 3646.034 × 0.5) = 4416.55 psi; 4416.55 × 0.00689476 = 30.451 MPa',
      },
    },
  ],
  laws: [{ of: 'strengthMPa', by: { ovendrySpecificGravityRatio: 'increasing' } }],
  peers: [
    {
      name: 'the bearing strength of the Wood Handbook, 114.5 G^1.84',
      of: 'strengthMPa',
      compute: ({ ovendrySpecificGravityRatio }) => 114.5 * ovendrySpecificGravityRatio ** 1.84,
      // Both constants are rounded as printed: 16,600 psi is 114.453 MPa.
      relative: 5e-4,
      over: { diameterMm: [1, 6.34] },
      source: { source: woodHandbook2021, at: 'Eq. 8-3, p. 8-7', confirmed: 'text', tier: 'reprint' },
    },
  ],
  cautions: [ndsDecides, notStructuralDesign],
}));
