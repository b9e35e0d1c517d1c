import type { Peer } from '@scantling/rules';
import { nds2018 } from '@scantling/rules/sources';
import { MM_PER_IN } from './inch-pound.ts';
import type {
  LateralResistanceReference,
  LateralResistanceReferenceInput,
} from './rules/lateral-resistance-reference.ts';

/** Table 12.3.1A as the NDS prints it, with its terms k, for the modes that need them. */
function byPrintedTerms(input: LateralResistanceReferenceInput) {
  const { diameterMm, yieldDiameterMm: d, mainBearingMm: lm, sideBearingMm: ls, angleDeg } = input;
  const { mainStrengthMPa: fem, sideStrengthMPa: fes, bendingYieldMPa: fyb } = input;
  const [re, rt] = [fem / fes, lm / ls];
  const k1 =
    (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re);
  const k2 = Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * d ** 2) / (3 * fem * lm ** 2)) - 1;
  const k3 = Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * d ** 2) / (3 * fem * ls ** 2)) - 1;
  const inches = d / MM_PER_IN;
  const kd = inches <= 0.17 ? 2.2 : 10 * inches + 0.5;
  const kTheta = diameterMm < 6.35 ? 1 : 1 + 0.25 * (angleDeg / 90);
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
      at: 'Tables 12.3.1A and 12.3.1B, as an open structural library states them',
      confirmed: 'text',
      tier: 'reprint',
    },
  }));
