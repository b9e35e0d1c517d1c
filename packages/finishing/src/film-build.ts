import { requireFields, requireThat } from '@scantling/rules';
import { solidsLimits, thinnerLimits } from './mixing.ts';
import { dryFilm } from './rules/dry-film.ts';

const limits = {
  wetFilmUm: { min: 1, max: 5000 },
  volumeSolidsPct: solidsLimits,
  thinnerPct: thinnerLimits,
  sandedUm: { min: 0, max: 5000 },
} as const;

/** One coat of a film. */
export interface FilmCoat {
  /** Film laid, µm, 1 to 5000. */
  readonly wetFilmUm: number;
  /** Solids by volume before thinning, %, 1 to 100. */
  readonly volumeSolidsPct: number;
  /** Thinner added, % of the volume of the finish, 0 to 1000. */
  readonly thinnerPct: number;
  /** Sanded off the film before this coat, µm; at most what there is. */
  readonly sandedUm: number;
}

export interface FilmBuildInput {
  /** In the order in which they are laid, 1 to 50. */
  readonly coats: readonly FilmCoat[];
}

export interface BuiltCoat {
  /** What this coat leaves, µm. */
  readonly dryFilmUm: number;
  /** All that is on the wood after it, µm. */
  readonly filmUm: number;
}

export interface FilmBuild {
  readonly coats: readonly BuiltCoat[];
  /** The film in the end, µm. */
  readonly filmUm: number;
  /** All coats as they were laid, µm. */
  readonly laidUm: number;
}

/**
 * The film that coats leave, one after the other and in total.
 *
 * @throws RangeError where an input is outside its limits, or more is sanded off than there is.
 * Source: the solids stay, the rest goes, as in {@link dryFilm}.
 * @example
 * ```ts
 * import { filmBuild } from '@scantling/finishing';
 * const sealer = { wetFilmUm: 60, volumeSolidsPct: 50, thinnerPct: 100, sandedUm: 0 };
 * const full = { wetFilmUm: 60, volumeSolidsPct: 50, thinnerPct: 0, sandedUm: 5 };
 * const { coats, filmUm } = filmBuild({ coats: [sealer, full, full] });
 * coats.map((coat) => coat.dryFilmUm) // => [15, 30, 30]
 * filmUm // => 65
 * ```
 */
export function filmBuild(input: FilmBuildInput): FilmBuild {
  const given = input?.coats;
  requireThat(
    'filmBuild',
    Array.isArray(given) && given.length >= 1 && given.length <= 50,
    `coats to be a list of 1 to 50, got ${given?.length}`,
  );
  const coats: BuiltCoat[] = [];
  let filmUm = 0;
  let laidUm = 0;
  for (const [i, coat] of given.entries()) {
    requireFields('filmBuild', `coats[${i}]`, coat, limits);
    requireThat(
      'filmBuild',
      coat.sandedUm <= filmUm,
      `coats[${i}].sandedUm at most the film there is, ${filmUm}, got ${coat.sandedUm}`,
    );
    const { dryFilmUm } = dryFilm(coat);
    filmUm += dryFilmUm - coat.sandedUm;
    laidUm += coat.wetFilmUm;
    coats.push({ dryFilmUm, filmUm });
  }
  return { coats, filmUm, laidUm };
}
