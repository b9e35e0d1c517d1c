/** Short cautions of one stage; common practice, no source. */
export const machines =
  'Saws, jointers and planers kick back and throw: guards on, push blocks, nobody in line, and no board shorter than the machine allows.';
export const clampedPanels = 'A clamped panel is heavy and can tip: set it down where nobody can knock it.';
export const flattening =
  'Take little off at a time, from both faces by turns, so that the panel does not cup. A router sled throws chips: shield and mask.';
export const routing =
  'Rout against the turn of the bit, in shallow passes, work and fence clamped; never the other way round on a hand-held router.';
export const metal = 'Clamp metal to drill, mill or file it, take off the burr, and wear eye protection.';
export const drilling =
  'Clamp a backing board underneath before the bit comes through, and keep hands clear of where it comes out.';
export const sanding =
  'Wood dust harms and can catch fire: collect it at the tool, wear a mask, empty bags outdoors.';
export const rags =
  'Rags wet with drying oil or varnish can heat up and catch fire by themselves: spread them flat outdoors or keep them under water in a closed metal can.';
export const solvents = 'Solvents burn and harm: ventilate, wear gloves, keep flames and sparks away.';
export const lifting =
  'Lift the top with as many people as its mass asks for; nobody reaches or stands beneath it, nor under a raised base that is not propped.';
export const mains = 'Mains wiring is for local codes and licensed practice.';
