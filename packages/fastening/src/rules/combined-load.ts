import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign } from '../cautions.ts';

const resistance = { min: 0.001, max: 1_000_000 };
const limits = {
  allowedWithdrawalN: resistance,
  allowedLateralN: resistance,
  loadToFaceDeg: { min: 0, max: 90 },
} as const;

export interface CombinedLoadInput {
  /** What the screw may be given straight out, N, 0.001 to 1 000 000. */
  readonly allowedWithdrawalN: number;
  /** What it may be given across its shank, N, 0.001 to 1 000 000. */
  readonly allowedLateralN: number;
  /** Angle between the force and the face of the wood: 0° pushes sideways, 90° pulls straight out. */
  readonly loadToFaceDeg: number;
  readonly fastener: 'woodScrew' | 'lagScrew' | 'nail';
}

export interface CombinedLoad {
  /** What it may be given in the direction of the force, N. */
  readonly allowedN: number;
}

/**
 * What a screw or nail may be given by a force that pulls it out and pushes it sideways at once.
 *
 * @returns The force that it may be given in that direction, N.
 * @throws RangeError where an input is outside its limits.
 * Source: NDS 2018, Eq. 12.4-1 for wood screws and lag screws, Eq. 12.4-2 for nails.
 * @example
 * ```ts
 * import { combinedLoad } from '@scantling/fastening';
 * const both = { allowedWithdrawalN: 100, allowedLateralN: 100, loadToFaceDeg: 45 };
 * combinedLoad({ ...both, fastener: 'woodScrew' }) // => { allowedN: 100 }
 * combinedLoad({ ...both, fastener: 'nail' }).allowedN // => 70.71
 * combinedLoad({ ...both, fastener: 'glue' }) // throws combinedLoad requires fastener to be one of woodScrew, lagScrew, nail
 * ```
 */
export function combinedLoad(input: CombinedLoadInput): CombinedLoad {
  requireInputs('combinedLoad', input, limits);
  const { allowedWithdrawalN, allowedLateralN, loadToFaceDeg, fastener } = input;
  requireChoice('combinedLoad', 'fastener', fastener, ['woodScrew', 'lagScrew', 'nail']);
  const angle = (loadToFaceDeg * Math.PI) / 180;
  const power = fastener === 'nail' ? 1 : 2;
  const sideways = Math.cos(angle) ** power;
  const outwards = Math.sin(angle) ** power;
  return { allowedN: 1 / (sideways / allowedLateralN + outwards / allowedWithdrawalN) };
}

export const combinedLoadRule = /* @__PURE__ */ defineRule<CombinedLoadInput, CombinedLoad>(() => ({
  id: 'fastening/combined-load',
  title: 'Screw pulled and pushed at once',
  summary: 'What a screw or nail may be given by a force that pulls it out and pushes it sideways at once.',
  basis: 'measured',
  inputs: {
    allowedWithdrawalN: {
      kind: 'number',
      label: 'Allowed straight out',
      unit: 'N',
      ...limits.allowedWithdrawalN,
    },
    allowedLateralN: {
      kind: 'number',
      label: 'Allowed across the shank',
      unit: 'N',
      ...limits.allowedLateralN,
    },
    loadToFaceDeg: {
      kind: 'number',
      label: 'Angle of the force to the face',
      unit: '°',
      ...limits.loadToFaceDeg,
      help: '0° pushes sideways, 90° pulls straight out.',
    },
    fastener: {
      kind: 'choice',
      label: 'Fastener',
      options: { woodScrew: 'Wood screw', lagScrew: 'Lag screw', nail: 'Nail' },
    },
  },
  outputs: { allowedN: { label: 'Allowed in that direction', unit: 'N' } },
  compute: combinedLoad,
  formula: String.raw`Z_\alpha = \frac{W Z}{W \cos^n\alpha + Z \sin^n\alpha}`,
  symbols: {
    'Z_\\alpha': 'allowed in that direction',
    W: 'allowed straight out',
    Z: 'allowed across the shank',
    '\\alpha': 'angle between force and face',
    n: '2 for screws, 1 for nails',
  },
  inSymbols: (input, output) => ({
    'Z_\\alpha': output.allowedN,
    W: input.allowedWithdrawalN,
    Z: input.allowedLateralN,
    '\\alpha': input.loadToFaceDeg,
    n: input.fastener === 'nail' ? 1 : 2,
  }),
  sources: [
    {
      source: nds2018,
      at: 'Eq. 12.4-1 and 12.4-2',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { allowedWithdrawalN: 100, allowedLateralN: 100, loadToFaceDeg: 45, fastener: 'woodScrew' },
      expect: { allowedN: '100.00' },
      from: { workedByHand: '100 × 100 / (100 × 0.5 + 100 × 0.5) = 100.00 N' },
    },
    {
      given: { allowedWithdrawalN: 600, allowedLateralN: 400, loadToFaceDeg: 30, fastener: 'lagScrew' },
      expect: { allowedN: '436.36' },
      from: { workedByHand: '600 × 400 / (600 × 0.75 + 400 × 0.25) = 436.36 N' },
    },
    {
      given: { allowedWithdrawalN: 100, allowedLateralN: 100, loadToFaceDeg: 45, fastener: 'nail' },
      expect: { allowedN: '70.711' },
      from: { workedByHand: '100 × 100 / (100 × cos(45°) + 100 × sin(45°)) = 70.711 N' },
    },
  ],
  laws: [{ of: 'allowedN', by: { allowedWithdrawalN: 'increasing', allowedLateralN: 'increasing' } }],
  cautions: [ndsDecides, notStructuralDesign],
}));
