/** Litres that a mole of gas takes at 25 °C and one atmosphere. */
export const MOLAR_VOLUME_L = 24.45;

interface Liquid {
  readonly specificGravityRatio: number;
  readonly molarMassGPerMol: number;
}

/** Vapour of a liquid, m³ for mL. */
export const vapourM3 = (liquidMl: number, { specificGravityRatio, molarMassGPerMol }: Liquid): number =>
  (((liquidMl + 0) * specificGravityRatio) / molarMassGPerMol) * (MOLAR_VOLUME_L / 1000);

/** The same by the 403 ft³ that a pint of unit density and unit molar mass gives at 70 °F. */
export const vapourByPintsM3 = (
  liquidMl: number,
  { specificGravityRatio, molarMassGPerMol }: Liquid,
): number => ((403 * specificGravityRatio * (liquidMl / 473.176473)) / molarMassGPerMol) * 0.028316846592;
