import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { woodHandbook2010 } from '@scantling/rules/sources';
import { notStructural, stiffnessVaries } from '../cautions.ts';

/** How the load lies, and what holds the beam. */
export type BeamLoading =
  | 'uniform-simple'
  | 'uniform-clamped'
  | 'midspan-simple'
  | 'midspan-clamped'
  | 'quarter-points-simple'
  | 'uniform-cantilever'
  | 'end-cantilever';

const limits = {
  loadN: { min: 0, max: 100_000 },
  spanMm: { min: 1, max: 20_000 },
  modulusOfElasticityMPa: { min: 100, max: 500_000 },
  shearModulusMPa: { min: 10, max: 200_000 },
  secondMomentMm4: { min: 1, max: 1e11 },
  shearAreaMm2: { min: 1, max: 1e7 },
} as const;

export interface BeamSagInput {
  readonly loading: BeamLoading;
  /** The whole load, N, 0 to 100 000: of a load that is spread, its sum over the span. */
  readonly loadN: number;
  /** Between the supports, or from the clamp to the free end, mm, 1 to 20 000. */
  readonly spanMm: number;
  /** Modulus of elasticity along the beam, MPa, 100 to 500 000. */
  readonly modulusOfElasticityMPa: number;
  /** Shear modulus, MPa, 10 to 200 000; of wood about a sixteenth of the modulus of elasticity. */
  readonly shearModulusMPa: number;
  /** Second moment of area, mm⁴, 1 to 10¹¹. */
  readonly secondMomentMm4: number;
  /** Shear area, mm², 1 to 10⁷: of a rectangle five sixths of its area. */
  readonly shearAreaMm2: number;
}

export interface BeamSag {
  /** From bending, mm. */
  readonly bendingSagMm: number;
  /** From shear, mm. */
  readonly shearSagMm: number;
  /** Both, mm. */
  readonly sagMm: number;
}

/** k_b and k_s of each loading, Table 9-1. */
const constantsByLoading = (): Readonly<Record<BeamLoading, readonly [bending: number, shear: number]>> => ({
  'uniform-simple': [5 / 384, 1 / 8],
  'uniform-clamped': [1 / 384, 1 / 8],
  'midspan-simple': [1 / 48, 1 / 4],
  'midspan-clamped': [1 / 192, 1 / 4],
  'quarter-points-simple': [11 / 768, 1 / 8],
  'uniform-cantilever': [1 / 8, 1 / 2],
  'end-cantilever': [1 / 3, 1],
});

/**
 * How far a beam of one section sags when it is loaded: in the middle of its span, or at its free end.
 *
 * @returns The sag at once, mm, its parts from bending and shear, and their sum.
 * @throws RangeError where an input is outside its limits or the loading is none of those named.
 * Source: Wood Handbook (FPL-GTR-190), Eq. 9-2 and Table 9-1.
 * @example
 * ```ts
 * import { beamSag } from '@scantling/stock';
 * // A shelf 286 × 19 mm over 914 mm, 267 N on it
 * beamSag({ loading: 'uniform-simple', loadN: 267, spanMm: 914, modulusOfElasticityMPa: 12_500, shearModulusMPa: 800, secondMomentMm4: 163_500, shearAreaMm2: 4528 }).sagMm // => 1.3
 * ```
 */
export function beamSag(input: BeamSagInput): BeamSag {
  const constants = constantsByLoading();
  requireChoice('beamSag', 'loading', input?.loading, Object.keys(constants));
  requireInputs('beamSag', input, limits);
  const [bending, shear] = constants[input.loading];
  const { loadN, spanMm, modulusOfElasticityMPa, shearModulusMPa, secondMomentMm4, shearAreaMm2 } = input;
  const bendingSagMm = (bending * loadN * spanMm ** 3) / (modulusOfElasticityMPa * secondMomentMm4) + 0;
  const shearSagMm = (shear * loadN * spanMm) / (shearModulusMPa * shearAreaMm2) + 0;
  return { bendingSagMm, shearSagMm, sagMm: bendingSagMm + shearSagMm };
}

export const beamSagRule = /* @__PURE__ */ defineRule<BeamSagInput, BeamSag>(() => ({
  id: 'stock/beam-sag',
  title: 'Sag of a top or shelf',
  summary: 'How far a top, shelf or bar sags between its supports, or at a free end, when it is loaded.',
  basis: 'derived',
  inputs: {
    loading: {
      kind: 'choice',
      label: 'Load and supports',
      options: {
        'uniform-simple': 'load spread evenly, ends resting',
        'uniform-clamped': 'load spread evenly, ends held so that they cannot turn',
        'midspan-simple': 'load in the middle, ends resting',
        'midspan-clamped': 'load in the middle, ends held so that they cannot turn',
        'quarter-points-simple': 'half the load at each quarter point, ends resting',
        'uniform-cantilever': 'load spread evenly, one end held, one free',
        'end-cantilever': 'load at the free end, the other end held',
      },
    },
    loadN: {
      kind: 'number',
      label: 'Whole load',
      unit: 'N',
      ...limits.loadN,
      help: 'A kilogram weighs 9.81 N.',
    },
    spanMm: { kind: 'number', label: 'Span', unit: 'mm', ...limits.spanMm },
    modulusOfElasticityMPa: {
      kind: 'number',
      label: 'Modulus of elasticity',
      unit: 'MPa',
      ...limits.modulusOfElasticityMPa,
      help: 'Of the wood, along the grain.',
    },
    shearModulusMPa: {
      kind: 'number',
      label: 'Shear modulus',
      unit: 'MPa',
      ...limits.shearModulusMPa,
      help: 'Of wood about a sixteenth of the modulus of elasticity.',
    },
    secondMomentMm4: {
      kind: 'number',
      label: 'Second moment of area',
      unit: 'mm⁴',
      ...limits.secondMomentMm4,
    },
    shearAreaMm2: { kind: 'number', label: 'Shear area', unit: 'mm²', ...limits.shearAreaMm2 },
  },
  outputs: {
    bendingSagMm: { label: 'Sag from bending', unit: 'mm' },
    shearSagMm: { label: 'Sag from shear', unit: 'mm' },
    sagMm: { label: 'Sag', unit: 'mm', help: 'At once; under a load that stays it grows.' },
  },
  compute: beamSag,
  formula: String.raw`\delta = \delta_b + \delta_s, \qquad \delta_b = \frac{k_b W L^3}{E I}, \qquad \delta_s = \frac{k_s W L}{G A'}`,
  symbols: {
    '\\delta': 'sag',
    '\\delta_b, \\delta_s': 'sag from bending, and from shear',
    'k_b, k_s': 'constants of the loading, from the table',
    W: 'whole load',
    L: 'span',
    E: 'modulus of elasticity',
    I: 'second moment of area',
    G: 'shear modulus',
    "A'": 'shear area',
  },
  inSymbols: (input, output) => {
    const [bending, shear] = constantsByLoading()[input.loading];
    return {
      '\\delta': output.sagMm,
      '\\delta_b': output.bendingSagMm,
      '\\delta_s': output.shearSagMm,
      k_b: bending,
      k_s: shear,
      W: input.loadN,
      L: input.spanMm,
      E: input.modulusOfElasticityMPa,
      I: input.secondMomentMm4,
      G: input.shearModulusMPa,
      "A'": input.shearAreaMm2,
    };
  },
  sources: [
    { source: woodHandbook2010, at: 'ch. 9, Eq. 9-2, as its text explains it', confirmed: 'text' },
    { source: woodHandbook2010, at: 'Table 9-1: k_b and k_s', confirmed: 'text' },
  ],
  examples: [
    {
      given: {
        loading: 'uniform-simple',
        loadN: 1000,
        spanMm: 1200,
        modulusOfElasticityMPa: 12_000,
        shearModulusMPa: 750,
        secondMomentMm4: 4_500_000,
        shearAreaMm2: 22_500,
      },
      expect: { bendingSagMm: '0.41667', shearSagMm: '0.00889', sagMm: '0.42556' },
      from: {
        workedByHand:
          '5 / 384 × 1000 × 1200³ / (12000 × 4500000) = 0.41667 mm; 1 / 8 × 1000 × 1200 / (750 × 22500) = 0.00889 mm; 0.41667 + 0.00889 = 0.42556 mm',
      },
    },
    {
      given: {
        loading: 'end-cantilever',
        loadN: 300,
        spanMm: 400,
        modulusOfElasticityMPa: 10_000,
        shearModulusMPa: 500,
        secondMomentMm4: 1_000_000,
        shearAreaMm2: 10_000,
      },
      expect: { bendingSagMm: '0.640', shearSagMm: '0.0240', sagMm: '0.664' },
      from: {
        workedByHand:
          '300 × 400³ / (3 × 10000 × 1000000) = 0.640 mm; 300 × 400 / (500 × 10000) = 0.0240 mm; 0.640 + 0.024 = 0.664 mm',
      },
    },
  ],
  laws: [
    {
      of: 'sagMm',
      by: {
        loadN: 'proportional',
        spanMm: 'increasing',
        modulusOfElasticityMPa: 'decreasing',
        shearModulusMPa: 'decreasing',
        secondMomentMm4: 'decreasing',
        shearAreaMm2: 'decreasing',
      },
    },
    { of: 'shearSagMm', by: { spanMm: 'proportional' } },
  ],
  cautions: [notStructural, stiffnessVaries],
}));
