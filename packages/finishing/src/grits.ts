import {
  type Citation,
  requireChoice,
  requireInputs,
  requireThat,
  rowCitation,
  type TableProvenance,
} from '@scantling/rules';
import { gnuUnitsAnsiCoated, gnuUnitsAnsiCoatedProvenance } from './data/gnu-units--ansi-coated.generated.ts';
import { gnuUnitsFepaF, gnuUnitsFepaFProvenance } from './data/gnu-units--fepa-f.generated.ts';
import { gnuUnitsFepaP, gnuUnitsFepaPProvenance } from './data/gnu-units--fepa-p.generated.ts';
import { gnuUnitsJis, gnuUnitsJisProvenance } from './data/gnu-units--jis.generated.ts';
import {
  sandpaperSizesPageCami,
  sandpaperSizesPageCamiProvenance,
} from './data/sandpaper-sizes-page--cami.generated.ts';
import type { GritRow } from './rows.ts';

/** A list of grades: FEPA P and F (ISO 6344, ISO 8486), two American ones that disagree, and a Japanese one. */
export type GritList = 'FEPA P' | 'FEPA F' | 'ANSI' | 'CAMI' | 'JIS';

/** The grades of a list, coarse ones first as it prints them, with where they come from. */
export interface GritTable {
  readonly rows: readonly GritRow[];
  readonly provenance: TableProvenance;
}

/** Every list of grades. */
export const gritTables: Readonly<Record<GritList, GritTable>> = {
  'FEPA P': { rows: gnuUnitsFepaP, provenance: gnuUnitsFepaPProvenance },
  'FEPA F': { rows: gnuUnitsFepaF, provenance: gnuUnitsFepaFProvenance },
  ANSI: { rows: gnuUnitsAnsiCoated, provenance: gnuUnitsAnsiCoatedProvenance },
  CAMI: { rows: sandpaperSizesPageCami, provenance: sandpaperSizesPageCamiProvenance },
  JIS: { rows: gnuUnitsJis, provenance: gnuUnitsJisProvenance },
};

const LISTS: readonly GritList[] = ['FEPA P', 'FEPA F', 'ANSI', 'CAMI', 'JIS'];

/** A grade and the size of its grains. */
export interface Grit {
  /** As its list writes it: `P120`, `ANSI 120`; `15 µm` for a grade that is named by its size. */
  readonly grade: string;
  /** Median size of the grains, µm. */
  readonly medianUm: number;
}

/** A grade of a list. */
export interface ListedGrit extends Grit {
  readonly list: GritList;
  /** Where it stands, and how it was confirmed. */
  readonly citation: Citation;
}

/** A grade that was looked up; one named by its size stands in no list. */
export type FoundGrit = ListedGrit | (Grit & { readonly list: 'micron'; readonly citation: null });

/** A grade of another list, and how its grains compare with the size asked for. */
export interface NearestGrit extends ListedGrit {
  /** Its median size as a part of the one asked for: above 1 it is coarser. */
  readonly sizeRatio: number;
}

const listed = (list: GritList, row: GritRow): ListedGrit => ({
  list,
  grade: row.grade,
  medianUm: row.medianUm,
  citation: rowCitation(gritTables[list].provenance, row, row.grade),
});

const inList = (list: GritList, grade: string): ListedGrit | null => {
  const row = gritTables[list].rows.find((one) => one.grade === grade);
  return row ? listed(list, row) : null;
};

const numbered: readonly { readonly form: RegExp; readonly list: GritList; readonly prefix: string }[] = [
  { form: /^p ?(\d+)$/, list: 'FEPA P', prefix: 'P' },
  { form: /^f ?(\d+)$/, list: 'FEPA F', prefix: 'F' },
  { form: /^ansi ?#?(\d+)$/, list: 'ANSI', prefix: 'ANSI ' },
  { form: /^cami ?#?(\d+)$/, list: 'CAMI', prefix: 'CAMI ' },
  { form: /^jis ?#?(\d+)$/, list: 'JIS', prefix: 'JIS ' },
];

/** For other planners: the grade under the caller's own name, with the path of the input. */
export function gritNamed(caller: string, path: string, grade: unknown): FoundGrit | null {
  requireThat(caller, typeof grade === 'string', `${path} to be text, got ${typeof grade}`);
  // Compatibility forms make one of the two micro signs.
  const asked = (grade as string).normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase();
  const size = /^(\d+(?:\.\d+)?) ?(?:μm|um|microns?)$/.exec(asked)?.[1];
  if (size !== undefined) {
    const medianUm = Number(size);
    requireThat(
      caller,
      medianUm >= 0.1 && medianUm <= 5000,
      `${path} between 0.1 and 5000 µm, got "${grade}"`,
    );
    return { list: 'micron', grade: `${medianUm} µm`, medianUm, citation: null };
  }
  const bare = /^#?(\d+)$/.exec(asked)?.[1];
  if (bare !== undefined) {
    const meant = numbered.flatMap(({ list, prefix }) => inList(list, prefix + bare) ?? []);
    const names = meant.map((one) => `${one.grade} is ${one.medianUm} µm`).join(', ');
    requireThat(
      caller,
      meant.length === 0,
      `${path} to name its list, got "${(grade as string).slice(0, 40)}": ${names}`,
    );
  }
  const as = numbered.find(({ form }) => form.test(asked));
  return as ? inList(as.list, as.prefix + as.form.exec(asked)?.[1]) : null;
}

/**
 * A grade of abrasive by its name. The number alone does not say the size: grade 220 has grains of 58 to 68 µm,
 * depending on the list. So a name says its list: `P220` and `F220` do, others are `ANSI 220`, `CAMI 220` (the two
 * American lists disagree), `JIS 220`; a grade may also be named by its size, `15 µm`.
 *
 * @param grade - The name; case and spaces do not matter.
 * @returns The grade with its median size and its citation; `null` where its list has no such grade.
 * @throws RangeError where it is no text, a bare number that lists know, which the message shows, or a size outside
 * 0.1 to 5000 µm.
 * @example
 * ```ts
 * import { findGrit } from '@scantling/finishing';
 * findGrit('P120').medianUm // => 125
 * findGrit('ansi 220').medianUm // => 58
 * findGrit('CAMI 220').citation.confirmed // => 'memory'
 * findGrit('15 µm') // => { list: 'micron', grade: '15 µm', medianUm: 15, citation: null }
 * findGrit('P125') // => null
 * findGrit('220') // throws findGrit requires grade to name its list, got "220": P220 is 68 µm, F220 is 58 µm, ANSI 220 is 58 µm, CAMI 220 is 66 µm, JIS 220 is 53 µm
 * ```
 */
export const findGrit = (grade: string): FoundGrit | null => gritNamed('findGrit', 'grade', grade);

function nearest(list: GritList, medianUm: number): NearestGrit | null {
  const { rows } = gritTables[list];
  const sizes = rows.map((row) => row.medianUm);
  if (!(medianUm <= Math.max(...sizes) && medianUm >= Math.min(...sizes))) return null;
  const apart = (row: GritRow) => Math.abs(Math.log(row.medianUm / medianUm));
  const [first, ...others] = rows;
  if (!first) return null;
  const best = others.reduce((near, row) => (apart(row) < apart(near) ? row : near), first);
  return { ...listed(list, best), sizeRatio: best.medianUm / medianUm };
}

/**
 * The grade of a list whose grains are nearest in size, by ratio; of two that are as near, the one that the list has
 * first.
 *
 * @param input - Median size, µm, 0.1 to 5000, and the list.
 * @returns The grade, and its size against the one asked for; `null` where the size lies beyond the list's grades.
 * @throws RangeError where the size is outside its limits, or there is no such list.
 * @example
 * ```ts
 * import { nearestGrit } from '@scantling/finishing';
 * const { grade, sizeRatio } = nearestGrit({ medianUm: 58.5, list: 'ANSI' });
 * grade // => 'ANSI 220'
 * sizeRatio // => 0.9915
 * nearestGrit({ medianUm: 1000, list: 'JIS' }) // => null
 * ```
 */
export function nearestGrit(input: {
  readonly medianUm: number;
  readonly list: GritList;
}): NearestGrit | null {
  const { medianUm, list } = input ?? {};
  requireInputs('nearestGrit', { medianUm }, { medianUm: { min: 0.1, max: 5000 } });
  requireChoice('nearestGrit', 'list', list, LISTS);
  return nearest(list, medianUm);
}

/**
 * What comes nearest to a grade in every other list: what to take where its own is not sold.
 *
 * @param grade - The grade, as `findGrit` reads it.
 * @returns One grade for each list whose range holds its size; `null` where the grade is in no list.
 * @throws RangeError as `findGrit` does.
 * @example
 * ```ts
 * import { equivalentGrits } from '@scantling/finishing';
 * equivalentGrits('P220').map(({ grade }) => grade) // => ['F180', 'ANSI 180', 'CAMI 220', 'JIS 180']
 * equivalentGrits('P240').map(({ grade }) => grade) // => ['F220', 'ANSI 220', 'CAMI 240', 'JIS 180']
 * ```
 */
export function equivalentGrits(grade: string): readonly NearestGrit[] | null {
  const found = gritNamed('equivalentGrits', 'grade', grade);
  if (!found) return null;
  return LISTS.filter((list) => list !== found.list).flatMap((list) => nearest(list, found.medianUm) ?? []);
}
