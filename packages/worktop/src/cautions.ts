/** The usual cautions, in the order of the work. They stand beside every plan. */
export const cautions: readonly string[] = [
  'Follow the instructions of each machine and product; where they or local rules say otherwise, they hold.',
  'Wear eye and hearing protection. Keep dust out of your lungs: collect it at the tool and wear a mask.',
  'Clamp a backing board under each hole before the drill comes through, and keep hands clear of the exit.',
  'Rags wet with drying oils or oil-based varnish can heat up and catch fire by themselves: spread them flat outdoors or keep them under water in a closed metal can.',
  'Solvents and their vapours burn and harm: ventilate, and keep flames and sparks away.',
  'Test the slots and the drill setting on an offcut first.',
  'These figures are for judging furniture, not for structural design. What carries people or heavy loads is for a licensed professional.',
];
