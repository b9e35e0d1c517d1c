import type { Basis, Citation, Source } from '@scantling/rules';
import { gnuUnits, nistHandbook44, nistSp811 } from '@scantling/rules/sources';
import type { Unit } from './convert.ts';
import * as units from './units.ts';

/** Where a unit's factor comes from. The number itself stands in the unit and nowhere else. */
export interface Factor {
  readonly unit: Unit;
  readonly name: string;
  readonly symbol: string;
  /** `exact` by definition, or `derived` from such definitions; no factor here is measured. */
  readonly basis: Basis;
  /** The definition or derivation in words. */
  readonly definition: string;
  readonly sources: readonly Citation[];
}

const seen = (source: Source, at: string): Citation => ({ source, at, confirmed: 'text', tier: 'reprint' });
const b8 = (row: string) => seen(nistSp811, `Appendix B.8, ${row}`);
const handbook = (line: string) => seen(nistHandbook44, `Appendix C: ${line}`);
const database = (line: string) => seen(gnuUnits, line);
const prefixes: Citation = {
  source: nistSp811,
  at: 'section 4, SI units and prefixes',
  confirmed: 'memory',
};

type Row = readonly [
  unit: Unit,
  name: string,
  symbol: string,
  basis: 'exact' | 'derived',
  definition: string,
  ...sources: Citation[],
];

// A function, so that bundlers can leave the list out of a program that only converts.
const rows = (): readonly Row[] => [
  [units.micrometre, 'micrometre', 'µm', 'exact', '0.001 mm', b8('micron: 1.0 E-06 m')],
  [units.millimetre, 'millimetre', 'mm', 'exact', '0.001 m', prefixes],
  [units.centimetre, 'centimetre', 'cm', 'exact', '0.01 m', prefixes],
  [units.metre, 'metre', 'm', 'exact', 'the SI unit', prefixes],
  [units.thou, 'thou', 'mil', 'exact', '0.001 in', b8('mil (0.001 in): 2.54 E-05 m')],
  [units.inch, 'inch', 'in', 'exact', '25.4 mm', b8('inch: 2.54 E-02 m')],
  [units.foot, 'foot', 'ft', 'exact', '12 in', b8('foot: 3.048 E-01 m')],
  [units.yard, 'yard', 'yd', 'exact', '3 ft', b8('yard: 9.144 E-01 m')],

  [units.squareMillimetre, 'square millimetre', 'mm²', 'derived', '1 mm × 1 mm', prefixes],
  [units.squareCentimetre, 'square centimetre', 'cm²', 'derived', '1 cm × 1 cm', prefixes],
  [units.squareMetre, 'square metre', 'm²', 'derived', '1 m × 1 m', prefixes],
  [units.squareInch, 'square inch', 'in²', 'derived', '1 in × 1 in', b8('square inch: 6.4516 E-04 m²')],
  [units.squareFoot, 'square foot', 'ft²', 'derived', '144 in²', b8('square foot: 9.290 304 E-02 m²')],
  [units.squareYard, 'square yard', 'yd²', 'derived', '9 ft²', b8('square yard: 8.361 274 E-01 m²')],

  [units.cubicMillimetre, 'cubic millimetre', 'mm³', 'derived', '1 mm × 1 mm × 1 mm', prefixes],
  [units.millilitre, 'millilitre', 'mL', 'exact', '0.001 L', prefixes],
  [units.litre, 'litre', 'L', 'exact', '1 dm³', b8('liter: 1.0 E-03 m³')],
  [units.cubicMetre, 'cubic metre', 'm³', 'derived', '1 m × 1 m × 1 m', prefixes],
  [
    units.cubicInch,
    'cubic inch',
    'in³',
    'derived',
    '1 in × 1 in × 1 in',
    b8('cubic inch, footnote 13: 1.638 706 4 E-05'),
  ],
  [
    units.cubicFoot,
    'cubic foot',
    'ft³',
    'derived',
    '1728 in³',
    b8('cubic foot: 2.831 685 E-02 m³'),
    handbook('1 728 cubic inches'),
  ],
  [units.boardFoot, 'board foot', 'bd ft', 'derived', '1 ft × 1 ft × 1 in', database('board foot: 144 in³')],
  [units.cord, 'cord', 'cord', 'derived', '4 ft × 4 ft × 8 ft', b8('cord (128 ft³): 3.624 556 E+00 m³')],
  [
    units.usFluidOunce,
    'US fluid ounce',
    'fl oz (US)',
    'derived',
    '1/128 US gallon',
    handbook('128 U.S. fluid ounces (exactly)'),
  ],
  [
    units.usPint,
    'US liquid pint',
    'pt (US)',
    'derived',
    '28.875 in³',
    handbook('1 pint (pt) = 28.875 cubic inches'),
  ],
  [
    units.usQuart,
    'US liquid quart',
    'qt (US)',
    'derived',
    '57.75 in³',
    handbook('1 quart (qt) = 57.75 cubic inches'),
  ],
  [units.usGallon, 'US gallon', 'gal (US)', 'exact', '231 in³', handbook('231 cubic inches (exactly)')],
  [
    units.imperialFluidOunce,
    'imperial fluid ounce',
    'fl oz (imp)',
    'derived',
    '1/160 imperial gallon',
    b8('ounce [Canadian and U.K. fluid (Imperial)]: 2.841 306 E-05 m³'),
    database('1/20 imperial pint'),
  ],
  [
    units.imperialPint,
    'imperial pint',
    'pt (imp)',
    'derived',
    '1/8 imperial gallon',
    database('imperial pint'),
  ],
  [
    units.imperialQuart,
    'imperial quart',
    'qt (imp)',
    'derived',
    '1/4 imperial gallon',
    database('imperial quart'),
  ],
  [
    units.imperialGallon,
    'imperial gallon',
    'gal (imp)',
    'exact',
    '4.54609 L',
    b8('gallon [Canadian and U.K. (Imperial)]: 4.546 09 E-03 m³'),
  ],

  [units.gram, 'gram', 'g', 'exact', '0.001 kg', prefixes],
  [units.kilogram, 'kilogram', 'kg', 'exact', 'the SI unit', prefixes],
  [units.ounce, 'ounce', 'oz', 'derived', '1/16 lb', handbook('0.028 349 523 125')],
  [
    units.pound,
    'pound',
    'lb',
    'exact',
    '0.453 592 37 kg',
    b8('pound (avoirdupois), footnote 22: 4.535 923 7 E-01'),
  ],

  [units.kilogramPerCubicMetre, 'kilogram per cubic metre', 'kg/m³', 'derived', '1 kg / 1 m³', prefixes],
  [units.gramPerLitre, 'gram per litre', 'g/L', 'derived', '1 g / 1 L', prefixes],
  [units.gramPerMillilitre, 'gram per millilitre', 'g/mL', 'derived', '1 g / 1 mL', prefixes],
  [
    units.poundPerCubicFoot,
    'pound per cubic foot',
    'lb/ft³',
    'derived',
    '1 lb / 1 ft³',
    b8('pound per cubic foot: 1.601 846 E+01 kg/m³'),
  ],
  [
    units.poundPerUsGallon,
    'pound per US gallon',
    'lb/gal (US)',
    'derived',
    '1 lb / 1 gal',
    b8('pound per gallon: 1.198 264 E+02 kg/m³'),
    database('pound cut: 1 lb / US gallon'),
  ],

  [units.newton, 'newton', 'N', 'exact', '1 kg · 1 m/s²', prefixes],
  [units.kilonewton, 'kilonewton', 'kN', 'exact', '1000 N', prefixes],
  [
    units.kilogramForce,
    'kilogram-force',
    'kgf',
    'exact',
    '1 kg × 9.806 65 m/s²',
    b8('kilogram-force: 9.806 65 E+00 N'),
  ],
  [
    units.poundForce,
    'pound-force',
    'lbf',
    'derived',
    '1 lb × 9.806 65 m/s²',
    b8('pound-force, footnote 23: 4.448 221 615 260 5 E+00'),
  ],

  [units.pascal, 'pascal', 'Pa', 'exact', '1 N / 1 m²', prefixes],
  [units.kilopascal, 'kilopascal', 'kPa', 'exact', '1000 Pa', prefixes],
  [units.megapascal, 'megapascal', 'MPa', 'exact', '1 N / 1 mm²', prefixes],
  [units.gigapascal, 'gigapascal', 'GPa', 'exact', '1000 MPa', prefixes],
  [units.bar, 'bar', 'bar', 'exact', '100 000 Pa', b8('bar: 1.0 E+05 Pa')],
  [
    units.poundForcePerSquareInch,
    'pound-force per square inch',
    'psi',
    'derived',
    '1 lbf / 1 in²',
    b8('psi: 6.894 757 E+03 Pa'),
  ],

  [
    units.celsiusDegree,
    'degree Celsius, of a difference',
    '°C',
    'exact',
    '1 K',
    seen(nistSp811, 'Appendix B.9: T/K = t/°C + 273.15'),
  ],
  [
    units.fahrenheitDegree,
    'degree Fahrenheit, of a difference',
    '°F',
    'derived',
    '5/9 K',
    seen(nistSp811, 'Appendix B.9: t/°C = (t/°F − 32)/1.8'),
  ],

  [units.squareMetrePerLitre, 'square metre per litre', 'm²/L', 'derived', '1 m² / 1 L', prefixes],
  [
    units.squareFootPerUsGallon,
    'square foot per US gallon',
    'ft²/gal (US)',
    'derived',
    '1 ft² / 1 gal',
    b8('square foot: 9.290 304 E-02 m²'),
    handbook('231 cubic inches (exactly)'),
  ],
];

/** Every unit with the basis and the sources of its factor, for whoever wants to show or check them. */
export const factors: readonly Factor[] = /* @__PURE__ */ listFactors();

function listFactors(): readonly Factor[] {
  return rows().map(([unit, name, symbol, basis, definition, ...sources]) => ({
    unit,
    name,
    symbol,
    basis,
    definition,
    sources,
  }));
}
