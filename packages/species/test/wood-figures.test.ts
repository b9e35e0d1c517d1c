import type { Source, Tier } from '@scantling/rules';
import { numberArb } from '@scantling/tests-shared';
import {
  convert,
  megapascal,
  newton,
  pascal,
  poundForce,
  poundForcePerSquareInch,
  type Unit,
} from '@scantling/units';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sugarMaple, type WoodFigure, woods } from '../src/index.ts';
import { joinWood, type WoodRow } from '../src/wood.ts';

const source = (id: string): Source => ({ id, title: id, author: 'nobody' });
const handbook = source('wood-handbook-2010');
const other = source('a-page-that-repeats-it');

const woodOf = (rows: readonly WoodRow[]) =>
  joinWood({
    id: 'a-wood',
    commonName: 'a wood',
    botanicalName: null,
    group: 'hardwood',
    origin: 'domestic',
    aliases: [],
    printedAs: ['Wood, a'],
    rows,
  });

/** Columns that give one figure, the finest rounding first: the handbook prints 0.01 million psi, and 100 MPa. */
const finest = {
  modulusOfElasticityMPa: ['modulusOfElasticityMillionPsi', 'modulusOfElasticityMPa'],
  modulusOfRuptureMPa: ['modulusOfRupturePsi', 'modulusOfRuptureKPa', 'modulusOfRuptureMPa'],
  sideHardnessN: ['sideHardnessLbf', 'sideHardnessN'],
  specificGravityRatio: ['specificGravityRatio'],
} as const;
type Name = keyof typeof finest;
const names = Object.keys(finest) as Name[];

describe('SI figures', () => {
  // The factors of packages/units are held to NIST SP 811, App. B.
  const pressure = (column: keyof WoodRow, from: Unit<'pressure'>, times = 1) => ({
    column,
    toSI: (printed: number) => convert(printed * times, from, megapascal),
    back: (value: number) => convert(value, megapascal, from) / times,
  });
  const conversions = {
    modulusOfElasticityMPa: pressure('modulusOfElasticityMillionPsi', poundForcePerSquareInch, 1e6),
    modulusOfRuptureMPa: pressure('modulusOfRupturePsi', poundForcePerSquareInch),
    sideHardnessN: {
      column: 'sideHardnessLbf' as const,
      toSI: (printed: number) => convert(printed, poundForce, newton),
      back: (value: number) => convert(value, newton, poundForce),
    },
  };

  test.each(Object.entries(conversions))('%s is the printed figure in SI, there and back', (name, how) => {
    fc.assert(
      fc.property(numberArb({ min: 0.01, max: 30_000 }), (printed) => {
        const row = { table: { source: handbook, at: 'T' }, moisture: '12%', confirmed: 'text' } as const;
        const { at12Pct } = woodOf([{ ...row, tier: 'publication', [how.column]: printed }]);
        const value = at12Pct[name as keyof typeof conversions]?.value ?? Number.NaN;
        expect(Math.abs(value / how.toSI(printed) - 1)).toBeLessThan(1e-14);
        expect(Math.abs(how.back(value) / printed - 1)).toBeLessThan(1e-14);
      }),
    );
  });

  test('kilopascals become megapascals without a trace of rounding', () => {
    const row = { table: { source: handbook, at: 'T' }, moisture: '12%', confirmed: 'text' } as const;
    for (let kPa = 20_000; kPa <= 180_000; kPa += 1000) {
      const { at12Pct } = woodOf([{ ...row, tier: 'publication', modulusOfRuptureKPa: kPa }]);
      expect(at12Pct.modulusOfRuptureMPa?.value).toBe(convert(kPa * 1000, pascal, megapascal));
    }
  });
});

describe('the order of preference', () => {
  const rowArb = fc
    .record({
      source: fc.constantFrom(handbook, other),
      tier: fc.constantFrom<Tier>('publication', 'reprint', 'memory'),
      moisture: fc.constantFrom('green' as const, '12%' as const),
      columns: fc.dictionary(fc.constantFrom(...names.flatMap((name) => finest[name])), fc.constant(1)),
    })
    .map(({ source: from, tier, moisture, columns }) => ({ from, tier, moisture, columns }));
  type Row = typeof rowArb extends fc.Arbitrary<infer R> ? R : never;

  const rowsOf = (rows: readonly Row[]): WoodRow[] =>
    rows.map(({ from, tier, moisture, columns }, i) => ({
      table: { source: from, at: `row ${i}` },
      tier,
      confirmed: tier === 'memory' ? 'memory' : 'text',
      moisture,
      ...columns,
    }));

  /** Ways to be preferred, the weightiest first. */
  const virtues: readonly ((row: Row, column: string, name: Name) => number)[] = [
    ({ tier }) => (tier === 'memory' ? 0 : 1),
    ({ tier }) => (tier === 'publication' ? 1 : 0),
    ({ from }) => (from === handbook ? 1 : 0),
    (_, column, name) => -(finest[name] as readonly string[]).indexOf(column),
  ];

  test('seen before remembered, publication before reprint, handbook before copy, fine before rounded', () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.array(rowArb, { maxLength: 6 }), (rows) => {
        const wood = woodOf(rowsOf(rows));
        for (const name of names) {
          for (const [moisture, strength] of [
            ['green', wood.green],
            ['12%', wood.at12Pct],
          ] as const) {
            const printed = rows.flatMap((row, i) =>
              row.moisture === moisture
                ? finest[name].filter((column) => column in row.columns).map((column) => ({ row, column, i }))
                : [],
            );
            const figure: WoodFigure | null = strength[name];
            if (printed.length === 0) {
              expect(figure).toBeNull();
              continue;
            }
            const shown = figure ? [figure, ...figure.others] : [];
            const best = (one: (typeof printed)[number]) =>
              virtues.map((virtue) => virtue(one.row, one.column, name) + 5).join();
            const ranked = printed.map((one) => ({ ...one, rank: best(one) }));
            ranked.sort((a, b) => (a.rank < b.rank ? 1 : a.rank > b.rank ? -1 : 0));
            expect(shown.map(({ citation }) => citation.at)).toEqual(ranked.map(({ i }) => `row ${i}`));
            compared += shown.length - 1;
          }
        }
      }),
    );
    expect(compared).toBeGreaterThan(20);
  });

  test('in sugar maple: the handbook as reprinted, then the flooring table, then the handbook as remembered', () => {
    const { modulusOfElasticityMPa } = sugarMaple.at12Pct;
    expect(modulusOfElasticityMPa?.value).toBe(12_600);
    expect(modulusOfElasticityMPa?.citation).toMatchObject({ at: 'Table 5-3a', tier: 'reprint' });
    const { others = [] } = modulusOfElasticityMPa ?? {};
    // 1.88 and 1.83 million psi of 6894.757 kPa (NIST SP 811, App. B.8).
    expect(others.map(({ value }) => Math.round(value))).toEqual([12_962, 12_617]);
    expect(others.map(({ citation }) => [citation.source.id, citation.confirmed])).toEqual([
      ['maple-flooring-properties', 'text'],
      ['wood-handbook-2010', 'memory'],
    ]);
    for (const { citation } of others) expect(citation.erratum).toContain('1.88 million psi');
  });
});

describe('figures that were printed apart from each other', () => {
  test('inch-pound and metric figures of one wood agree to the rounding of both', () => {
    // Wood Handbook, Tables 5-3a and 5-3b, and pages that repeat either. Half of the last printed digit: 100 MPa and
    // 0.01 million psi, 1 MPa and 100 psi, 100 N and 10 lbf.
    const rounding = {
      modulusOfElasticityMPa: 50 + 34.5,
      modulusOfRuptureMPa: 0.5 + 0.345,
      sideHardnessN: 50 + 22.3,
      specificGravityRatio: 0,
    };
    const pairs = woods.flatMap(({ id, green, at12Pct }) =>
      [green, at12Pct].flatMap((strength) =>
        names.flatMap((name) => {
          const figure = strength[name];
          return (figure?.others ?? []).map(({ value, citation }) => {
            const off = Math.abs(value - (figure?.value ?? Number.NaN));
            return { id, name, off, citation, allowed: rounding[name] };
          });
        }),
      ),
    );
    expect(pairs.length).toBeGreaterThan(100);
    const apart = pairs.filter(({ off, allowed }) => !(off <= allowed));
    expect(apart.map(({ id, name }) => `${id}: ${name}`)).toEqual([
      'sugar-maple: modulusOfElasticityMPa',
      'sugar-maple: modulusOfElasticityMPa',
    ]);
    for (const { citation } of apart) {
      expect(citation.source.id).toBe('maple-flooring-properties');
      expect(citation.erratum).toContain('where the Wood Handbook gives');
    }
  });

  test('a wood that dries gets denser, stiffer, stronger and harder', () => {
    // Wood Handbook, ch. 5.
    const pairs = woods.flatMap(({ id, green, at12Pct }) =>
      names.flatMap((name) => {
        const [wet, dry] = [green[name], at12Pct[name]];
        return wet && dry ? [{ id, name, grows: dry.value > wet.value }] : [];
      }),
    );
    expect(pairs.length).toBeGreaterThan(50);
    expect(pairs.filter(({ grows }) => !grows)).toEqual([]);
  });

  test('specific gravity at 12 % follows from that of green wood', () => {
    // Wood Handbook, ch. 4: G = Gb / (1 − 0.265 a Gb), a = (30 − 12) / 30 (from memory). It is a mean over all woods.
    const at12 = (basic: number) => basic / (1 - 0.265 * 0.6 * basic);
    const pairs = woods.flatMap(({ green, at12Pct }) =>
      green.specificGravityRatio && at12Pct.specificGravityRatio
        ? [[green.specificGravityRatio.value, at12Pct.specificGravityRatio.value] as const]
        : [],
    );
    expect(pairs).toHaveLength(15);
    for (const [basic, dry] of pairs) expect(Math.abs(at12(basic) - dry)).toBeLessThanOrEqual(0.025);
    // The species table of the Forest Inventory and Analysis gives these four on the green volume.
    const inventory = {
      'american-sycamore': 0.46,
      'eastern-cottonwood': 0.37,
      'bigtooth-aspen': 0.36,
      'quaking-aspen': 0.35,
    };
    for (const [id, basic] of Object.entries(inventory)) {
      const dry = woods.find((wood) => wood.id === id)?.at12Pct.specificGravityRatio?.value;
      expect(Math.abs(at12(basic) - (dry ?? Number.NaN))).toBeLessThanOrEqual(0.01);
    }
  });

  test('shrinkage of the volume is about that of the sides', () => {
    // By geometry, 1 − V = (1 − R)(1 − T)(1 − L), with 0.15 % along the grain (Wood Handbook, ch. 4).
    const off = woods.flatMap(({ id, shrinkage: { radialPct, tangentialPct, volumetricPct } }) => {
      if (!radialPct || !tangentialPct || !volumetricPct) return [];
      const bySides =
        100 * (1 - (1 - radialPct.value / 100) * (1 - tangentialPct.value / 100) * (1 - 0.15 / 100));
      return [{ id, off: Math.abs(volumetricPct.value - bySides) }];
    });
    expect(off).toHaveLength(148);
    expect(off.filter((row) => !(row.off <= 3)).map(({ id }) => id)).toEqual(['laurel-oak', 'willow-oak']);
  });
});
