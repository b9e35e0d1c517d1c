/** Common practice, no source. */
export const drillingCare =
  'Wear eye protection, clamp the work so that it cannot turn with the bit, keep sleeves and hair away from it, and follow the instructions of the drill and of the bit.';

/** Common practice, no source. */
export const largeBitsTurnSlowly =
  'The rim of a large bit moves fast and catches hard: stay at or below the speed marked on the bit or given by its maker, whatever the arithmetic allows, and use a drill press or a side handle.';

/** Common practice, no source. */
export const routingCare =
  'Wear eye and ear protection, clamp work and template, go against the turn of the bit in shallow passes, keep the router on the template until the bit has stopped, and follow the instructions of the router and of the bit.';

/** Common practice, no source. */
export const notStructuralDesign =
  'This is not structural design: where people or buildings rely on the joint, the building code in force and a licensed engineer decide.';
