import type { Citation } from '@scantling/rules';
import {
  beechSanding2019,
  furnitureFinishing1959,
  mapleSanding2006,
  oakSanding2010,
} from '@scantling/rules/sources';

/** Something to know about sanding, and what it rests on. */
export interface SandingNote {
  readonly about: 'purpose' | 'damp wipe' | 'last grade' | 'scratches';
  readonly says: string;
  /** None where it is common practice, no source. */
  readonly citations: readonly Citation[];
}

/** What a sequence of grades rests on, for pages and plans. The rule of no large steps is common practice, no source. */
export const sandingNotes: readonly SandingNote[] = [
  {
    about: 'purpose',
    says: 'Sanding takes off knife marks, small faults of machining and raised or fuzzy grain: start with the grade that takes off what is there, not with the coarsest at hand.',
    citations: [
      {
        source: furnitureFinishing1959,
        at: 'second paragraph: the purposes of sanding',
        confirmed: 'text',
        tier: 'reprint',
      },
    ],
  },
  {
    about: 'damp wipe',
    says: 'Wipe the sanded wood with a cloth that is damp with water and let it dry out: scratches show, and loose fibres stand up that the next pass takes off. It matters most under finishes with water in them.',
    citations: [],
  },
  {
    about: 'last grade',
    says: 'Beyond 120 to 180 little is won: oak came out much the same after P120, P150 and P180, and sugar maple no smoother after 150 than after 120.',
    citations: [
      { source: oakSanding2010, at: 'abstract', confirmed: 'text' },
      { source: mapleSanding2006, at: 'abstract', confirmed: 'text' },
    ],
  },
  {
    about: 'scratches',
    says: 'The roughness that a grade leaves follows the mean size of its grains in a straight line, on beech from P60 to P150.',
    citations: [{ source: beechSanding2019, at: 'abstract', confirmed: 'text' }],
  },
];
