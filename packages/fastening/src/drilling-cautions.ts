/** Common practice, no source. */
export const notStructuralDesign =
  'For furniture, not for structural design: where people or buildings rely on it, the local code decides and a licensed professional designs it.';

/** Common practice, no source. */
export const drillingCare =
  'Wear eye protection, clamp the work so that it cannot turn with the bit, keep sleeves and hair away from it, and follow the instructions of the drill and of the bit.';

/** Common practice, no source. */
export const tryOnAnOffcut = 'Try it first on an offcut of the same wood and thickness, with the same screw.';

/** Common practice, no source. */
export const stopAgainstTheChuck =
  'Let the stop bear against the chuck so that it cannot slip up the bit, tighten it, and measure again after the first hole.';

/** Common practice, no source. */
export const measureTheTop =
  'Measure the top where the hole goes, at its thinnest: what is left above the tip is a difference of two measured lengths.';
