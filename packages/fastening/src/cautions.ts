export * from './drilling-cautions.ts';

/** Common practice, no source. */
export const firmNotHard =
  'Tighten the screw only until the top lies firm, with a washer under its head: clamped hard it cannot travel.';

/** Common practice, no source. */
export const nothingHolds =
  'Nothing holds the top in place: no screw stands on the fixed line in a round hole that fits it. Give it one, or the top may creep.';

/** Common practice, no source. */
export const slotsInMetal =
  'Clamp metal when you drill, mill or file it, take the burr off holes and slots, and wear eye protection.';

/** Common practice, no source. */
export const testValue =
  'An average of tests, at which half of such screws have let go: what may be relied on is a fraction of it, and boards of one species differ by a quarter and more.';

/** Common practice, no source. */
export const ndsDecides =
  'By an equation of the American design code for timber (NDS), before its other factors: the NDS itself, whole and in its latest edition, and the local code come before this figure.';

/** Common practice, no source. */
export const eurocodeDecides =
  'By an equation of the European design code for timber (Eurocode 5), before its factors for load, moisture and material: the code itself, with its national annex, and the local code come before this figure.';

/** Common practice, no source. */
export const designCodeDecides =
  'What one screw may be given comes from a design code, such as the NDS or Eurocode 5, with all its factors and distances: that code and the local one come before this figure.';

/** Common practice, no source. */
export const steelToo =
  'The wood is judged here, not the steel: a slender screw in dense wood snaps before it pulls out. Its maker gives its strength.';

/** Common practice, no source. */
export const routingCare =
  'Wear eye and ear protection, clamp work and fence, go against the turn of the bit in shallow passes, and follow the instructions of the router and of the bit.';

/** Common practice, no source. */
export const largerInFineWork =
  'A hole this size holds best in tests. Near an edge, in brittle or very hard wood, or for a brass screw, bore it larger: drive a steel screw first, and never force one that binds.';

/** Common practice, no source. */
export const makersDataFirst =
  'Where the maker of the fastener gives a hole, a depth or a distance, that holds instead.';

/** Common practice, no source. */
export const slipsFirst =
  'A screw gives a little before it carries a sideways force: a joint that must not rack is glued, braced or fitted besides.';

/** Common practice, no source. */
export const liftCare =
  'Lift it with as many people as its mass asks for, level and without a jerk, hold it where the screws are, and let nobody reach or stand beneath it.';

/** Common practice, no source. */
export const measureTheHead =
  'Heads differ from maker to maker and from the standards: measure the head of the screw in hand, or take its maker’s data.';
