import type { Citation, Source } from '@scantling/rules';
import { joinWood, type PrintedFigure, type Wood, type WoodRow } from '../../../packages/species/src/wood.ts';
import { type NamedWood, namesOf } from '../../../packages/species/src/wood-names.ts';
import { camel } from './emit.ts';
import {
  botanicalNameOf,
  errataOf,
  idOf,
  type NamedRow,
  rowsOf,
  shownOf,
  type WoodLine,
  WRITTEN,
} from './wood-rows.ts';

/** A row of a table as woods take it, its source by the id alone. */
function joinedRow(named: NamedRow): WoodRow {
  const { source, at } = named.table.meta;
  const shown = Object.entries(shownOf(named)).map(([name, code]) => [name, JSON.parse(code)]);
  return {
    table: { source: { id: source } as Source, at },
    ...Object.fromEntries(shown),
    errata: errataOf(named),
  };
}

const sameWords = (some: ReadonlySet<string>, others: ReadonlySet<string>) =>
  some.size === others.size && [...some].every((word) => others.has(word));

/** Printed names by which a wood is not found already: `Alder, red` has no word more than `red alder`. */
function newNames(wood: NamedWood): readonly string[] {
  const [own] = namesOf(wood);
  return wood.printedAs.filter((commonName) => {
    const [printed] = namesOf({ commonName, printedAs: [], aliases: [] });
    const sameCommon = printed.kind === own.kind && sameWords(printed.common, own.common);
    return !sameCommon || (printed.genus !== '' && !sameWords(printed.all, own.all));
  });
}

/** The figures of a wood that stand in the list, in its order. */
const listed = ({ movement, at12Pct }: Wood): readonly (PrintedFigure | null)[] => [
  movement.radialPerPct,
  movement.tangentialPerPct,
  at12Pct.specificGravityRatio,
  at12Pct.modulusOfElasticityMPa,
];

const citationSource = ({ source, ...rest }: Citation) => {
  const marks = Object.entries(rest).map(([name, value]) => `${name}: ${JSON.stringify(value)}`);
  return `  { ${[`source: ${camel(source.id)}`, ...marks].join(', ')} },`;
};

/** The module that holds every wood in brief: names, and the figures that a plan uses, each with its citation. */
export function briefModule(lines: readonly WoodLine[], all: readonly NamedRow[]): string {
  const woods = lines.map((line) => {
    const rows = rowsOf(line, all);
    const { common_name: commonName, trade_names, other_names, printed_as: printedAs, group, origin } = line;
    const aliases = [...trade_names, ...other_names];
    const entry = { id: idOf(line), commonName, aliases, printedAs, group, origin };
    const wood = joinWood({ ...entry, botanicalName: null, rows: rows.map(joinedRow) });
    return { ...entry, botanicalName: botanicalNameOf(line, rows), figures: listed(wood) };
  });
  const cited = woods.flatMap(({ figures }) =>
    figures.flatMap((figure) => (figure ? [citationSource(figure.citation)] : [])),
  );
  const citations = [...new Set(cited)];
  const sources = all.filter(({ table }) => cited.some((code) => code.includes(camel(table.meta.source))));
  const rowSource = ({ figures, ...wood }: (typeof woods)[number]) => {
    const { commonName, botanicalName, aliases } = wood;
    const placed = figures.map(
      (figure) => figure && [figure.value, citations.indexOf(citationSource(figure.citation))],
    );
    return `  ${JSON.stringify([commonName, botanicalName, newNames(wood), aliases, ...placed])},`;
  };
  return [
    WRITTEN,
    "import type { Citation } from '@scantling/rules';",
    `import { ${[...new Set(sources.map(({ table }) => camel(table.meta.source)))].sort().join(', ')} } from '@scantling/rules/sources';`,
    "import type { BriefWood } from '../wood-in-brief.ts';",
    '',
    'export const briefCitations: readonly Citation[] = [',
    ...citations,
    '];',
    '',
    '/** Every wood in brief, in the order of `data/woods.csv`. */',
    'export const briefWoods: readonly BriefWood[] = [',
    ...woods.map(rowSource),
    '];',
    '',
  ].join('\n');
}
