/** Common practice, no source. */
export const notStructuralDesign =
  'For furniture, not for structural design: where people or buildings rely on it, the local code decides and a licensed professional designs it.';

/** Common practice, no source. */
export const firmNotHard =
  'Tighten the screw only until the top lies firm, with a washer under its head: clamped hard it cannot travel.';

/** Common practice, no source. */
export const slotsInSteel =
  'Clamp steel when you drill, mill or file it, take the burr off the slot, and wear eye protection.';

/** Common practice, no source. */
export const drillingCare =
  'Wear eye protection, clamp the work so that it cannot turn with the bit, keep sleeves and hair away from it, and follow the instructions of the drill and of the bit.';

/** Common practice, no source. */
export const tryOnAnOffcut = 'Try it first on an offcut of the same wood and thickness, with the same screw.';
