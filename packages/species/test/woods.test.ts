import type { TableProvenance } from '@scantling/rules';
import { expect, test } from 'vitest';
import * as species from '../src/index.ts';
import {
  inchPoundStrength,
  mapleFlooringStrength,
  metricStrength,
  movementCoefficientProvenance,
  movementCoefficientTable,
  oregonProperties,
  type PrintedFigure,
  ruptureStrength,
  type SpeciesRow,
  shrinkageProvenance,
  shrinkageTable,
  tabulatedStrength,
  type Wood,
  type WoodFigure,
  woods,
} from '../src/index.ts';

// 1 psi and 1 lbf, from the exact pound, standard gravity and inch (NIST SP 811, App. B).
const N_PER_LBF = 0.45359237 * 9.80665;
const MPA_PER_PSI = N_PER_LBF / 25.4 ** 2;

/** One figure of a row, and where in a wood it belongs. */
interface Place {
  readonly of: (wood: Wood, moisture: 'green' | 'at12Pct') => WoodFigure | null;
  readonly times: number;
}

const places: Readonly<Record<string, Place>> = {
  radialPct: { of: ({ shrinkage }) => shrinkage.radialPct, times: 1 },
  tangentialPct: { of: ({ shrinkage }) => shrinkage.tangentialPct, times: 1 },
  volumetricPct: { of: ({ shrinkage }) => shrinkage.volumetricPct, times: 1 },
  radialPerPct: { of: ({ movement }) => movement.radialPerPct, times: 1 },
  tangentialPerPct: { of: ({ movement }) => movement.tangentialPerPct, times: 1 },
  specificGravityRatio: { of: (wood, then) => wood[then].specificGravityRatio, times: 1 },
  modulusOfElasticityMillionPsi: {
    of: (wood, then) => wood[then].modulusOfElasticityMPa,
    times: 1e6 * MPA_PER_PSI,
  },
  modulusOfElasticityMPa: { of: (wood, then) => wood[then].modulusOfElasticityMPa, times: 1 },
  modulusOfRupturePsi: { of: (wood, then) => wood[then].modulusOfRuptureMPa, times: MPA_PER_PSI },
  modulusOfRuptureKPa: { of: (wood, then) => wood[then].modulusOfRuptureMPa, times: 0.001 },
  modulusOfRuptureMPa: { of: (wood, then) => wood[then].modulusOfRuptureMPa, times: 1 },
  sideHardnessLbf: { of: (wood, then) => wood[then].sideHardnessN, times: N_PER_LBF },
  sideHardnessN: { of: (wood, then) => wood[then].sideHardnessN, times: 1 },
};

/** Columns that stay in their tables: no wood shows them. */
const tableOnly = [
  'workToMaximumLoadPsi',
  'workToMaximumLoadKPa',
  'weightGreenLbPerFt3',
  'weightAirDryLbPerFt3',
];

const [handbook, handbook1999, imported] = shrinkageProvenance as [
  TableProvenance,
  TableProvenance,
  TableProvenance,
];
const shrinkageRowsOf = (at: string) =>
  at === handbook1999.at
    ? shrinkageTable.filter((row) => row.species === 'Baldcypress')
    : shrinkageTable.filter(
        (row) => row.species !== 'Baldcypress' && 'location' in row === (at === imported.at),
      );

/** Every table but that of combinations of species. */
const tables: readonly { readonly rows: readonly SpeciesRow[]; readonly provenance: TableProvenance }[] = [
  ...[handbook, handbook1999, imported].map((provenance) => ({
    provenance,
    rows: shrinkageRowsOf(provenance.at),
  })),
  { rows: movementCoefficientTable, provenance: movementCoefficientProvenance },
  inchPoundStrength,
  metricStrength,
  oregonProperties,
  tabulatedStrength,
  mapleFlooringStrength,
  ruptureStrength,
];

const entries = tables.flatMap(({ rows, provenance }) => rows.map((row) => ({ row, provenance })));
const joinedTo = (row: SpeciesRow) => woods.filter(({ printedAs }) => printedAs.includes(row.species));

/** Rows that name several woods, and so belong to each of them. */
const several = { 'Red oak: water, laurel, willow': ['laurel-oak', 'water-oak', 'willow-oak'] };

test('every row of every table belongs to one wood, but for those that name several', () => {
  expect(entries).toHaveLength(149 + 128 + 57 + 30 + 8 + 32 + 2 + 40);
  const others = entries.filter(({ row }) => joinedTo(row).length !== 1);
  expect(
    Object.fromEntries(others.map(({ row }) => [row.species, joinedTo(row).map(({ id }) => id)])),
  ).toEqual(several);
  expect(others).toHaveLength(1);
});

const allOf = (figure: WoodFigure | null): readonly PrintedFigure[] =>
  figure ? [figure, ...figure.others] : [];

test('every figure of every row stands in its wood, with its mark, its table and its erratum', () => {
  let looked = 0;
  let spared = 0;
  for (const { row, provenance } of entries) {
    const moisture = 'moisture' in row && row.moisture === 'green' ? 'green' : 'at12Pct';
    const key = 'moisture' in row ? `${row.species}; ${row.moisture}` : row.species;
    const errata = provenance.errata.filter(({ rows }) => rows.includes(key));
    for (const [column, printed] of Object.entries(row)) {
      if (typeof printed !== 'number' || tableOnly.includes(column)) continue;
      const place = places[column];
      if (!place) expect.fail(`${column} belongs nowhere`);
      const about = errata.filter(({ columns }) => columns === undefined || columns.includes(column));
      spared += errata.length - about.length;
      const expected = {
        source: provenance.source,
        at: provenance.at,
        confirmed: row.confirmed,
        ...(row.tier === 'reprint' && { tier: 'reprint' }),
        ...(about.length > 0 && { erratum: about.map(({ says }) => says).join(' ') }),
      };
      for (const wood of joinedTo(row)) {
        const [figure, ...more] = allOf(place.of(wood, moisture)).filter(
          ({ citation }) => citation.source === expected.source && citation.at === expected.at,
        );
        expect(more).toEqual([]);
        expect(figure?.citation).toEqual(expected);
        expect(figure?.value).toBeCloseTo(printed * place.times, 9);
        looked += 1;
      }
    }
  }
  const inWoods = woods.flatMap((wood) =>
    [wood.shrinkage, wood.movement, wood.green, wood.at12Pct].flatMap((properties) =>
      Object.values<WoodFigure | null>({ ...properties }).flatMap(allOf),
    ),
  );
  expect(looked).toBeGreaterThan(1000);
  expect(spared).toBeGreaterThan(10);
  expect(inWoods).toHaveLength(looked);
});

test('an erratum stands at the figures that it is about, and at no other of the row', () => {
  // What the errata of data/tables speak of, by the words in them.
  const subjects: readonly (readonly [RegExp, readonly string[]])[] = [
    [/modulus of elasticity/, ['modulusOfElasticityMPa']],
    [/tangential shrinkage of|% tangential\.$/, ['tangentialPct']],
    [/specific gravity/, ['specificGravityRatio']],
    [/[Cc]oefficient/, ['radialPerPct', 'tangentialPerPct']],
  ];
  const seen = new Map<string, number>();
  for (const { shrinkage, movement, green, at12Pct } of woods)
    for (const properties of [shrinkage, movement, green, at12Pct])
      for (const [name, figure] of Object.entries<WoodFigure | null>({ ...properties }))
        for (const { citation } of allOf(figure)) {
          if (!citation.erratum) continue;
          const said = citation.erratum;
          expect([said, subjects.find(([words]) => words.test(said))?.[1] ?? []]).toEqual([
            said,
            expect.arrayContaining([name]),
          ]);
          seen.set(name, (seen.get(name) ?? 0) + 1);
        }
  expect([...seen.keys()].sort()).toEqual(subjects.flatMap(([, names]) => names).sort());

  const { sideHardnessN, modulusOfElasticityMPa } = species.sugarMaple.at12Pct;
  expect(allOf(sideHardnessN)).not.toHaveLength(0);
  for (const { citation } of allOf(sideHardnessN)) expect(citation).not.toHaveProperty('erratum');
  expect(allOf(modulusOfElasticityMPa).map(({ citation }) => citation.erratum)).toEqual(
    Array(3).fill(expect.stringContaining('modulus of elasticity')),
  );
  // The page prints a doubtful location, and no wood shows it.
  expect(species.azobe.shrinkage.radialPct?.citation).not.toHaveProperty('erratum');
});

test('every wood is exported under its id, and has a name of its own', () => {
  const camel = (id: string) => id.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
  expect(woods).toHaveLength(171);
  for (const wood of woods) {
    expect(wood.id).toBe(wood.commonName.toLowerCase().replaceAll(' ', '-'));
    expect((species as Readonly<Record<string, unknown>>)[camel(wood.id)]).toBe(wood);
  }
  expect(new Set(woods.map(({ id }) => id)).size).toBe(woods.length);
});

test('the tables and the woods agree on what is a hardwood and what is imported', () => {
  let looked = 0;
  for (const { row } of entries) {
    const fromElsewhere = 'location' in row || ('group' in row && row.group === 'imported');
    for (const wood of joinedTo(row)) {
      if ('group' in row && row.group !== 'imported')
        expect([row.species, wood.group]).toEqual([row.species, row.group]);
      if ('group' in row || 'location' in row)
        expect([row.species, wood.origin]).toEqual([row.species, fromElsewhere ? 'imported' : 'domestic']);
      looked += 1;
    }
  }
  expect(looked).toBeGreaterThan(400);
});

test('softwoods are conifers, hardwoods are not', () => {
  // Wood Handbook, ch. 2: softwoods come from cone-bearing trees; the genera that it describes, from memory.
  const conifers = [
    'Abies Araucaria Callitropsis Calocedrus Chamaecyparis Juniperus Larix Picea Pinus Pseudotsuga Sequoia',
    'Taxodium Thuja Tsuga',
  ].flatMap((line) => line.split(' '));
  const named = woods.filter(({ botanicalName }) => botanicalName !== null);
  expect(named).toHaveLength(168);
  for (const { id, group, botanicalName } of named) {
    const [genus = ''] = botanicalName?.name.split(' ') ?? [];
    expect([id, conifers.includes(genus)]).toEqual([id, group === 'softwood']);
  }
});

test('botanical names are written as such, and each says how it was confirmed', () => {
  const marks = { text: 0, memory: 0, computed: 0 };
  for (const { botanicalName } of woods) {
    if (!botanicalName) continue;
    expect(botanicalName.name).toMatch(/^[A-Z][a-z]+ ([a-z]+|spp\.)( and [A-Z]\. [a-z]+)?$/);
    marks[botanicalName.citation.confirmed] += 1;
  }
  // From memory: ten of data/woods.csv and fifteen that stand in rows of Table 4-4 from memory.
  expect(marks).toEqual({ text: 168 - 25, memory: 10 + 15, computed: 0 });
  expect(woods.filter(({ botanicalName }) => !botanicalName).map(({ id }) => id)).toEqual([
    'alaska-paper-birch',
    'cuangare',
    'primavera',
  ]);
});
