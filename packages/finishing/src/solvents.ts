import type { Citation, TableProvenance } from '@scantling/rules';
import { requireThat } from '@scantling/rules';
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
import { citationOf } from './table-citation.ts';

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
  readonly citation: Citation;
}

/** An exposure limit with where it stands. */
export interface FoundExposureLimit extends ExposureLimitRow {
  readonly citation: Citation;
}

const plain = (name: string) =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

const namesOf = ({ substance, alsoCalled }: Pick<SolventRow, 'substance' | 'alsoCalled'>) =>
  [substance, ...alsoCalled.split(';')].map(plain);

const substances = (): Pick<SolventRow, 'substance' | 'alsoCalled'>[] => [
  ...solventTable,
  { substance: 'Wood dust', alsoCalled: 'sawdust; sanding dust' },
];

/** The one substance that a name means: a whole name, else a part that no other has. */
function substanceNamed(caller: string, name: unknown): string | null {
  requireThat(caller, typeof name === 'string', `name to be text, got ${typeof name}`);
  const asked = plain(name as string);
  if (asked === '') return null;
  const fitting = (fits: (known: string) => boolean) => substances().filter((one) => namesOf(one).some(fits));
  const whole = fitting((known) => known === asked);
  const found = whole.length > 0 ? whole : fitting((known) => ` ${known} `.includes(` ${asked} `));
  requireThat(
    caller,
    found.length < 2,
    `name to mean one substance, got "${(name as string).slice(0, 40)}": ${found.map(({ substance }) => substance).join('; ')}`,
  );
  return found[0]?.substance ?? null;
}

/**
 * A solvent by its name or another name of it: molar mass, specific gravity, flash point and lower flammable limit.
 * What is in a can is often a mixture: the product's own safety data sheet goes first.
 *
 * @param name - The name, or a part that no other solvent has; case and punctuation do not matter.
 * @returns The solvent with its citation; `null` where the table has none of that name.
 * @throws RangeError where it is no text, or fits several, which the message lists.
 * @example
 * ```ts
 * import { findSolvent } from '@scantling/finishing';
 * findSolvent('turpentine').lowerFlammableLimitPct // => 0.8
 * findSolvent('Mineral spirits').substance // => 'Stoddard solvent'
 * findSolvent('mineral spirits').lowerFlammableLimitPct // => null
 * findSolvent('lemonade') // => null
 * findSolvent('alcohol') // throws findSolvent requires name to mean one substance, got "alcohol": Ethyl alcohol; Isopropyl alcohol; Methyl alcohol
 * ```
 */
export function findSolvent(name: string): FoundSolvent | null {
  const substance = substanceNamed('findSolvent', name);
  const row = solventTable.find((one) => one.substance === substance);
  return row ? { ...row, citation: citationOf(solventProvenance, row, row.substance) } : null;
}

/** What tells a row from the others of its table, as its errata name it. */
const keysOf = ({ substance, setBy, kind, applies }: ExposureLimitRow) =>
  [substance, setBy, kind, applies].join('; ');

/**
 * The exposure limits of a solvent, or of wood dust, as published, in the units published. They are limits for workers,
 * set for working days; they change, and others hold in other places: ask for those in force.
 *
 * @param name - `turpentine`, `mineral spirits`, `wood dust`; case and punctuation do not matter.
 * @returns Each limit with its citation, of the later sources first; none where the tables have no such substance.
 * @throws RangeError where it is no text, or fits several, which the message lists.
 * @example
 * ```ts
 * import { findExposureLimits } from '@scantling/finishing';
 * const [limit] = findExposureLimits('turpentine');
 * limit.setBy // => 'NIOSH'
 * limit.limitPpm // => 100
 * limit.limitMgPerM3 // => 560
 * findExposureLimits('wood dust').map(({ limitMgPerM3 }) => limitMgPerM3) // => [15, 5, 1, 0.5, 1]
 * findExposureLimits('lemonade') // => []
 * ```
 */
export function findExposureLimits(name: string): readonly FoundExposureLimit[] {
  const substance = substanceNamed('findExposureLimits', name);
  return exposureLimitTables.flatMap(({ rows, provenance }) =>
    rows
      .filter((row) => row.substance === substance)
      .map((row) => ({ ...row, citation: citationOf(provenance, row, keysOf(row)) })),
  );
}
