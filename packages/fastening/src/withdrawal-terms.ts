/** What the help of an input says of the two specific gravities, which differ by a tenth in heavy woods. */
export const airDryBasis = 'Ovendry mass, and volume at 12 % moisture content.';
export const ovendryBasis =
  'Ovendry mass, and ovendry volume: about a tenth more than at 12 % in heavy woods.';
