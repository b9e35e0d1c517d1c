import { plusZero, requireFields, requireThat } from '@scantling/rules';
import { oilyRags, productSheet, solvents, thinWithin } from './cautions.ts';
import { solidsLimits, thinnerLimits } from './mixing.ts';
import { dryFilm } from './rules/dry-film.ts';
import { finishVolume } from './rules/finish-volume.ts';
import { isDuller, requireSheen, type Sheen } from './sheen.ts';

const coatLimits = {
  thinnerPct: thinnerLimits,
  volumeSolidsPct: solidsLimits,
  spreadingRateM2PerL: { min: 0.2, max: 1000 },
  lossPct: { min: 0, max: 95 },
} as const;

/** A face of the work, or several that are always coated together. */
export interface CoatedFace {
  /** Its name, unlike every other: top, underside, edges, hole walls. */
  readonly name: string;
  /** m², 0 to 10 000. */
  readonly areaM2: number;
}

/** One coat, on some of the faces. */
export interface PlannedCoat {
  /** Names of the faces that get it. */
  readonly faces: readonly string[];
  /** What is laid: gloss varnish. */
  readonly finish: string;
  /** What it is thinned with: mineral spirits. May be left out where it is not thinned. */
  readonly thinner?: string;
  /** Thinner added, % of the volume of the finish, 0 to 1000. */
  readonly thinnerPct: number;
  /** Solids by volume of the finish before thinning, %, 1 to 100. */
  readonly volumeSolidsPct: number;
  /** Area that a litre of the mix covers, m²/L, 0.2 to 1000. */
  readonly spreadingRateM2PerL: number;
  /** Share of the mix that never becomes film, %, 0 to 95. */
  readonly lossPct: number;
  readonly sheen: Sheen;
}

export interface PlanCoatsInput {
  /** 1 to 50. */
  readonly faces: readonly CoatedFace[];
  /** In the order in which they are laid, 1 to 50. */
  readonly coats: readonly PlannedCoat[];
}

export interface CoatNeeds {
  readonly areaM2: number;
  /** Mix for this coat, mL, losses included. */
  readonly mixMl: number;
  /** Finish in it, mL. */
  readonly finishMl: number;
  /** Thinner in it, mL. */
  readonly thinnerMl: number;
  /** µm. */
  readonly wetFilmUm: number;
  /** µm; on bare wood the first coat soaks in and leaves less. */
  readonly dryFilmUm: number;
}

export interface FaceResult extends CoatedFace {
  /** How many coats it gets. */
  readonly coatCount: number;
  /** Of its last coat; `null` where it gets none. */
  readonly sheen: Sheen | null;
  /** All its coats as they are laid, µm. */
  readonly laidUm: number;
  /** Its film once dry, µm. */
  readonly filmUm: number;
}

/** A liquid, and all that the plan takes of it. */
export interface LiquidNeeded {
  readonly name: string;
  readonly volumeMl: number;
}

export interface PlanCoats {
  /** One for each coat, in the order given. */
  readonly coats: readonly CoatNeeds[];
  readonly faces: readonly FaceResult[];
  /** Finishes and thinners, each once, in the order in which they are first used. */
  readonly liquids: readonly LiquidNeeded[];
  /** What a second look would find, each a sentence. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

function requirePlan(input: PlanCoatsInput): void {
  const { faces, coats } = input ?? {};
  const list = (name: string, given: unknown) =>
    requireThat(
      'planCoats',
      Array.isArray(given) && given.length >= 1 && given.length <= 50,
      `${name} to be a list of 1 to 50, got ${(given as unknown[] | undefined)?.length}`,
    );
  const text = (path: string, given: unknown) =>
    requireThat('planCoats', typeof given === 'string' && given !== '', `${path} to be a text, got ${given}`);
  list('faces', faces);
  list('coats', coats);
  const names = faces.map((face) => face?.name);
  for (const [i, face] of faces.entries()) {
    text(`faces[${i}].name`, face?.name);
    requireThat(
      'planCoats',
      names.indexOf(face.name) === i,
      `faces[${i}].name unlike every other, got "${face.name}"`,
    );
    requireFields('planCoats', `faces[${i}]`, face, { areaM2: { min: 0, max: 10_000 } });
  }
  for (const [i, coat] of coats.entries()) {
    const path = `coats[${i}]`;
    requireFields('planCoats', path, coat, coatLimits);
    text(`${path}.finish`, coat.finish);
    if (coat.thinnerPct) text(`${path}.thinner`, coat.thinner);
    requireSheen('planCoats', `${path}.sheen`, coat.sheen);
    list(`${path}.faces`, coat.faces);
    for (const [j, name] of coat.faces.entries()) {
      requireThat(
        'planCoats',
        names.includes(name) && coat.faces.indexOf(name) === j,
        `${path}.faces[${j}] to name a face once, got "${name}"`,
      );
    }
  }
}

/**
 * A plan of coats: what each takes and leaves, face by face, what sheen each face ends with, and how much of every
 * liquid the whole job needs.
 *
 * @throws RangeError where an input is outside its limits, or a coat names a face that is not there.
 * Source: the rules it is made of: finish volume, mixing by parts, dry film. What the notes say of sheen stands at
 * {@link sheenOfCoats}.
 * @example
 * ```ts
 * import { planCoats } from '@scantling/finishing';
 * const gloss = { finish: 'gloss varnish', thinner: 'mineral spirits', thinnerPct: 25, volumeSolidsPct: 50, spreadingRateM2PerL: 16, lossPct: 0, sheen: 'gloss' };
 * const { liquids, faces } = planCoats({
 *   faces: [{ name: 'top', areaM2: 0.8 }, { name: 'underside', areaM2: 0.8 }],
 *   coats: [{ ...gloss, faces: ['underside', 'top'] }, { ...gloss, faces: ['top'] }],
 * });
 * // 1.6 m² and 0.8 m² at 16 m²/L are 100 and 50 mL, four parts varnish to one of spirits
 * liquids // => [{ name: 'gloss varnish', volumeMl: 120 }, { name: 'mineral spirits', volumeMl: 30 }]
 * faces.map(({ coatCount, filmUm }) => [coatCount, filmUm]) // => [[2, 50], [1, 25]]
 * ```
 */
export function planCoats(input: PlanCoatsInput): PlanCoats {
  requirePlan(input);
  const { faces, coats } = input;
  const needed = new Map<string, number>();
  const add = (name: string, volumeMl: number) => {
    needed.set(name, (needed.get(name) ?? 0) + volumeMl);
  };
  const needs = coats.map((coat): CoatNeeds => {
    const areaM2 = faces.reduce((sum, { name, areaM2 }) => sum + (coat.faces.includes(name) ? areaM2 : 0), 0);
    const { spreadingRateM2PerL, lossPct, thinnerPct } = coat;
    const mixMl = finishVolume({ areaM2, coatCount: 1, spreadingRateM2PerL, lossPct }).volumeMl;
    const finishMl = (mixMl * 100) / (100 + thinnerPct);
    const thinnerMl = plusZero((mixMl * thinnerPct) / (100 + thinnerPct));
    add(coat.finish, finishMl);
    if (thinnerPct) add(coat.thinner as string, thinnerMl);
    const wetFilmUm = 1000 / spreadingRateM2PerL;
    const { dryFilmUm } = dryFilm({ ...coat, wetFilmUm });
    return { areaM2, mixMl, finishMl, thinnerMl, wetFilmUm, dryFilmUm };
  });
  return {
    coats: needs,
    faces: faces.map((face) => faceResult(face, coats, needs)),
    liquids: [...needed].map(([name, volumeMl]) => ({ name, volumeMl })),
    notes: notesOn(faces, coats),
    cautions: [thinWithin, oilyRags, solvents, productSheet],
  };
}

const onFace = ({ name }: CoatedFace, coats: readonly PlannedCoat[]) =>
  [...coats.entries()].filter(([, { faces }]) => faces.includes(name));

function faceResult(
  face: CoatedFace,
  coats: readonly PlannedCoat[],
  needs: readonly CoatNeeds[],
): FaceResult {
  const own = onFace(face, coats);
  const sum = (of: 'wetFilmUm' | 'dryFilmUm') =>
    own.reduce((total, [i]) => total + (needs[i] as CoatNeeds)[of], 0);
  return {
    name: face.name,
    areaM2: plusZero(face.areaM2),
    coatCount: own.length,
    sheen: own.at(-1)?.[1].sheen ?? null,
    laidUm: sum('wetFilmUm'),
    filmUm: sum('dryFilmUm'),
  };
}

function notesOn(faces: readonly CoatedFace[], coats: readonly PlannedCoat[]): string[] {
  return faces.flatMap((face) => {
    const own = onFace(face, coats);
    if (own.length === 0)
      return [`No coat is laid on the ${face.name}: bare wood takes up and gives off moisture faster.`];
    return own.slice(1).flatMap(([i, coat], before) => {
      const [under, earlier] = own[before] as [number, PlannedCoat];
      return isDuller(earlier.sheen, coat.sheen)
        ? [
            `On the ${face.name}, coat ${under + 1} (${earlier.sheen}) lies under coat ${i + 1} (${coat.sheen}): the last coat alone makes the sheen, so the flatting agent below only veils the wood.`,
          ]
        : [];
    });
  });
}
