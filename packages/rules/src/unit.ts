/**
 * Units carried in property names (`widthMm`, `moisturePct`), with the symbol that people read.
 * A name ends in the suffix of its unit; a name without one is a pure number.
 */
const symbolBySuffix = {
  Mm: 'mm',
  Mm2: 'mm²',
  Mm3: 'mm³',
  Mm4: 'mm⁴',
  M: 'm',
  M2: 'm²',
  M3: 'm³',
  BoardFt: 'bd ft',
  Um: 'µm',
  In: 'in',
  Ft: 'ft',
  Ft2: 'ft²',
  Pct: '%',
  PerPct: '1/%',
  PerMm: '1/mm',
  PerIn: '1/in',
  UmPerMK: 'µm/(m·K)',
  C: '°C',
  F: '°F',
  K: 'K',
  Kg: 'kg',
  G: 'g',
  GPerM2: 'g/m²',
  LbPer1000Ft2: 'lb/1000 ft²',
  KgPerM3: 'kg/m³',
  GPerL: 'g/L',
  GPerMol: 'g/mol',
  MgPerM3: 'mg/m³',
  Ppm: 'ppm',
  LbPerGal: 'lb/gal',
  Ml: 'mL',
  L: 'L',
  M2PerL: 'm²/L',
  N: 'N',
  NPerMm: 'N/mm',
  Pa: 'Pa',
  KPa: 'kPa',
  MPa: 'MPa',
  GPa: 'GPa',
  Psi: 'psi',
  MillionPsi: '10⁶ psi',
  Lbf: 'lbf',
  LbPerFt3: 'lb/ft³',
  Deg: '°',
  MPerMin: 'm/min',
  MmPerMin: 'mm/min',
  Rpm: 'r/min',
  Ms: 'ms',
  Price: '¤',
  Gu: 'GU',
  Hours: 'h',
  PerHour: '1/h',
  MlPerHour: 'mL/h',
  M3PerHour: 'm³/h',
  Days: 'd',
  DaysPerMm: 'd/mm',
  Mm2PerDay: 'mm²/d',
} as const;

type Suffix = keyof typeof symbolBySuffix;

/** Symbol of a unit; `'1'` is a pure number. */
export type Unit = (typeof symbolBySuffix)[Suffix] | '1';

// A function, so that a bundler leaves the list out of programs that ask for no unit.
const longestFirst = () => (Object.keys(symbolBySuffix) as Suffix[]).sort((a, b) => b.length - a.length);

/**
 * The unit that a property name carries. An axis may stand before it: `pitchXMm`.
 *
 * @param name - A camelCase property name.
 * @returns The unit's symbol, or `'1'` where the name carries no unit.
 * @example
 * ```ts
 * import { unitOf } from '@scantling/rules';
 * unitOf('widthMm') // => 'mm'
 * unitOf('coefficientPerPct') // => '1/%'
 * unitOf('parts') // => '1'
 * ```
 */
export function unitOf(name: string): Unit {
  const suffix = longestFirst().find(
    (s) => name.endsWith(s) && /[a-z0-9][XYZ]?$/.test(name.slice(0, -s.length)),
  );
  return suffix ? symbolBySuffix[suffix] : '1';
}
