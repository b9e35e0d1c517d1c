import type { Unit } from './convert.ts';

// Plain figures, since arithmetic would keep bundlers from dropping the units that are not used.

/** 0.001 mm */
export const micrometre: Unit<'length'> = { kind: 'length', times: 1, per: 1000 };
/** 1 mm, the base unit of length */
export const millimetre: Unit<'length'> = { kind: 'length', times: 1, per: 1 };
/** 10 mm */
export const centimetre: Unit<'length'> = { kind: 'length', times: 10, per: 1 };
/** 1000 mm */
export const metre: Unit<'length'> = { kind: 'length', times: 1000, per: 1 };
/** 0.001 in, also called a mil: 0.0254 mm */
export const thou: Unit<'length'> = { kind: 'length', times: 254, per: 10_000 };
/** 25.4 mm */
export const inch: Unit<'length'> = { kind: 'length', times: 254, per: 10 };
/** 12 in: 304.8 mm */
export const foot: Unit<'length'> = { kind: 'length', times: 3048, per: 10 };
/** 3 ft: 914.4 mm */
export const yard: Unit<'length'> = { kind: 'length', times: 9144, per: 10 };

/** 1 mm², the base unit of area */
export const squareMillimetre: Unit<'area'> = { kind: 'area', times: 1, per: 1 };
/** 100 mm² */
export const squareCentimetre: Unit<'area'> = { kind: 'area', times: 100, per: 1 };
/** 1 000 000 mm² */
export const squareMetre: Unit<'area'> = { kind: 'area', times: 1_000_000, per: 1 };
/** 645.16 mm² */
export const squareInch: Unit<'area'> = { kind: 'area', times: 64_516, per: 100 };
/** 144 in²: 92 903.04 mm² */
export const squareFoot: Unit<'area'> = { kind: 'area', times: 9_290_304, per: 100 };
/** 9 ft²: 836 127.36 mm² */
export const squareYard: Unit<'area'> = { kind: 'area', times: 83_612_736, per: 100 };

/** 0.001 mL */
export const cubicMillimetre: Unit<'volume'> = { kind: 'volume', times: 1, per: 1000 };
/** 1 mL, which is 1 cm³: the base unit of volume */
export const millilitre: Unit<'volume'> = { kind: 'volume', times: 1, per: 1 };
/** 1000 mL */
export const litre: Unit<'volume'> = { kind: 'volume', times: 1000, per: 1 };
/** 1000 L */
export const cubicMetre: Unit<'volume'> = { kind: 'volume', times: 1_000_000, per: 1 };
/** 16.387064 mL */
export const cubicInch: Unit<'volume'> = { kind: 'volume', times: 16_387_064, per: 1_000_000 };
/** 1728 in³: 28.316846592 L */
export const cubicFoot: Unit<'volume'> = { kind: 'volume', times: 28_316_846_592, per: 1_000_000 };
/** 144 in³, a board one foot square and one inch thick: 2.359737216 L */
export const boardFoot: Unit<'volume'> = { kind: 'volume', times: 2_359_737_216, per: 1_000_000 };
/** 128 ft³ of stacked firewood: 3.624556363776 m³ */
export const cord: Unit<'volume'> = { kind: 'volume', times: 3_624_556_363_776, per: 1_000_000 };
/** 1/128 US gallon: 29.5735295625 mL */
export const usFluidOunce: Unit<'volume'> = { kind: 'volume', times: 3_785_411_784, per: 128_000_000 };
/** 16 US fluid ounces: 473.176473 mL */
export const usPint: Unit<'volume'> = { kind: 'volume', times: 3_785_411_784, per: 8_000_000 };
/** 2 US pints: 946.352946 mL */
export const usQuart: Unit<'volume'> = { kind: 'volume', times: 3_785_411_784, per: 4_000_000 };
/** 231 in³: 3.785411784 L */
export const usGallon: Unit<'volume'> = { kind: 'volume', times: 3_785_411_784, per: 1_000_000 };
/** 1/160 imperial gallon: 28.4130625 mL */
export const imperialFluidOunce: Unit<'volume'> = { kind: 'volume', times: 454_609, per: 16_000 };
/** 20 imperial fluid ounces: 568.26125 mL */
export const imperialPint: Unit<'volume'> = { kind: 'volume', times: 454_609, per: 800 };
/** 2 imperial pints: 1.1365225 L */
export const imperialQuart: Unit<'volume'> = { kind: 'volume', times: 454_609, per: 400 };
/** 4.54609 L */
export const imperialGallon: Unit<'volume'> = { kind: 'volume', times: 454_609, per: 100 };

/** 1 g, the base unit of mass */
export const gram: Unit<'mass'> = { kind: 'mass', times: 1, per: 1 };
/** 1000 g */
export const kilogram: Unit<'mass'> = { kind: 'mass', times: 1000, per: 1 };
/** 1/16 lb: 28.349523125 g */
export const ounce: Unit<'mass'> = { kind: 'mass', times: 45_359_237, per: 1_600_000 };
/** Avoirdupois: 453.59237 g */
export const pound: Unit<'mass'> = { kind: 'mass', times: 45_359_237, per: 100_000 };

/** 1 kg/m³, the base unit of density */
export const kilogramPerCubicMetre: Unit<'density'> = { kind: 'density', times: 1, per: 1 };
/** 1 g/L, the same as 1 kg/m³ */
export const gramPerLitre: Unit<'density'> = { kind: 'density', times: 1, per: 1 };
/** 1000 kg/m³ */
export const gramPerMillilitre: Unit<'density'> = { kind: 'density', times: 1000, per: 1 };
/** 16.018463… kg/m³ */
export const poundPerCubicFoot: Unit<'density'> = {
  kind: 'density',
  times: 453_592_370_000,
  per: 28_316_846_592,
};
/** 119.826427… kg/m³; of a solute in its solvent, the "pound cut" of shellac */
export const poundPerUsGallon: Unit<'density'> = {
  kind: 'density',
  times: 453_592_370_000,
  per: 3_785_411_784,
};

/** 1 N, the base unit of force */
export const newton: Unit<'force'> = { kind: 'force', times: 1, per: 1 };
/** 1000 N */
export const kilonewton: Unit<'force'> = { kind: 'force', times: 1000, per: 1 };
/** 9.80665 N */
export const kilogramForce: Unit<'force'> = { kind: 'force', times: 980_665, per: 100_000 };
/** 0.45359237 kg × 9.80665 m/s²: 4.4482216152605 N */
export const poundForce: Unit<'force'> = {
  kind: 'force',
  times: 44_482_216_152_605,
  per: 10_000_000_000_000,
};

/** 1 Pa, the base unit of pressure */
export const pascal: Unit<'pressure'> = { kind: 'pressure', times: 1, per: 1 };
/** 1000 Pa */
export const kilopascal: Unit<'pressure'> = { kind: 'pressure', times: 1000, per: 1 };
/** 1 000 000 Pa, which is 1 N/mm² */
export const megapascal: Unit<'pressure'> = { kind: 'pressure', times: 1_000_000, per: 1 };
/** 1000 MPa */
export const gigapascal: Unit<'pressure'> = { kind: 'pressure', times: 1_000_000_000, per: 1 };
/** 100 000 Pa */
export const bar: Unit<'pressure'> = { kind: 'pressure', times: 100_000, per: 1 };
/** One pound-force on a square inch, psi: 6894.757293… Pa */
export const poundForcePerSquareInch: Unit<'pressure'> = {
  kind: 'pressure',
  times: 44_482_216_152_605,
  per: 6_451_600_000,
};

/** 1 K, and 1 °C of a difference: the base unit of temperature difference */
export const celsiusDegree: Unit<'temperature difference'> = {
  kind: 'temperature difference',
  times: 1,
  per: 1,
};
/** 5/9 K. For temperatures themselves see `celsiusFromFahrenheit`. */
export const fahrenheitDegree: Unit<'temperature difference'> = {
  kind: 'temperature difference',
  times: 5,
  per: 9,
};

/** 1 m²/L, the base unit of spreading rate */
export const squareMetrePerLitre: Unit<'spreading rate'> = { kind: 'spreading rate', times: 1, per: 1 };
/** 0.024542… m²/L */
export const squareFootPerUsGallon: Unit<'spreading rate'> = {
  kind: 'spreading rate',
  times: 1440,
  per: 58_674,
};
