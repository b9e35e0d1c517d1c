/** Common practice in every finishing shop; the product's own sheet and local rules come first. */
export const oilyRags =
  'Rags wet with drying oil or oil-based finish heat up by themselves and can catch fire within hours: spread them flat outdoors to dry, or keep them under water in a closed metal can.';

export const solvents =
  'Solvent vapour burns and harms: ventilate, keep flames and sparks away, wear what the label asks for.';

export const productSheet =
  'Follow the product’s own sheet and local rules: where they say otherwise, they hold.';
