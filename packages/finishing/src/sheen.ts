import { type Citation, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { iso2813, sheenColumn } from '@scantling/rules/sources';

/** Degrees of gloss, the glossiest first, with the names that stand as examples in ISO 2813:2014, 3.1, from ISO 4618. */
const degrees = ['high gloss', 'gloss', 'silk gloss', 'semigloss', 'satin', 'matt', 'dead matt'] as const;

/** How glossy a finish dries. */
export type Sheen = (typeof degrees)[number];

/** Throws unless a sheen is one of those named. */
export const requireSheen = (caller: string, path: string, sheen: Sheen): void =>
  requireChoice(caller, path, sheen, degrees);

/** Whether one sheen is duller than another. */
export const isDuller = (one: Sheen, other: Sheen): boolean => degrees.indexOf(one) > degrees.indexOf(other);

export interface SheenOfCoatsInput {
  /** How many coats in all, 1 to 50. */
  readonly coatCount: number;
  /** How the last coat is to look. */
  readonly sheen: Sheen;
  /** How many of the last coats have that sheen, 1 to all of them; one is enough, a second evens it out. */
  readonly lastCoatCount: number;
}

export interface SheenOfCoats {
  /** One for each coat, the first one first. */
  readonly sheens: readonly Sheen[];
  /** Why, in a few sentences. */
  readonly why: readonly string[];
  /** What the first of these rests on, and where the names of sheens come from. */
  readonly citations: readonly Citation[];
}

/**
 * What sheen each coat has, so that the film is clear and the last of it looks as wanted: gloss below, duller on top.
 *
 * @throws RangeError where an input is outside its limits.
 * Source: a column of a woodworking magazine on flatting agents; gloss for the build is common practice, no source.
 * Sheens are named as in ISO 2813:2014.
 * @example
 * ```ts
 * import { sheenOfCoats } from '@scantling/finishing';
 * sheenOfCoats({ coatCount: 4, sheen: 'satin', lastCoatCount: 1 }).sheens // => ['gloss', 'gloss', 'gloss', 'satin']
 * ```
 */
export function sheenOfCoats(input: SheenOfCoatsInput): SheenOfCoats {
  requireInputs('sheenOfCoats', input, {
    coatCount: { min: 1, max: 50, integer: true },
    lastCoatCount: { min: 1, max: 50, integer: true },
  });
  const { coatCount, sheen, lastCoatCount } = input;
  requireSheen('sheenOfCoats', 'sheen', sheen);
  requireThat(
    'sheenOfCoats',
    lastCoatCount <= coatCount,
    `lastCoatCount at most coatCount, got ${lastCoatCount} and ${coatCount}`,
  );
  const below = isDuller(sheen, 'gloss') ? 'gloss' : sheen;
  return {
    sheens: Array.from({ length: coatCount }, (_, i) => (i < coatCount - lastCoatCount ? below : sheen)),
    why: [
      'The last coat alone makes the sheen: as the film dries it is drawn down over the particles of flatting agent near its surface, which makes it rough by a hair, and what lies beneath does not matter.',
      ...(below === sheen
        ? []
        : [
            'Coats below it are gloss, which holds no flatting agent: many dull coats veil the wood and make a softer film (common practice, no source).',
            'Stir a dull finish until the flatting agent is off the bottom, and keep stirring as you go.',
          ]),
    ],
    citations: [
      {
        source: sheenColumn,
        at: 'caption of the panel of four halves, and what follows on flatting agents',
        confirmed: 'text',
      },
      {
        source: iso2813,
        at: '3.1, note: examples of degrees of gloss, from ISO 4618:2014, 2.132',
        confirmed: 'text',
        tier: 'reprint',
      },
    ],
  };
}
