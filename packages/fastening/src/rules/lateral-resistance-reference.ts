import { defineRule, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { dowelEquations2015, formworkHandbook, nds2015, nds2018 } from '@scantling/rules/sources';
import { ndsDecides, notStructuralDesign, slipsFirst } from '../cautions.ts';
import { MM_PER_IN } from '../inch-pound.ts';
import { printedYieldModes, yieldLimitExamples } from '../printed-yield-modes.ts';
import { grainChoice } from '../withdrawal-terms.ts';
import { yieldModeSymbols } from '../yield-mode-symbols.ts';

const length = { min: 0.1, max: 500 } as const;
const strength = { min: 1, max: 2000 } as const;
const limits = {
  diameterMm: { min: 1, max: 25.4 },
  yieldDiameterMm: { min: 0.5, max: 25.4 },
  mainBearingMm: length,
  sideBearingMm: length,
  mainStrengthMPa: strength,
  sideStrengthMPa: strength,
  bendingYieldMPa: strength,
  loadToGrainDeg: { min: 0, max: 90 },
} as const;

/** Least bearing length around the point, in diameters: the least penetration, less half of a tip of two diameters. */
const leastBearing = { woodScrew: 5, lagScrew: 4, nail: 5, bolt: 0 } as const;

export interface LateralResistanceReferenceInput {
  readonly fastener: keyof typeof leastBearing;
  /** Whether it stands in side grain or in end grain of the piece that holds the point. */
  readonly grain: 'side' | 'end';
  /** Nominal diameter, mm, 1 to 25.4. */
  readonly diameterMm: number;
  /** Diameter that bears and bends, mm, 0.5 to 25.4: the root of the thread of a screw, the shank of a nail. */
  readonly yieldDiameterMm: number;
  /**
   * Length that bears in the piece that holds the point, less half of a tapered tip, mm, 0.1 to 500; of screws and nails at
   * least 5 diameters, of lag screws 4: `leastPenetration`.
   */
  readonly mainBearingMm: number;
  /** Length that bears in the piece under the head, mm, 0.1 to 500. */
  readonly sideBearingMm: number;
  /** Dowel bearing strength of the piece that holds the point, MPa, 1 to 2000; in end grain that across the grain. */
  readonly mainStrengthMPa: number;
  /** Dowel bearing strength of the piece under the head, MPa, 1 to 2000. */
  readonly sideStrengthMPa: number;
  /** Bending yield strength of the screw or nail, MPa, 1 to 2000. */
  readonly bendingYieldMPa: number;
  /** Largest angle between the force and the grain of either piece, 0° to 90°. */
  readonly loadToGrainDeg: number;
}

export interface LateralResistanceReference {
  /** The piece that holds the point gives way under the shank (mode Im), N. */
  readonly bearingMainN: number;
  /** The piece under the head gives way (mode Is), N. */
  readonly bearingSideN: number;
  /** The straight shank turns in both pieces (mode II), N. */
  readonly turningN: number;
  /** The shank bends once, in the piece that holds the point, which gives way (mode IIIm), N. */
  readonly hingeMainN: number;
  /** The shank bends once, in the piece that holds the point, and the piece under the head gives way (mode IIIs), N. */
  readonly hingeSideN: number;
  /** The shank bends in both pieces (mode IV), N. */
  readonly twoHingesN: number;
  /** Least length that has to bear around the point, mm; 0 for a bolt. */
  readonly leastBearingMm: number;
  /** Sideways force that the screw may be given, N: the least of the six, in end grain 0.67 of it. */
  readonly referenceN: number;
}

const notThicker = ({ diameterMm, yieldDiameterMm }: LateralResistanceReferenceInput) =>
  yieldDiameterMm <= diameterMm;

const deepEnough = ({ fastener, diameterMm, mainBearingMm }: LateralResistanceReferenceInput) =>
  mainBearingMm >= (leastBearing[fastener] ?? 0) * diameterMm * (1 - 1e-9);

/**
 * The force across its shank that the American design code for timber lets one screw, nail or bolt carry between two
 * pieces that touch, by allowable stress and before its factors: the least of the six ways in which the joint can yield.
 * It gives no value to a screw, lag screw or nail that is not as deep in the wood as `leastPenetration` says.
 *
 * @returns The six yield loads, each divided by its reduction term, and the least of them as reference value, N.
 * @throws RangeError where an input is outside its limits, the yield diameter is more than the nominal one, or too little
 * of the fastener is in the wood around its point.
 * Source: NDS 2018, Tables 12.3.1A and 12.3.1B, in the form of AWC Technical Report 12, Table 1-1.
 * @example
 * ```ts
 * import { bendingYieldStrength, dowelBearingStrength, lateralResistanceReference } from '@scantling/fastening';
 * // A No. 10 screw through 1/2 in of wood of 0.50 into the same wood: 90 lb
 * const { strengthMPa } = dowelBearingStrength({ diameterMm: 4.826, ovendrySpecificGravityRatio: 0.5, loadToGrainDeg: 0 });
 * const bendingYieldMPa = bendingYieldStrength({ diameterMm: 4.826 }).strengthMPa;
 * const screw = { fastener: 'woodScrew', grain: 'side', diameterMm: 4.826, yieldDiameterMm: 3.8608, bendingYieldMPa, loadToGrainDeg: 0 };
 * const joint = { mainBearingMm: 43.434, sideBearingMm: 12.7, mainStrengthMPa: strengthMPa, sideStrengthMPa: strengthMPa };
 * lateralResistanceReference({ ...screw, ...joint }).referenceN // => 399.3
 * lateralResistanceReference({ ...screw, ...joint, mainBearingMm: 5 }) // throws lateralResistanceReference requires mainBearingMm of at least 5 diameters of a woodScrew, 24.13 mm, got 5
 * lateralResistanceReference({ ...screw, ...joint, yieldDiameterMm: 5 }) // throws lateralResistanceReference requires yieldDiameterMm of at most diameterMm, got 5 and 4.826
 * ```
 */
export function lateralResistanceReference(
  input: LateralResistanceReferenceInput,
): LateralResistanceReference {
  requireInputs('lateralResistanceReference', input, limits);
  const { diameterMm, yieldDiameterMm, loadToGrainDeg, fastener, grain } = input;
  requireChoice('lateralResistanceReference', 'fastener', fastener, Object.keys(leastBearing));
  requireChoice('lateralResistanceReference', 'grain', grain, ['side', 'end']);
  requireThat(
    'lateralResistanceReference',
    notThicker(input),
    `yieldDiameterMm of at most diameterMm, got ${yieldDiameterMm} and ${diameterMm}`,
  );
  const { mainBearingMm, sideBearingMm, bendingYieldMPa } = input;
  const least = leastBearing[fastener];
  const leastBearingMm = least * diameterMm;
  requireThat(
    'lateralResistanceReference',
    deepEnough(input),
    `mainBearingMm of at least ${least} diameters of a ${fastener}, ${leastBearingMm} mm, got ${mainBearingMm}`,
  );
  const mainNPerMm = input.mainStrengthMPa * yieldDiameterMm;
  const sideNPerMm = input.sideStrengthMPa * yieldDiameterMm;
  const mainPart = (mainNPerMm * mainBearingMm ** 2) / 4;
  const sidePart = (sideNPerMm * sideBearingMm ** 2) / 4;
  const hinge = (bendingYieldMPa * yieldDiameterMm ** 3) / 6;
  // The load P at which a P² + b P = c, where a adds what either piece gives under a hinge or an end.
  const load = (mainEnds: number, sideEnds: number, b: number, c: number) => {
    const a = mainEnds / (4 * mainNPerMm) + sideEnds / (4 * sideNPerMm);
    return (2 * c) / (b + Math.sqrt(b ** 2 + 4 * a * c));
  };
  // Table 12.3.1B: thin shanks have one term for all modes, thick ones three, and turn it up across the grain.
  const thin = Math.max(2.2, (10 * yieldDiameterMm) / MM_PER_IN + 0.5);
  const turned = diameterMm < 6.35 ? 1 : 1 + loadToGrainDeg / 360;
  const reduction = (thick: number) => turned * (yieldDiameterMm < 6.35 ? thin : thick);
  const modes = {
    bearingMainN: (mainNPerMm * mainBearingMm) / reduction(4),
    bearingSideN: (sideNPerMm * sideBearingMm) / reduction(4),
    turningN: load(1, 1, (sideBearingMm + mainBearingMm) / 2, sidePart + mainPart) / reduction(3.6),
    hingeMainN: load(1, 2, mainBearingMm / 2, hinge + mainPart) / reduction(3.2),
    hingeSideN: load(2, 1, sideBearingMm / 2, hinge + sidePart) / reduction(3.2),
    twoHingesN: load(2, 2, 0, 2 * hinge) / reduction(3.2),
  };
  const referenceN = (grain === 'end' ? 0.67 : 1) * Math.min(...Object.values(modes));
  return { ...modes, leastBearingMm, referenceN };
}

export const lateralResistanceReferenceRule = /* @__PURE__ */ defineRule<
  LateralResistanceReferenceInput,
  LateralResistanceReference
>(() => ({
  id: 'fastening/lateral-resistance-reference',
  title: 'Screw pushed sideways: design value',
  summary:
    'The force across its shank that the American design code for timber lets a screw, nail or bolt carry between two pieces, before its factors.',
  basis: 'derived',
  inputs: {
    fastener: {
      kind: 'choice',
      label: 'Fastener',
      options: { woodScrew: 'Wood screw', lagScrew: 'Lag screw', nail: 'Nail', bolt: 'Bolt' },
    },
    grain: grainChoice(),
    diameterMm: { kind: 'number', label: 'Nominal diameter', unit: 'mm', ...limits.diameterMm },
    yieldDiameterMm: {
      kind: 'number',
      label: 'Diameter that bends',
      unit: 'mm',
      ...limits.yieldDiameterMm,
      help: 'The root of the thread of a screw or lag screw, the shank of a nail.',
    },
    mainBearingMm: {
      kind: 'number',
      label: 'Around the point',
      unit: 'mm',
      ...limits.mainBearingMm,
      help: 'Length that bears, less half of a tapered tip, which is two diameters long in wood screws and nails. At least 5 diameters of a screw or nail, 4 of a lag screw.',
    },
    sideBearingMm: { kind: 'number', label: 'Under the head', unit: 'mm', ...limits.sideBearingMm },
    mainStrengthMPa: {
      kind: 'number',
      label: 'Bearing strength around the point',
      unit: 'MPa',
      ...strength,
      help: 'In end grain, from 6.35 mm up, that across the grain.',
    },
    sideStrengthMPa: { kind: 'number', label: 'Bearing strength under the head', unit: 'MPa', ...strength },
    bendingYieldMPa: { kind: 'number', label: 'Bending yield strength', unit: 'MPa', ...strength },
    loadToGrainDeg: {
      kind: 'number',
      label: 'Largest angle of the force to the grain',
      unit: '°',
      ...limits.loadToGrainDeg,
      help: 'Of both pieces the larger. It makes no difference below 6.35 mm.',
    },
  },
  outputs: {
    bearingMainN: { label: 'Wood around the point gives way (Im)', unit: 'N' },
    bearingSideN: { label: 'Piece under the head gives way (Is)', unit: 'N' },
    turningN: { label: 'Shank turns in both (II)', unit: 'N' },
    hingeMainN: { label: 'Shank bends, wood around the point gives way (IIIm)', unit: 'N' },
    hingeSideN: { label: 'Shank bends, piece under the head gives way (IIIs)', unit: 'N' },
    twoHingesN: { label: 'Shank bends in both (IV)', unit: 'N' },
    leastBearingMm: {
      label: 'Least bearing length around the point',
      unit: 'mm',
      help: 'With less of it in the wood the code gives no value.',
    },
    referenceN: {
      label: 'Reference design value',
      unit: 'N',
      help: 'The least of the six, in end grain 0.67 of it.',
    },
  },
  compute: lateralResistanceReference,
  formula: String.raw`\begin{aligned}
Z &= C_{eg} \min(Z_{Im}, Z_{Is}, Z_{II}, Z_{IIIm}, Z_{IIIs}, Z_{IV}) \\
q_m &= F_{em} D, \quad q_s = F_{es} D \\
M &= \tfrac{1}{6} F_{yb} D^3, \quad \ell_{\mathrm{min}} = k D_n \\
Z_{Im} &= \frac{q_m \ell_m}{R_1}, \quad Z_{Is} = \frac{q_s \ell_s}{R_1} \\
Z_{II} &= \frac{\sqrt{B_2^2 + 4 A_2 C_2} - B_2}{2 A_2 R_2} \\
A_2 &= \frac{1}{4 q_s} + \frac{1}{4 q_m}, \quad B_2 = \frac{\ell_s + \ell_m}{2} \\
C_2 &= \frac{q_s \ell_s^2 + q_m \ell_m^2}{4} \\
Z_{IIIm} &= \frac{\sqrt{B_m^2 + 4 A_m C_m} - B_m}{2 A_m R_3} \\
A_m &= \frac{1}{2 q_s} + \frac{1}{4 q_m}, \quad B_m = \frac{\ell_m}{2}, \quad C_m = M + \frac{q_m \ell_m^2}{4} \\
Z_{IIIs} &= \frac{\sqrt{B_s^2 + 4 A_s C_s} - B_s}{2 A_s R_3} \\
A_s &= \frac{1}{4 q_s} + \frac{1}{2 q_m}, \quad B_s = \frac{\ell_s}{2}, \quad C_s = M + \frac{q_s \ell_s^2}{4} \\
Z_{IV} &= \frac{1}{R_3} \sqrt{\frac{2 M}{A_4}}, \quad A_4 = \frac{1}{2 q_s} + \frac{1}{2 q_m}
\end{aligned}`,
  symbols: {
    Z: 'reference design value',
    'Z_{Im}, Z_{Is}': 'the wood around the point gives way, or the piece under the head',
    'Z_{II}': 'the shank turns in both',
    'Z_{IIIm}, Z_{IIIs}':
      'the shank bends in one, and the other gives way: around the point, or under the head',
    'Z_{IV}': 'the shank bends in both',
    'C_{eg}': '1 in side grain, 0.67 in end grain',
    'R_1, R_2, R_3':
      'reduction terms: 4, 3.6 and 3.2 where D is 6.35 mm and more, else all three 2.2 to 3; up to a quarter more across the grain',
    '\\ell_m, \\ell_s': 'length that bears around the point and under the head',
    'q_m, q_s': 'bearing strength times diameter, N/mm',
    M: 'moment at which the shank bends, N mm',
    'F_{em}, F_{es}': 'dowel bearing strength around the point and under the head',
    'F_{yb}': 'bending yield strength',
    'D, D_n': 'diameter that bears and bends, and nominal diameter',
    '\\ell_{\\mathrm{min}}': 'least length that bears around the point',
    k: '5 for screws and nails, 4 for lag screws, 0 for bolts',
    'A_2, B_2, C_2': 'terms of a square equation for the load, mode II, mm/N, mm and N mm',
    'A_m, B_m, C_m': 'the same, mode III, hinge under the head',
    'A_s, B_s, C_s': 'the same, mode III, hinge around the point',
    A_4: 'the same, mode IV',
  },
  inSymbols: yieldModeSymbols,
  requires: [
    { says: 'the diameter that bends is not more than the nominal one', holds: notThicker },
    {
      says: 'a screw or nail bears over 5 diameters around its point, a lag screw over 4',
      holds: deepEnough,
    },
  ],
  sources: [
    {
      source: nds2018,
      at: 'Tables 12.3.1A and 12.3.1B with footnote 1, § 12.1.4.6, 12.1.5.6 and 12.1.6.4 (least penetration), § 12.3.3.4 and 12.5.2.2 (end grain), § 12.3.5.3 and 12.3.7',
      confirmed: 'text',
      tier: 'reprint',
      erratum:
        'One structural library takes the reduction term of a thin screw from its nominal diameter; by § 12.3.7 and by Tables 12J to 12L it goes by the root.',
    },
    { source: dowelEquations2015, at: 'Table 1-1, without a gap between the pieces', confirmed: 'memory' },
    { source: nds2015, at: 'Table 12K: 200 cells come out', confirmed: 'text' },
    {
      source: formworkHandbook,
      at: 'Table 4-26: 71 of 72 cells come out, taken for specific gravities of 0.55, 0.50 and 0.43',
      confirmed: 'text',
      erratum: 'For 7/8 in, its second wood, it has 550 between 880 and 730 lb; 830 is right.',
    },
  ],
  examples: yieldLimitExamples(),
  laws: [
    {
      of: 'referenceN',
      by: {
        mainBearingMm: 'increasing',
        sideBearingMm: 'increasing',
        mainStrengthMPa: 'increasing',
        sideStrengthMPa: 'increasing',
        bendingYieldMPa: 'increasing',
        loadToGrainDeg: 'decreasing',
      },
    },
    { of: 'bearingMainN', by: { mainBearingMm: 'proportional', mainStrengthMPa: 'proportional' } },
    { of: 'bearingSideN', by: { sideBearingMm: 'proportional', sideStrengthMPa: 'proportional' } },
  ],
  peers: printedYieldModes(),
  cautions: [ndsDecides, slipsFirst, notStructuralDesign],
}));
