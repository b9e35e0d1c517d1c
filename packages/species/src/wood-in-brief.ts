import type { Citation } from '@scantling/rules';
import { briefCitations, briefWoods } from './data/woods-in-brief.generated.ts';
import { wordsAsked } from './names.ts';
import type { PrintedFigure } from './wood.ts';
import { type Named, namesOf, woodMeant } from './wood-names.ts';

/** A wood in brief: how it moves, how heavy and how stiff it is, each by the one figure to use. A `Wood` is one too. */
export interface WoodInBrief {
  readonly commonName: string;
  /** `null` where none was found. A group of species that are sold together has `spp.` */
  readonly botanicalName: { readonly name: string } | null;
  /** Share of its dimension by which it moves for each 1 % of moisture content, between 6 and 14 %. */
  readonly movement: {
    /** Across the growth rings, per 1 %: the width of a quartersawn board. */
    readonly radialPerPct: PrintedFigure | null;
    /** Along the growth rings, per 1 %: the width of a flatsawn board. */
    readonly tangentialPerPct: PrintedFigure | null;
  };
  readonly at12Pct: {
    /** Ovendry mass over the volume at 12 % moisture content, by that of water. */
    readonly specificGravityRatio: PrintedFigure | null;
    readonly modulusOfElasticityMPa: PrintedFigure | null;
  };
}

/** What a name means. */
export interface FoundWood {
  /** The one wood that the name means; `null` where it means several or none. */
  readonly species: WoodInBrief | null;
  /** The woods that an ambiguous name may mean; empty where it means one or none. */
  readonly candidates: readonly WoodInBrief[];
}

/** A figure, and which of the citations is its own. */
type BriefFigure = readonly [value: number, citation: number] | null;

/** A wood as the generated list holds it. */
export type BriefWood = readonly [
  commonName: string,
  botanicalName: string | null,
  /** Those that say more than the common name does. */
  printedAs: readonly string[],
  aliases: readonly string[],
  radialPerPct: BriefFigure,
  tangentialPerPct: BriefFigure,
  specificGravityRatio: BriefFigure,
  modulusOfElasticityMPa: BriefFigure,
];

function figureOf(figure: BriefFigure): PrintedFigure | null {
  const [value, citation] = figure ?? [];
  return value === undefined ? null : { value, citation: briefCitations[citation as number] as Citation };
}

function inBrief([
  commonName,
  botanicalName,
  ,
  ,
  radial,
  tangential,
  gravity,
  stiffness,
]: BriefWood): WoodInBrief {
  return {
    commonName,
    botanicalName: botanicalName === null ? null : { name: botanicalName },
    movement: { radialPerPct: figureOf(radial), tangentialPerPct: figureOf(tangential) },
    at12Pct: { specificGravityRatio: figureOf(gravity), modulusOfElasticityMPa: figureOf(stiffness) },
  };
}

/** Every wood in brief, in the order of `data/woods.csv`. */
export const woodsInBrief: readonly WoodInBrief[] = /* @__PURE__ */ briefWoods.map(inBrief);

let named: readonly Named<WoodInBrief>[] | undefined;

/**
 * Finds a wood in brief, by the names that `findSpecies` finds it by: for a program that has to be light. It
 * ships half of what that search does.
 *
 * @param text - Name of the wood, as for `findSpecies`.
 * @returns `species`, the one wood that is meant, or `null`; `candidates`, the woods that an ambiguous name may mean.
 *   Text that names no wood gives neither.
 * @throws RangeError where `text` is not text.
 * Source: each figure names its own. The trade's names are common practice, no source.
 * @example
 * ```ts
 * import { findWoodInBrief } from '@scantling/species';
 * const { species } = findWoodInBrief('Hard Maple');
 * species.commonName // => 'sugar maple'
 * species.movement.tangentialPerPct.value // => 0.00353
 * species.at12Pct.modulusOfElasticityMPa.citation.at // => 'Table 5-3a'
 * findWoodInBrief('soft maple').candidates.map(({ commonName }) => commonName) // => ['bigleaf maple', 'red maple', 'silver maple']
 * findWoodInBrief('plywood') // => { species: null, candidates: [] }
 * findWoodInBrief(7) // throws findWoodInBrief requires text to be text, got number
 * ```
 */
export function findWoodInBrief(text: string): FoundWood {
  const asked = wordsAsked('findWoodInBrief', 'text', text);
  named ??= briefWoods.map(([commonName, botanicalName, printedAs, aliases], i) => ({
    wood: woodsInBrief[i] as WoodInBrief,
    names: namesOf({ commonName, botanicalName, printedAs, aliases }),
  }));
  return woodMeant(asked, named);
}
