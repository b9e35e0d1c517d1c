import type { Citation } from '@scantling/rules';
import {
  flammableLiquidsRuleWashington,
  nioshPocketGuide,
  oilyRags2017,
  oshaWoodDustPage,
  sprayOperationsRuleWashington,
} from '@scantling/rules/sources';
import { oilyRags, productSheet, solvents, vapourLiesLow, woodDust } from './cautions.ts';

/** What can go wrong when wood is finished. */
export type HazardKind = 'oily rags' | 'waste' | 'vapour' | 'ignition' | 'dust' | 'product';

/** A short caution, and what it rests on. */
export interface Hazard {
  readonly kind: HazardKind;
  readonly says: string;
  /** Where it is published; none where it is common practice. */
  readonly citations: readonly Citation[];
}

/**
 * The cautions of finishing, for pages and plans: each short, each with its sources. The product's own sheet and local
 * rules come first.
 */
export const finishingHazards: readonly Hazard[] = [
  {
    kind: 'oily rags',
    says: oilyRags,
    citations: [
      {
        source: oilyRags2017,
        at: 'rags wet with paint and stain: never in a pile; outdoors to dry; then in a tight metal container of water and detergent',
        confirmed: 'text',
        tier: 'reprint',
      },
    ],
  },
  {
    kind: 'waste',
    says: 'Other waste with finish on it goes the same way: dried flat outdoors, then into the metal can with water. Never leave it about, have the can emptied every day, hand in what is in it where your municipality collects such waste, and pour nothing down a drain.',
    citations: [
      {
        source: sprayOperationsRuleWashington,
        at: '(3) residue disposal: metal waste cans, emptied at least once daily; the rule, for spray shops, has waste put there at once',
        confirmed: 'text',
      },
      {
        source: oilyRags2017,
        at: 'check with your municipality for information on disposing of them',
        confirmed: 'text',
        tier: 'reprint',
      },
    ],
  },
  {
    kind: 'vapour',
    says: solvents,
    citations: [
      {
        source: nioshPocketGuide,
        at: 'turpentine: a flammable liquid; symptoms, and what to keep off skin and eyes',
        confirmed: 'text',
      },
    ],
  },
  {
    kind: 'ignition',
    says: vapourLiesLow,
    citations: [
      {
        source: flammableLiquidsRuleWashington,
        at: '(1): smoking, open flames, arcs and spark-producing equipment are prohibited in the area',
        confirmed: 'text',
      },
      {
        source: oilyRags2017,
        at: 'how can liquids start a fire: their vapours can ignite; not near an open flame',
        confirmed: 'text',
        tier: 'reprint',
      },
    ],
  },
  {
    kind: 'dust',
    says: woodDust,
    citations: [
      {
        source: oshaWoodDustPage,
        at: 'occupational exposure levels, and the harm that each is set for',
        confirmed: 'text',
      },
    ],
  },
  { kind: 'product', says: productSheet, citations: [] },
];
