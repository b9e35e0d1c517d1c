import type { Peer, RuleExample } from '@scantling/rules';
import { nds2018, structuralAnalysisLibrary } from '@scantling/rules/sources';
import { inPounds, MM_PER_IN, MPA_PER_PSI } from './inch-pound.ts';
import type {
  LateralResistanceReference,
  LateralResistanceReferenceInput,
} from './rules/lateral-resistance-reference.ts';

/** Table 12.3.1A as the NDS prints it, with its terms k, for the modes that need them. */
function byPrintedTerms(input: LateralResistanceReferenceInput) {
  const { diameterMm, yieldDiameterMm: d, mainBearingMm: lm, sideBearingMm: ls, loadToGrainDeg } = input;
  const { mainStrengthMPa: fem, sideStrengthMPa: fes, bendingYieldMPa: fyb } = input;
  const [re, rt] = [fem / fes, lm / ls];
  const k1 =
    (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re);
  const k2 = Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * d ** 2) / (3 * fem * lm ** 2)) - 1;
  const k3 = Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * d ** 2) / (3 * fem * ls ** 2)) - 1;
  const inches = d / MM_PER_IN;
  const kd = inches <= 0.17 ? 2.2 : 10 * inches + 0.5;
  const kTheta = diameterMm < 6.35 ? 1 : 1 + 0.25 * (loadToGrainDeg / 90);
  const [, rdII, rdIII] = (d < 6.35 ? [kd, kd, kd] : [4, 3.6, 3.2]) as [number, number, number];
  return {
    turningN: (k1 * d * ls * fes) / (rdII * kTheta),
    hingeMainN: (k2 * d * lm * fem) / ((1 + 2 * re) * rdIII * kTheta),
    hingeSideN: (k3 * d * ls * fem) / ((2 + re) * rdIII * kTheta),
    twoHingesN: (d ** 2 / (rdIII * kTheta)) * Math.sqrt((2 * fem * fyb) / (3 * (1 + re))),
  };
}

const modes = {
  turningN: 'II',
  hingeMainN: 'IIIm',
  hingeSideN: 'IIIs',
  twoHingesN: 'IV',
} as const;

/** The same loads by the other published way, one peer for each mode. */
export const printedYieldModes = (): Peer<LateralResistanceReferenceInput, LateralResistanceReference>[] =>
  (Object.keys(modes) as (keyof typeof modes)[]).map((of) => ({
    name: `mode ${modes[of]} as the NDS prints it`,
    of,
    compute: (input) => byPrintedTerms(input)[of],
    relative: 1e-9,
    source: {
      source: nds2018,
      at: 'Tables 12.3.1A and 12.3.1B, p. 83 and 84',
      confirmed: 'text',
      tier: 'reprint',
    },
  }));

/** The worked examples of the card. */
export const yieldLimitExamples = (): RuleExample<
  LateralResistanceReferenceInput,
  LateralResistanceReference
>[] => [
  {
    given: {
      fastener: 'woodScrew',
      grain: 'end',
      diameterMm: 5,
      yieldDiameterMm: 3.4,
      mainBearingMm: 30,
      sideBearingMm: 20,
      mainStrengthMPa: 40,
      sideStrengthMPa: 30,
      bendingYieldMPa: 500,
      loadToGrainDeg: 90,
    },
    expect: {
      bearingMainN: '1854.5',
      bearingSideN: '927.3',
      turningN: '604.08',
      hingeMainN: '631.85',
      hingeSideN: '398.47',
      twoHingesN: '397.21',
      leastBearingMm: '25.0',
      referenceN: '266.13',
    },
    from: {
      workedByHand:
        'q of the main piece is 40 × 3.4 = 136; q of the side piece is 30 × 3.4 = 102; the hinge is 500 × 3.4³ / 6 = 3275.333; the term is 2.2; ' +
        '136 × 30 / 2.2 = 1854.5; 102 × 20 / 2.2 = 927.3; ' +
        '1 / (4 × 102) + 1 / (4 × 136) = 0.004289216; (102 × 20² + 136 × 30²) / 4 = 40800; ' +
        '(√(25² + 4 × 0.004289216 × 40800) - 25) / (2 × 0.004289216 × 2.2) = 604.08; ' +
        '1 / (2 × 102) + 1 / (4 × 136) = 0.006740196; 3275.333 + 136 × 30² / 4 = 33875.333; ' +
        '(√(15² + 4 × 0.006740196 × 33875.333) - 15) / (2 × 0.006740196 × 2.2) = 631.85; ' +
        '1 / (4 × 102) + 1 / (2 × 136) = 0.00612745; 3275.333 + 102 × 20² / 4 = 13475.333; ' +
        '(√(10² + 4 × 0.00612745 × 13475.333) - 10) / (2 × 0.00612745 × 2.2) = 398.47; ' +
        '1 / (2 × 102) + 1 / (2 × 136) = 0.008578431; √(2 × 3275.333 / 0.008578431) / 2.2 = 397.21; 0.67 × 397.21 = 266.13; 5 × 5 = 25.0 mm',
    },
  },
  {
    given: {
      fastener: 'woodScrew',
      grain: 'side',
      diameterMm: 0.19 * 25.4,
      yieldDiameterMm: 0.152 * 25.4,
      mainBearingMm: 9 * 0.19 * 25.4,
      sideBearingMm: 12.7,
      mainStrengthMPa: 4650 * MPA_PER_PSI,
      sideStrengthMPa: 4650 * MPA_PER_PSI,
      bendingYieldMPa: 80_000 * MPA_PER_PSI,
      loadToGrainDeg: 0,
    },
    expect: { referenceN: inPounds('90') },
    from: {
      source: nds2018,
      at: 'Table 12L, No. 10, 1/2 in, G 0.50',
      confirmed: 'text',
      tier: 'reprint',
    },
  },
  {
    given: {
      fastener: 'nail',
      grain: 'side',
      diameterMm: 0.148 * 25.4,
      yieldDiameterMm: 0.148 * 25.4,
      mainBearingMm: 2.25 * 25.4,
      sideBearingMm: 0.75 * 25.4,
      mainStrengthMPa: 16_600 * 0.5 ** 1.84 * MPA_PER_PSI,
      sideStrengthMPa: 16_600 * 0.5 ** 1.84 * MPA_PER_PSI,
      bendingYieldMPa: 90_000 * MPA_PER_PSI,
      loadToGrainDeg: 0,
    },
    expect: { referenceN: '467.488' },
    from: {
      source: structuralAnalysisLibrary,
      at: 'lateral_design_value_test_01.py: 10d common nail, 3/4 in of Douglas fir-larch on the same',
      confirmed: 'text',
    },
  },
];
