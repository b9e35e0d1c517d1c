import type { Citation, TableProvenance, TableRow } from '@scantling/rules';
import { requireThat } from '@scantling/rules';
import {
  woodHandbook2010Table131,
  woodHandbook2010Table131Provenance,
} from './data/wood-handbook-2010--table-13-1.generated.ts';
import {
  woodHandbook2010Table132,
  woodHandbook2010Table132Provenance,
} from './data/wood-handbook-2010--table-13-2.generated.ts';
import type { InstallationMoistureRow, OutdoorMoistureRow } from './rows.ts';
import { betweenExtremes, overMonths, type YearOfMoisture } from './year-of-moisture.ts';

/** A year taken from a table. */
export interface FoundYear extends YearOfMoisture {
  /** What was found, as the table names it: `Portland, OR`. */
  readonly place: string;
  /** Where it stands, what the figures are, and how they were confirmed. */
  readonly citation: Citation;
}

function citationOf(
  { confirmed, tier }: TableRow,
  { source, at, errata }: TableProvenance,
  key: string,
  says: string,
): Citation {
  const erratum = errata.find(({ rows }) => rows.includes(key))?.says;
  return { source, at: `${at}: ${says}`, confirmed, tier, ...(erratum !== undefined && { erratum }) };
}

function installationYear(row: InstallationMoistureRow): FoundYear {
  const says = `${row.region}, ${row.use}, the range for single pieces on the day of installation, taken here as the range of the year`;
  return {
    ...betweenExtremes(row.leastMoisturePct, row.mostMoisturePct),
    place: row.region,
    citation: citationOf(row, woodHandbook2010Table132Provenance, row.region, says),
  };
}

const installationYears = (use: InstallationMoistureRow['use']): FoundYear[] =>
  woodHandbook2010Table132.filter((row) => row.use === use).map(installationYear);

function outdoorYear(row: OutdoorMoistureRow): FoundYear {
  const place = `${row.city}, ${row.state}`;
  return {
    ...overMonths([
      row.januaryPct,
      row.februaryPct,
      row.marchPct,
      row.aprilPct,
      row.mayPct,
      row.junePct,
      row.julyPct,
      row.augustPct,
      row.septemberPct,
      row.octoberPct,
      row.novemberPct,
      row.decemberPct,
    ]),
    place,
    citation: citationOf(row, woodHandbook2010Table131Provenance, `${row.city}; ${row.state}`, place),
  };
}

/** The words of a name, without order, case, accents and punctuation. */
const wordsOf = (name: string): string[] =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .match(/[a-z]+/g) ?? [];

/** The one year whose name has all words asked for: in full, else as the beginnings of some. */
function findYear(
  caller: string,
  what: string,
  asked: string,
  years: readonly FoundYear[],
): FoundYear | null {
  requireThat(caller, typeof asked === 'string', `${what} to be text, got ${typeof asked}`);
  const words = wordsOf(asked);
  if (words.length === 0) return null;
  const fitting = (fits: (word: string, other: string) => boolean) =>
    years.filter(({ place }) => {
      const others = wordsOf(place);
      return words.every((word) => others.some((other) => fits(word, other)));
    });
  const inFull = fitting((word, other) => word === other);
  const found = inFull.length > 0 ? inFull : fitting((word, other) => other.startsWith(word));
  const candidates = found.map(({ place }) => place).join('; ');
  requireThat(caller, found.length < 2, `${what} to mean one place, got "${asked}": ${candidates}`);
  return found[0] ?? null;
}

/**
 * The year of wood in heated rooms of a region of the United States. The handbook's table is about the day of
 * installation: its range for single pieces is taken as the range of the year, which it does not claim itself.
 * Readings of your own room are better.
 *
 * @param region - Words of the region's name, or their beginnings: `dry southwest`; case and order do not matter.
 * @returns The year with its citation; `null` where no region has these words.
 * @throws RangeError where the words fit several regions, which the message lists.
 * Source: Wood Handbook (FPL-GTR-190), Table 13-2, its interior rows.
 * @example
 * ```ts
 * import { findHeatedYear } from '@scantling/movement';
 * const year = findHeatedYear('dry southwest');
 * year.place // => 'Dry southwestern area'
 * year.driestMoisturePct // => 4
 * year.wettestMoisturePct // => 9
 * year.citation.confirmed // => 'memory'
 * findHeatedYear('the moon') // => null
 * ```
 */
export const findHeatedYear = (region: string): FoundYear | null =>
  findYear('findHeatedYear', 'region', region, installationYears('interior'));

/**
 * The year of wood out of doors or in unheated rooms, sheltered from rain and sun: month by month for a city of the
 * United States, or the range for a region. Every figure of the cities is recalled from memory and may be 0.5 off.
 *
 * @param place - A city, alone or with the two letters of its state, or words of a region's name, or the beginnings
 * of these words; case, order and punctuation do not matter.
 * @returns The year with its citation; `null` where no place has these words.
 * @throws RangeError where the words fit several places, which the message lists.
 * Source: Wood Handbook (FPL-GTR-190), Table 13-1 after Simpson (FPL-RN-0268), and the exterior rows of Table 13-2.
 * @example
 * ```ts
 * import { findUnheatedYear } from '@scantling/movement';
 * const year = findUnheatedYear('portland or');
 * year.place // => 'Portland, OR'
 * year.wettestMonthIndex // => 11
 * findUnheatedYear('Portland') // throws findUnheatedYear requires place to mean one place, got "Portland": Portland, ME; Portland, OR
 * ```
 */
export const findUnheatedYear = (place: string): FoundYear | null =>
  findYear('findUnheatedYear', 'place', place, [
    ...woodHandbook2010Table131.map(outdoorYear),
    ...installationYears('exterior'),
  ]);
