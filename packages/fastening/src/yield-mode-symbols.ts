import { MM_PER_IN } from './inch-pound.ts';
import type {
  LateralResistanceReference,
  LateralResistanceReferenceInput,
} from './rules/lateral-resistance-reference.ts';

/** What the symbols of the yield limit equations are worth in one computation. */
export function yieldModeSymbols(input: LateralResistanceReferenceInput, output: LateralResistanceReference) {
  const { fastener, grain, diameterMm, yieldDiameterMm, loadToGrainDeg } = input;
  const { mainBearingMm: mainMm, sideBearingMm: sideMm } = input;
  const [mainNPerMm, sideNPerMm] = [
    input.mainStrengthMPa * yieldDiameterMm,
    input.sideStrengthMPa * yieldDiameterMm,
  ];
  const hingeNMm = (input.bendingYieldMPa * yieldDiameterMm ** 3) / 6;
  const perMain = 1 / (4 * mainNPerMm);
  const perSide = 1 / (4 * sideNPerMm);
  const mainNMm = (mainNPerMm * mainMm ** 2) / 4;
  const sideNMm = (sideNPerMm * sideMm ** 2) / 4;
  const thin = Math.max(2.2, (10 * yieldDiameterMm) / MM_PER_IN + 0.5);
  const turned = diameterMm < 6.35 ? 1 : 1 + loadToGrainDeg / 360;
  const reduction = (thick: number) => turned * (yieldDiameterMm < 6.35 ? thin : thick);
  return {
    Z: output.referenceN,
    'Z_{Im}': output.bearingMainN,
    'Z_{Is}': output.bearingSideN,
    'Z_{II}': output.turningN,
    'Z_{IIIm}': output.hingeMainN,
    'Z_{IIIs}': output.hingeSideN,
    'Z_{IV}': output.twoHingesN,
    'C_{eg}': grain === 'end' ? 0.67 : 1,
    R_1: reduction(4),
    R_2: reduction(3.6),
    R_3: reduction(3.2),
    '\\ell_m': mainMm,
    '\\ell_s': sideMm,
    q_m: mainNPerMm,
    q_s: sideNPerMm,
    M: hingeNMm,
    'F_{em}': input.mainStrengthMPa,
    'F_{es}': input.sideStrengthMPa,
    'F_{yb}': input.bendingYieldMPa,
    D: yieldDiameterMm,
    D_n: diameterMm,
    '\\ell_{\\mathrm{min}}': output.leastBearingMm,
    k: { woodScrew: 5, lagScrew: 4, nail: 5, bolt: 0 }[fastener],
    A_2: perSide + perMain,
    B_2: (sideMm + mainMm) / 2,
    C_2: sideNMm + mainNMm,
    A_m: 2 * perSide + perMain,
    B_m: mainMm / 2,
    C_m: hingeNMm + mainNMm,
    A_s: perSide + 2 * perMain,
    B_s: sideMm / 2,
    C_s: hingeNMm + sideNMm,
    A_4: 2 * perSide + 2 * perMain,
  };
}
