export const notStructural =
  'For judging furniture, not for structural design: floors, stairs, lifting gear and whatever may fall on somebody want local codes and licensed practice.';

/** The answer of the American Wood Council on creep says the range. */
export const stiffnessVaries =
  'Boards of one species differ in stiffness, and creep is from nothing to twice the first sag: leave room, or load a trial piece and measure.';

/** Common practice, no source. */
export const makersCapacity =
  'What a lifting base may carry is what its maker states, for the load in the middle: keep it within, keep the load centred, and never reach under a raised top that is not propped.';

/** Common practice, no source. */
export const clampsUnderLoad =
  'A tightened clamp stores force and slips when its pad is askew: keep fingers out of the joint, stand clear of the bar, and keep below what its maker states.';

/** Common practice, no source. */
export const glueLabel =
  'Follow the glue’s own sheet for spread, pressure and time, and for gloves and ventilation: where it says otherwise, it holds.';

/** Common practice, no source. */
export const askTheSeller =
  'Sellers count in different ways, rough or surfaced, before or after drying: ask how this one does.';
