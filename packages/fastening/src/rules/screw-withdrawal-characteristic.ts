import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { eurocode5 } from '@scantling/rules/sources';
import { eurocodeDecides, notStructuralDesign, steelToo } from '../cautions.ts';
import { threadInWoodInput } from '../withdrawal-terms.ts';

const limits = {
  threadDiameterMm: { min: 1, max: 30 },
  threadInWoodMm: { min: 6, max: 1000 },
  densityKgPerM3: { min: 100, max: 1300 },
  screwToGrainDeg: { min: 30, max: 90 },
} as const;

export interface ScrewWithdrawalCharacteristicInput {
  /** Outer diameter of the thread, mm, 1 to 30. */
  readonly threadDiameterMm: number;
  /** Length of thread in the wood that holds the point, mm, six diameters to 1000: `pointsidePenetration`. */
  readonly threadInWoodMm: number;
  /** Characteristic density of the wood: 5 % of it is lighter, kg/m³ at 12 % moisture content, 100 to 1300. */
  readonly densityKgPerM3: number;
  /** Angle between the screw and the grain, 30° to 90°. */
  readonly screwToGrainDeg: number;
}

export interface ScrewWithdrawalCharacteristic {
  /** Pull that 95 of 100 screws bear, N, before the factors of the code. */
  readonly characteristicN: number;
}

const deepEnough = ({ threadDiameterMm, threadInWoodMm }: ScrewWithdrawalCharacteristicInput) =>
  threadInWoodMm >= 6 * threadDiameterMm * (1 - 1e-9);

/**
 * The characteristic pull that the European design code for timber gives one screw, before its factors for load, moisture
 * and material. It is no allowable load: the code divides it by 1.3 and takes off for the duration of the load.
 *
 * @returns The characteristic withdrawal capacity, N.
 * @throws RangeError where an input is outside its limits, or less than six diameters of thread are in the wood.
 * Source: Eurocode 5 (EN 1995-1-1), Eq. 8.38 to 8.40, for threads of 6 to 12 mm over a core of 0.6 to 0.75 of that.
 * @example
 * ```ts
 * import { screwWithdrawalCharacteristic } from '@scantling/fastening';
 * // 40 mm of a 6 mm thread across the grain of wood of 450 kg/m³
 * const screw = { threadDiameterMm: 6, threadInWoodMm: 40, densityKgPerM3: 450 };
 * screwWithdrawalCharacteristic({ ...screw, screwToGrainDeg: 90 }).characteristicN // => 3504.001
 * screwWithdrawalCharacteristic({ ...screw, screwToGrainDeg: 0 }) // throws screwWithdrawalCharacteristic requires screwToGrainDeg between 30 and 90, got 0
 * screwWithdrawalCharacteristic({ ...screw, threadInWoodMm: 30, screwToGrainDeg: 90 }) // throws screwWithdrawalCharacteristic requires threadInWoodMm of at least 6 diameters, 36 mm, got 30
 * ```
 */
export function screwWithdrawalCharacteristic(
  input: ScrewWithdrawalCharacteristicInput,
): ScrewWithdrawalCharacteristic {
  requireInputs('screwWithdrawalCharacteristic', input, limits);
  const { threadDiameterMm, threadInWoodMm, densityKgPerM3, screwToGrainDeg } = input;
  requireThat(
    'screwWithdrawalCharacteristic',
    deepEnough(input),
    `threadInWoodMm of at least 6 diameters, ${6 * threadDiameterMm} mm, got ${threadInWoodMm}`,
  );
  const acrossGrain = 0.52 * Math.sqrt(threadDiameterMm) * threadInWoodMm ** 0.9 * densityKgPerM3 ** 0.8;
  const slanted = 1 + 0.2 * Math.cos((screwToGrainDeg * Math.PI) / 180) ** 2;
  return { characteristicN: plusZero((acrossGrain * Math.min(threadDiameterMm / 8, 1)) / slanted) };
}

export const screwWithdrawalCharacteristicRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/screw-withdrawal-characteristic',
  title: 'Wood screw pulled out: characteristic value',
  summary:
    'The pull that the European design code for timber expects 95 of 100 screws to bear, before its factors.',
  basis: 'measured',
  inputs: {
    threadDiameterMm: {
      kind: 'number',
      label: 'Thread diameter',
      unit: 'mm',
      ...limits.threadDiameterMm,
      help: 'Over the thread. The formula is for a core of 0.6 to 0.75 of it; for others the declaration of the screw gives its own value.',
    },
    threadInWoodMm: threadInWoodInput(
      limits.threadInWoodMm,
      'In the piece that holds the point. Six diameters and more, or the code gives no value.',
    ),
    densityKgPerM3: {
      kind: 'number',
      label: 'Characteristic density',
      unit: 'kg/m³',
      ...limits.densityKgPerM3,
      help: 'What only 5 % of the wood stays below, at 12 % moisture content.',
    },
    screwToGrainDeg: {
      kind: 'number',
      label: 'Angle of the screw to the grain',
      unit: '°',
      ...limits.screwToGrainDeg,
    },
  },
  outputs: { characteristicN: { label: 'Characteristic withdrawal capacity', unit: 'N' } },
  compute: screwWithdrawalCharacteristic,
  formula: String.raw`\begin{aligned}
F &= \frac{f_{ax} \, d \, \ell_{ef} \, k_d}{1.2\cos^2\alpha + \sin^2\alpha} \\
f_{ax} &= 0.52 \, d^{-0.5} \ell_{ef}^{-0.1} \rho_k^{0.8}, \qquad k_d = \min(d/8, 1)
\end{aligned}`,
  symbols: {
    F: 'characteristic withdrawal capacity, N',
    'f_{ax}': 'strength of the wood around the thread, MPa',
    k_d: 'less than 1 for a thread thinner than 8 mm',
    d: 'outer diameter of the thread, mm',
    '\\ell_{ef}': 'thread in the wood, mm',
    '\\rho_k': 'characteristic density, kg/m³',
    '\\alpha': 'angle between screw and grain',
  },
  inSymbols: ({ threadDiameterMm, threadInWoodMm, densityKgPerM3, screwToGrainDeg }, output) => ({
    F: output.characteristicN,
    'f_{ax}': 0.52 * threadDiameterMm ** -0.5 * threadInWoodMm ** -0.1 * densityKgPerM3 ** 0.8,
    k_d: Math.min(threadDiameterMm / 8, 1),
    d: threadDiameterMm,
    '\\ell_{ef}': threadInWoodMm,
    '\\rho_k': densityKgPerM3,
    '\\alpha': screwToGrainDeg,
  }),
  valid: { threadDiameterMm: [6, 12] },
  requires: [{ says: 'six diameters of thread and more are in the wood', holds: deepEnough }],
  sources: [
    {
      source: eurocode5,
      at: 'Eq. 8.38 to 8.40; 8.7.2(3): six diameters of thread; 8.7.2(4): 6 ≤ d ≤ 12 mm and 0.6 ≤ d₁/d ≤ 0.75, where d₁ is the core of the thread',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: { threadDiameterMm: 9, threadInWoodMm: 60, densityKgPerM3: 350, screwToGrainDeg: 90 },
      expect: { characteristicN: '6740.86' },
      from: {
        workedByHand:
          '9^(-0.5) = 0.333333; 60^(-0.1) = 0.664026; 350^0.8 = 108.4562; ' +
          '0.52 × 0.333333 × 0.664026 × 108.4562 = 12.4831 MPa; 12.48307 × 9 × 60 = 6740.86 N, and k is 1',
      },
    },
    {
      given: { threadDiameterMm: 6, threadInWoodMm: 40, densityKgPerM3: 450, screwToGrainDeg: 45 },
      expect: { characteristicN: '3185.46' },
      from: {
        workedByHand:
          '√6 × 40^0.9 × 450^0.8 = 8984.62; 6 / 8 = 0.75; 0.52 × 8984.62 × 0.75 = 3504.00; ' +
          '1.2 × 0.5 + 0.5 = 1.1; 3504.001 / 1.1 = 3185.46 N',
      },
    },
  ],
  laws: [
    {
      of: 'characteristicN',
      by: {
        threadDiameterMm: 'increasing',
        threadInWoodMm: 'increasing',
        densityKgPerM3: 'increasing',
        screwToGrainDeg: 'increasing',
      },
    },
  ],
  cautions: [eurocodeDecides, steelToo, notStructuralDesign],
}));
