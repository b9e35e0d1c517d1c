import { defineRule, plusZero, requireInputs } from '@scantling/rules';
import { aiscManual, woodHandbook2010 } from '@scantling/rules/sources';
import { notStructural, stiffnessVaries } from '../cautions.ts';

const limits = {
  endLoadN: { min: 0, max: 100_000 },
  spreadLoadNPerMm: { min: 0, max: 100 },
  spanMm: { min: 1, max: 20_000 },
  overhangMm: { min: 0, max: 20_000 },
  modulusOfElasticityMPa: { min: 100, max: 500_000 },
  shearModulusMPa: { min: 10, max: 200_000 },
  secondMomentMm4: { min: 1, max: 1e11 },
  shearAreaMm2: { min: 1, max: 1e7 },
} as const;

export interface OverhangSagInput {
  /** At the end of the overhang, N, 0 to 100 000. */
  readonly endLoadN: number;
  /** Spread over span and overhang alike, N/mm, 0 to 100: its own weight as well. */
  readonly spreadLoadNPerMm: number;
  /** Between the two supports, mm, 1 to 20 000. */
  readonly spanMm: number;
  /** From the second support to the free end, mm, 0 to 20 000. */
  readonly overhangMm: number;
  /** Modulus of elasticity along the beam, MPa, 100 to 500 000. */
  readonly modulusOfElasticityMPa: number;
  /** Shear modulus, MPa, 10 to 200 000. */
  readonly shearModulusMPa: number;
  /** Second moment of area, mm⁴, 1 to 10¹¹. */
  readonly secondMomentMm4: number;
  /** Shear area, mm², 1 to 10⁷. */
  readonly shearAreaMm2: number;
}

export interface OverhangSag {
  /** At the free end, mm: positive downwards, negative where the load on the span lifts it. */
  readonly endSagMm: number;
}

/**
 * How far the end of an overhang sags: a top on two supports that runs out past one of them.
 *
 * @returns The sag of the free end at once, mm; negative where it rises.
 * @throws RangeError where an input is outside its limits.
 * Source: the bending and shear of Wood Handbook (FPL-GTR-190), Eq. 9-2, over span and overhang; beam tables.
 * @example
 * ```ts
 * import { overhangSag } from '@scantling/stock';
 * const top = { spanMm: 1000, overhangMm: 300, modulusOfElasticityMPa: 10_000, shearModulusMPa: 500, secondMomentMm4: 4e6, shearAreaMm2: 20_000 };
 * // 300 N at the end bends it down, the weight of the span lifts it a little
 * overhangSag({ ...top, endLoadN: 300, spreadLoadNPerMm: 0 }).endSagMm // => 0.3042
 * overhangSag({ ...top, endLoadN: 0, spreadLoadNPerMm: 0.1 }).endSagMm // => -0.0169
 * ```
 */
export function overhangSag(input: OverhangSagInput): OverhangSag {
  requireInputs('overhangSag', input, limits);
  const { endLoadN, spreadLoadNPerMm, spanMm, overhangMm: a } = input;
  const stiffness = input.modulusOfElasticityMPa * input.secondMomentMm4;
  const shearStiffness = input.shearModulusMPa * input.shearAreaMm2;
  const byEndLoad =
    endLoadN * ((a * a * (spanMm + a)) / 3 / stiffness + (a + (a * a) / spanMm) / shearStiffness);
  const bending = (a * (4 * a * a * spanMm + 3 * a ** 3 - spanMm ** 3)) / 24;
  const shear = (a * a * (1 + a / spanMm)) / 2;
  const bySpreadLoad = spreadLoadNPerMm * (bending / stiffness + shear / shearStiffness);
  return { endSagMm: plusZero(byEndLoad + bySpreadLoad) };
}

/** Simpson's rule, which is exact for the cubics that stand under the integrals here. */
function integral(f: (x: number) => number, to: number): number {
  return ((f(0) + 4 * f(to / 2) + f(to)) * to) / 6;
}

/** The work of the inner forces on those of a unit load at the end (virtual work). */
function byVirtualWork(input: OverhangSagInput): number {
  const { endLoadN, spreadLoadNPerMm, spanMm, overhangMm } = input;
  const stiffness = input.modulusOfElasticityMPa * input.secondMomentMm4;
  const shearStiffness = input.shearModulusMPa * input.shearAreaMm2;
  // x from the free end inwards; z from the first support.
  const momentOut = (x: number) => -endLoadN * x - (spreadLoadNPerMm * x * x) / 2;
  const shearOut = (x: number) => endLoadN + spreadLoadNPerMm * x;
  const reactionN = (spreadLoadNPerMm * spanMm) / 2 + momentOut(overhangMm) / spanMm;
  const momentIn = (z: number) => reactionN * z - (spreadLoadNPerMm * z * z) / 2;
  const shearIn = (z: number) => reactionN - spreadLoadNPerMm * z;
  const ratio = overhangMm / spanMm;
  return (
    integral((x) => (-x * momentOut(x)) / stiffness + shearOut(x) / shearStiffness, overhangMm) +
    integral((z) => (-ratio * z * momentIn(z)) / stiffness - (ratio * shearIn(z)) / shearStiffness, spanMm)
  );
}

export const overhangSagRule = /* @__PURE__ */ defineRule(() => ({
  id: 'stock/overhang-sag',
  title: 'Sag of an overhang',
  summary: 'How far the end of a top sags that runs out past one of its two supports.',
  basis: 'derived',
  inputs: {
    endLoadN: { kind: 'number', label: 'Load at the end', unit: 'N', ...limits.endLoadN },
    spreadLoadNPerMm: {
      kind: 'number',
      label: 'Load spread over the whole length',
      unit: 'N/mm',
      ...limits.spreadLoadNPerMm,
      help: 'Its own weight as well.',
    },
    spanMm: { kind: 'number', label: 'Span', unit: 'mm', ...limits.spanMm },
    overhangMm: { kind: 'number', label: 'Overhang', unit: 'mm', ...limits.overhangMm },
    modulusOfElasticityMPa: {
      kind: 'number',
      label: 'Modulus of elasticity',
      unit: 'MPa',
      ...limits.modulusOfElasticityMPa,
    },
    shearModulusMPa: { kind: 'number', label: 'Shear modulus', unit: 'MPa', ...limits.shearModulusMPa },
    secondMomentMm4: {
      kind: 'number',
      label: 'Second moment of area',
      unit: 'mm⁴',
      ...limits.secondMomentMm4,
    },
    shearAreaMm2: { kind: 'number', label: 'Shear area', unit: 'mm²', ...limits.shearAreaMm2 },
  },
  outputs: { endSagMm: { label: 'Sag of the end', unit: 'mm', help: 'Negative where the end rises.' } },
  compute: overhangSag,
  formula: String.raw`\begin{aligned}
\delta &= \delta_P + \delta_w \\
\delta_P &= P \left( \frac{a^2 (L + a)}{3 E I} + \frac{a (L + a)}{L G A'} \right) \\
\delta_w &= w \left( \frac{a \, (4 a^2 L + 3 a^3 - L^3)}{24 E I} + \frac{a^2 (L + a)}{2 L G A'} \right)
\end{aligned}`,
  symbols: {
    '\\delta': 'sag of the end',
    '\\delta_P, \\delta_w': 'from the load at the end, and from the spread load, mm',
    P: 'load at the end',
    w: 'spread load',
    L: 'span',
    a: 'overhang',
    'E, G': 'modulus of elasticity, shear modulus',
    "I, A'": 'second moment of area, shear area',
  },
  inSymbols: (input, output) => {
    const { endLoadN, spreadLoadNPerMm, spanMm, overhangMm } = input;
    const bendingNMm2 = input.modulusOfElasticityMPa * input.secondMomentMm4;
    const shearN = input.shearModulusMPa * input.shearAreaMm2;
    const reach = overhangMm * (spanMm + overhangMm);
    const moment = overhangMm * (4 * overhangMm ** 2 * spanMm + 3 * overhangMm ** 3 - spanMm ** 3);
    return {
      '\\delta': output.endSagMm,
      '\\delta_P': endLoadN * ((overhangMm * reach) / (3 * bendingNMm2) + reach / (spanMm * shearN)),
      '\\delta_w':
        spreadLoadNPerMm * (moment / (24 * bendingNMm2) + (overhangMm * reach) / (2 * spanMm * shearN)),
      P: endLoadN,
      w: spreadLoadNPerMm,
      L: spanMm,
      a: overhangMm,
      E: input.modulusOfElasticityMPa,
      G: input.shearModulusMPa,
      I: input.secondMomentMm4,
      "A'": input.shearAreaMm2,
    };
  },
  sources: [
    {
      source: aiscManual,
      at: 'Table 3-23, beam overhanging one support, uniform load and end load',
      confirmed: 'memory',
    },
    {
      source: woodHandbook2010,
      at: 'ch. 9, Eq. 9-2: bending and shear deflection add; Table 9-1',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: {
        endLoadN: 300,
        spreadLoadNPerMm: 0,
        spanMm: 1000,
        overhangMm: 300,
        modulusOfElasticityMPa: 10_000,
        shearModulusMPa: 500,
        secondMomentMm4: 4_000_000,
        shearAreaMm2: 20_000,
      },
      expect: { endSagMm: '0.3042' },
      from: {
        workedByHand:
          'bending: 300 × 300² × (1000 + 300) / (3 × 10000 × 4000000) = 0.2925 mm; shear: 300 × (300 + 300² / 1000) / (500 × 20000) = 0.0117 mm; 0.2925 + 0.0117 = 0.3042 mm',
      },
    },
    {
      given: {
        endLoadN: 0,
        spreadLoadNPerMm: 0.1,
        spanMm: 1000,
        overhangMm: 300,
        modulusOfElasticityMPa: 10_000,
        shearModulusMPa: 500,
        secondMomentMm4: 4_000_000,
        shearAreaMm2: 20_000,
      },
      expect: { endSagMm: '-0.01688' },
      from: {
        workedByHand:
          'bending: 4 × 300² × 1000 = 360000000; 3 × 300³ = 81000000; 360000000 + 81000000 − 1000³ = −559000000; 0.1 × 300 × (−559000000) / (24 × 10000 × 4000000) = −0.017469 mm; shear: 0.1 × 300² × 1.3 / (2 × 500 × 20000) = 0.000585 mm; −0.017469 + 0.000585 = −0.01688 mm',
      },
    },
  ],
  laws: [
    { of: 'endSagMm', by: { endLoadN: 'linear', spreadLoadNPerMm: 'linear' } },
    { of: 'endSagMm', by: { endLoadN: 'increasing' } },
  ],
  peers: [
    {
      name: 'virtual work, integrated over span and overhang',
      of: 'endSagMm',
      compute: byVirtualWork,
      relative: 1e-9,
      absolute: 1e-9,
    },
  ],
  cautions: [notStructural, stiffnessVaries],
}));
