/** Common practice in every finishing shop; the product's own sheet and local rules come first. */
export const oilyRags =
  'Rags wet with drying oil or oil-based finish heat up by themselves and can catch fire within hours: never leave them in a pile; spread them flat outdoors to dry, then keep them in a metal can with a tight lid, under water, and empty it every day.';

export const solvents =
  'Solvent vapour burns and harms: ventilate, keep flames and sparks away, wear what the label asks for.';

export const productSheet =
  'Follow the product’s own sheet and local rules: where they say otherwise, they hold.';

export const compatible = 'Mix only liquids that their makers say go together, and try the mix on an offcut.';

export const thinWithin =
  'Thin only with what the product’s sheet names and no more than it allows; local rules may limit solvent content.';

/** Turpentine burns from 8000 ppm on and may be breathed at 100; others are as far apart. */
export const breathingIsLess =
  'A tenth of what can burn is many times what may be breathed: compare with the exposure limits of each solvent besides.';

/** ACGIH: effects of vapours that harm alike add up. */
export const addFlows =
  'For several solvents that harm alike, or where that is not known, add up the air that each one needs; only where they harm in different ways does the largest do.';

/** Vapours of finishing solvents have molar masses above that of air, 29 g/mol. */
export const vapourLiesLow =
  'Solvent vapour is heavier than air: over the wet surface, in pits and near the floor there is far more of it than the mean of the room, and it runs to flames and sparks some way off.';

/** The tables of purging state the mixing factor; the rest is common practice, no source. */
export const roomAirIsAnEstimate =
  'An estimate for evenly mixed air: draughts that miss the work, a first rush of vapour and a breathing zone over the wet surface make it worse. Whether the air can burn or harms whoever breathes it, only measuring with a meter made for that vapour can tell.';

/** Common practice, no source. */
export const woodDust =
  'Wood dust harms the lungs and burns: draw it off at the tool, wear a mask that is made for it, keep flames and sparks away, and do not blow it about.';

/** Common practice, no source. */
export const oilDust =
  'Sanding dust of oil finishes can heat up by itself, as oily rags do: do not leave it in the bag of the machine; put it into a metal can with a tight lid, under water.';

/** Common practice, no source. */
export const warmSafely =
  'Warm work and air only while no solvent vapour is about, and never with an open flame or a heater without a flue.';

/** Common practice, no source. */
export const markedJar =
  'A jar for finish is never again one for food or drink: write on it what is in it, and keep it from children.';

/** Common practice, no source. */
export const twoPart =
  'The hardener of a two-part finish may hold isocyanates: its vapour, spray and dust can make lungs and skin allergic for good, and then a trace brings on asthma. Keep it off the skin, do not breathe it, and wear what the product’s sheet asks for: a dust mask is no help.';

/** Common practice, no source. */
export const denaturedAlcohol =
  'Denatured alcohol often has methanol in it, which can blind and kill, through the skin and as vapour too: see its safety data sheet, ventilate, wear gloves, and never drink it.';
