import { type Citation, requireThat, rowCitation, type TableProvenance } from '@scantling/rules';
import {
  nioshIdlh1994Limits,
  nioshIdlh1994LimitsProvenance,
} from './data/niosh-idlh-1994--limits.generated.ts';
import {
  nioshPocketGuideLimits,
  nioshPocketGuideLimitsProvenance,
} from './data/niosh-pocket-guide--limits.generated.ts';
import {
  nioshPocketGuideSolvents,
  nioshPocketGuideSolventsProvenance,
} from './data/niosh-pocket-guide--solvents.generated.ts';
import {
  oshaSamplingInformationLimits,
  oshaSamplingInformationLimitsProvenance,
} from './data/osha-sampling-information--limits.generated.ts';
import {
  oshaWoodDustPageLimits,
  oshaWoodDustPageLimitsProvenance,
} from './data/osha-wood-dust-page--limits.generated.ts';
import type { ExposureLimitRow, SolventRow } from './rows.ts';

/** Solvents of finishes: what their vapour weighs, and from how much of it on the air can burn. */
export const solventTable: readonly SolventRow[] = nioshPocketGuideSolvents;

/** Where `solventTable` comes from. */
export const solventProvenance: TableProvenance = nioshPocketGuideSolventsProvenance;

/** A table of exposure limits, with where it comes from and what tells its rows apart. */
export interface ExposureLimitTable {
  readonly rows: readonly ExposureLimitRow[];
  readonly provenance: TableProvenance;
}

/** Exposure limits of solvents and wood dust. The tables are of different years and disagree in places. */
export const exposureLimitTables: readonly ExposureLimitTable[] = [
  { rows: nioshPocketGuideLimits, provenance: nioshPocketGuideLimitsProvenance },
  { rows: oshaSamplingInformationLimits, provenance: oshaSamplingInformationLimitsProvenance },
  { rows: nioshIdlh1994Limits, provenance: nioshIdlh1994LimitsProvenance },
  { rows: oshaWoodDustPageLimits, provenance: oshaWoodDustPageLimitsProvenance },
];

/** A solvent with where its figures stand. */
export interface FoundSolvent extends SolventRow {
  /** The flash points in °C. */
  readonly lowFlashPointC: number;
  readonly highFlashPointC: number;
  readonly citation: Citation;
}

/** An exposure limit with where it stands. */
export interface FoundExposureLimit extends ExposureLimitRow {
  readonly citation: Citation;
}

/** A name that holds the words asked for, and the substance that it names or often stands for. */
export interface SubstanceCandidate {
  readonly name: string;
  readonly substance: string;
}

const plain = (name: string) =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

/** Every name of every substance. */
const everyName = (): SubstanceCandidate[] =>
  [...solventTable, { substance: 'Wood dust', alsoCalled: 'sawdust; sanding dust' }].flatMap(
    ({ substance, alsoCalled }) =>
      [substance, ...alsoCalled.split('; ')].map((name) => ({ name, substance })),
  );

/** What cans with the name of a mixture often hold: common practice, no source. */
const mixtures: Readonly<Record<string, readonly string[]>> = {
  'denatured alcohol': ['Ethyl alcohol', 'Methyl alcohol', 'Isopropyl alcohol'],
  'methylated spirits': ['Ethyl alcohol', 'Methyl alcohol'],
  'paint thinner': ['Stoddard solvent'],
  'lacquer thinner': ['Toluene', 'Xylene', 'Acetone', 'n-Butyl acetate', 'Methyl alcohol'],
};

const asked = (caller: string, name: unknown): string => {
  requireThat(caller, typeof name === 'string', `name to be text, got ${typeof name}`);
  return plain(name as string);
};

/** The substance of that name: a part of a name is often another substance, as benzene is not methyl benzene. */
const substanceNamed = (caller: string, name: unknown): string | null => {
  const whole = asked(caller, name);
  return everyName().find((known) => plain(known.name) === whole)?.substance ?? null;
};

/**
 * Names of substances that hold the words asked for, to choose from where `findSolvent` or `findExposureLimits` has
 * none of just that name. A name that holds another is often another substance. Denatured alcohol, methylated spirits,
 * paint thinner and lacquer thinner are mixtures: of them it gives what they often hold, which is common practice; what
 * a can really holds, only its safety data sheet says.
 *
 * @param name - Whole words; case and punctuation do not matter.
 * @returns Each name with its substance; none where no name holds all these words in a row.
 * @throws RangeError where it is no text.
 * @example
 * ```ts
 * import { namesLike } from '@scantling/finishing';
 * namesLike('benzene') // => [{ name: 'methyl benzene', substance: 'Toluene' }, { name: 'dimethyl benzene', substance: 'Xylene' }]
 * namesLike('alcohol').map(({ substance }) => substance).includes('Isopropyl alcohol') // => true
 * namesLike('paint thinner') // => [{ name: 'paint thinner', substance: 'Stoddard solvent' }]
 * ```
 */
export function namesLike(name: string): readonly SubstanceCandidate[] {
  const words = asked('namesLike', name);
  if (words === '') return [];
  const mixed = Object.entries(mixtures).flatMap(([mixture, held]) =>
    held.map((substance) => ({ name: mixture, substance })),
  );
  return [...everyName(), ...mixed].filter((known) => ` ${plain(known.name)} `.includes(` ${words} `));
}

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

/**
 * A solvent by its name or another name of it: molar mass, specific gravity, flash point and lower flammable limit.
 * What is in a can is often a mixture: the product's own safety data sheet goes first. Denatured alcohol, methylated
 * spirits, paint thinner and lacquer thinner are not in the table, because they are mixtures: `namesLike` leads on.
 *
 * @param name - The whole name; case and punctuation do not matter.
 * @returns The solvent with its citation; `null` where the table has none of just that name.
 * @throws RangeError where it is no text.
 * @example
 * ```ts
 * import { findSolvent } from '@scantling/finishing';
 * findSolvent('turpentine').lowerFlammableLimitPct // => 0.8
 * findSolvent('turpentine').lowFlashPointC // => 35
 * findSolvent('Mineral spirits').substance // => 'Stoddard solvent'
 * findSolvent('mineral spirits').lowerFlammableLimitPct // => null
 * findSolvent('benzene') // => null
 * findSolvent('denatured alcohol') // => null
 * ```
 */
export function findSolvent(name: string): FoundSolvent | null {
  const substance = substanceNamed('findSolvent', name);
  const row = solventTable.find((one) => one.substance === substance);
  return row
    ? {
        ...row,
        lowFlashPointC: celsius(row.lowFlashPointF),
        highFlashPointC: celsius(row.highFlashPointF),
        citation: rowCitation(solventProvenance, row, row.substance),
      }
    : null;
}

/** What tells a row from the others of its table, as its errata name it. */
const keysOf = ({ substance, setBy, kind, applies }: ExposureLimitRow) =>
  [substance, setBy, kind, applies].join('; ');

/**
 * The exposure limits of a solvent, or of wood dust, as published, in the units published. They are limits for workers,
 * set for working days; they change, and others hold in other places: ask for those in force.
 *
 * @param name - The whole name, as for `findSolvent`: `turpentine`, `mineral spirits`, `wood dust`.
 * @returns Each limit with its citation, of the later sources first; none where the tables have none of just that name.
 * @throws RangeError where it is no text.
 * @example
 * ```ts
 * import { findExposureLimits } from '@scantling/finishing';
 * const [limit] = findExposureLimits('turpentine');
 * limit.setBy // => 'NIOSH'
 * limit.limitPpm // => 100
 * limit.limitMgPerM3 // => 560
 * findExposureLimits('wood dust').map(({ limitMgPerM3 }) => limitMgPerM3) // => [15, 5, 1, 0.5, 1]
 * findExposureLimits('benzene') // => []
 * ```
 */
export function findExposureLimits(name: string): readonly FoundExposureLimit[] {
  const substance = substanceNamed('findExposureLimits', name);
  return exposureLimitTables.flatMap(({ rows, provenance }) =>
    rows
      .filter((row) => row.substance === substance)
      .map((row) => ({ ...row, citation: rowCitation(provenance, row, keysOf(row)) })),
  );
}
