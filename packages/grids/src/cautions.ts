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

/** Common practice, no source. */
export const forLastingLoads =
  'The distances are for joints that carry a load for years; a bench peg that is pushed by hand may stand nearer.';

/** Common practice, no source. */
export const pointNeedsWood =
  'A spade bit or a Forstner bit is led by its point, which finds no wood in a hole that is there already: enlarge holes with twist bits.';

/** Common practice, no source. */
export const tryTheStop =
  'Tighten the stop so that it cannot slip, and try the depth in scrap. Clamp the backing board tight: it works only where it touches.';

/** Common practice, no source. */
export const slowlyFromTheSecondFace = 'From the second face little wood is left to lead the bit: go slowly.';

/** Common practice, no source. */
export const centreTheBushing =
  'The router bit has to stand in the middle of the bushing, or the offset is not the same all round. Try the template in scrap.';
