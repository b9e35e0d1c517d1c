import { MM_PER_IN, MPA_PER_PSI, N_PER_LBF } from '../src/inch-pound.ts';
import { bendingYieldStrength, dowelBearingStrength, lateralResistanceReference } from '../src/index.ts';
import type { LagScrewCell, nailsSideways } from './printed-resistance.ts';

/** Bearing strength as the printed tables take it, rounded to 50 psi. */
function tabulatedMPa(
  diameterIn: number,
  ovendrySpecificGravityRatio: number,
  loadToGrainDeg: number,
): number {
  const { strengthMPa } = dowelBearingStrength({
    diameterMm: diameterIn * MM_PER_IN,
    ovendrySpecificGravityRatio,
    loadToGrainDeg,
  });
  return 50 * Math.round(strengthMPa / MPA_PER_PSI / 50) * MPA_PER_PSI;
}

/** What we give for a printed lag screw, in pounds; its thread is eight diameters in the main member. */
export function lagScrewLbf(cell: LagScrewCell): number {
  const { diameterIn, ovendrySpecificGravityRatio: g, mainAngleDeg, sideAngleDeg } = cell;
  const { referenceN } = lateralResistanceReference({
    fastener: 'lagScrew',
    grain: 'side',
    diameterMm: diameterIn * MM_PER_IN,
    yieldDiameterMm: cell.rootIn * MM_PER_IN,
    mainBearingMm: 8 * diameterIn * MM_PER_IN,
    sideBearingMm: cell.sideIn * MM_PER_IN,
    mainStrengthMPa: tabulatedMPa(diameterIn, g, mainAngleDeg),
    sideStrengthMPa: sideAngleDeg === null ? 61_850 * MPA_PER_PSI : tabulatedMPa(diameterIn, g, sideAngleDeg),
    bendingYieldMPa: cell.bendingYieldPsi * MPA_PER_PSI,
    loadToGrainDeg: Math.max(mainAngleDeg, sideAngleDeg ?? 0),
  });
  return referenceN / N_PER_LBF;
}

/** What we give for a printed nail, in pounds; it is ten diameters in the main member, its tip counted by half. */
export function nailLbf({ diameterIn, bendingYieldPsi, sideIn }: (typeof nailsSideways)[number]): number {
  const strengthMPa = tabulatedMPa(diameterIn, 0.5, 0);
  const { referenceN } = lateralResistanceReference({
    fastener: 'nail',
    grain: 'side',
    diameterMm: diameterIn * MM_PER_IN,
    yieldDiameterMm: diameterIn * MM_PER_IN,
    mainBearingMm: 9 * diameterIn * MM_PER_IN,
    sideBearingMm: sideIn * MM_PER_IN,
    mainStrengthMPa: strengthMPa,
    sideStrengthMPa: strengthMPa,
    bendingYieldMPa: bendingYieldPsi * MPA_PER_PSI,
    loadToGrainDeg: 0,
  });
  return referenceN / N_PER_LBF;
}

/** Bending yield strength by its rule, in psi, beside what a printed joint states. */
export const bendingYieldPsi = (diameterIn: number): number =>
  bendingYieldStrength({ diameterMm: diameterIn * MM_PER_IN }).strengthMPa / MPA_PER_PSI;
