import { formatLength } from '@scantling/units';

/** `1479.6 mm` */
export const millimetres = (mm: number): string => formatLength(mm, { unit: 'mm', decimals: 1 });

/** `58 1/4 in`, to the nearest 1/64 in */
export const inches = (mm: number): string => formatLength(mm, { unit: 'in', denominator: 64 });

/** `1479.6 mm (58 1/4 in)` */
export const bothUnits = (mm: number): string => `${millimetres(mm)} (${inches(mm)})`;

/** `+1.2 mm`, `−3.0 mm`; `0.0 mm` has no sign */
export const signedMillimetres = (mm: number): string => {
  const size = millimetres(Math.abs(mm));
  return size === millimetres(0) ? size : `${mm < 0 ? '−' : '+'}${size}`;
};

/** A length that is needed, in both units, neither written shorter than it is. */
export const neededInBoth = (mm: number): string =>
  `${needed(mm)} (${inches((Math.ceil((mm / 25.4) * 64 - 1e-6) / 64) * 25.4)})`;

/** How what is let in lies by the face of the wood: `flush`, `0.02 mm proud`, `0.03 mm below the face`. */
export const byTheFace = (belowFaceMm: number): string =>
  Math.abs(belowFaceMm) < 0.005
    ? 'flush'
    : `${Math.abs(belowFaceMm).toFixed(2)} mm ${belowFaceMm < 0 ? 'proud' : 'below the face'}`;

/** A size that something else has to fit, to a hundredth: `6.35 mm`, `27 mm`. */
export const fittingSize = (mm: number): string => `${Number(mm.toFixed(2))} mm`;

/** A figure on a drawing, whose sheet names the unit: `112`, `15.9`. */
export const dimensionText = (mm: number): string =>
  millimetres(mm)
    .replace(/(\.0)? mm$/, '')
    .replace('-', '−');

const shown = (mm: number, decimals: number) => formatLength(mm, { unit: 'mm', decimals });

/** A length that there is, never written longer than it is: `11.2 mm` for 11.29. */
export const thereIs = (mm: number, decimals = 1): string =>
  shown(Math.floor(mm * 10 ** decimals + 1e-6) / 10 ** decimals, decimals);

/** A length that is needed, never written shorter than it is: `11.3 mm` for 11.21. */
export const needed = (mm: number, decimals = 1): string =>
  shown(Math.ceil(mm * 10 ** decimals - 1e-6) / 10 ** decimals, decimals);
