import { expect, test } from 'vitest';
import {
  assignedSpecificGravity,
  inchPoundStrength,
  mapleFlooringStrength,
  metricStrength,
  oregonProperties,
  ruptureStrength,
  shrinkageTable,
  tabulatedStrength,
} from '../src/index.ts';

// NIST SP 811, Appendix B.8: 1 psi = 6.894 757 kPa, 1 lbf = 4.448 222 N, as printed.
const KPA_PER_PSI = 6.894757;

const key = ({ species, moisture }: { readonly species: string; readonly moisture: string }) =>
  `${species}; ${moisture}`;

test('the tables hold so many rows, and so many of each mark', () => {
  const tables = {
    inchPoundStrength,
    metricStrength,
    oregonProperties,
    tabulatedStrength,
    mapleFlooringStrength,
    ruptureStrength,
    assignedSpecificGravity,
  };
  const counted = Object.fromEntries(
    Object.entries(tables).map(([name, { rows }]) => {
      const count = (tier: string) => rows.filter((row) => row.tier === tier).length;
      return [name, [count('publication'), count('reprint'), count('memory')]];
    }),
  );
  // Publication, reprint, memory: as gathered, 195 rows, of which one gives sugar maple green and at 12 % together.
  expect(counted).toEqual({
    inchPoundStrength: [24, 0, 33],
    metricStrength: [24, 6, 0],
    oregonProperties: [8, 0, 0],
    tabulatedStrength: [0, 32, 0],
    mapleFlooringStrength: [0, 2, 0],
    ruptureStrength: [0, 40, 0],
    assignedSpecificGravity: [0, 27, 0],
  });
});

test('the metric table is the inch-pound one, rounded', () => {
  // Modulus of elasticity to 100 MPa, modulus of rupture to 1000 kPa; the inch-pound figures are rounded themselves,
  // to 0.01 million psi and 100 psi.
  const inPsi = new Map(inchPoundStrength.rows.map((row) => [key(row), row]));
  const pairs = metricStrength.rows.flatMap((metric) => {
    const psi = inPsi.get(key(metric));
    return psi ? [{ metric, psi }] : [];
  });
  expect(pairs).toHaveLength(25);
  for (const { metric, psi } of pairs) {
    const modulusMPa = psi.modulusOfElasticityMillionPsi * 1000 * KPA_PER_PSI;
    expect(Math.abs(metric.modulusOfElasticityMPa - modulusMPa)).toBeLessThanOrEqual(50 + 5 * KPA_PER_PSI);
    const ruptureKPa = psi.modulusOfRupturePsi * KPA_PER_PSI;
    expect(Math.abs(metric.modulusOfRuptureKPa - ruptureKPa)).toBeLessThanOrEqual(500 + 50 * KPA_PER_PSI);
  }
});

test('the pages that cite the handbook say at 12 % what its table says, but for one figure', () => {
  const handbook = new Map(inchPoundStrength.rows.map((row) => [key(row), row]));
  const others = [...tabulatedStrength.rows, ...mapleFlooringStrength.rows];
  const pairs = others.flatMap((row) => {
    const printed = handbook.get(key(row));
    return printed ? [{ row, printed }] : [];
  });
  expect(pairs).toHaveLength(12);
  const differing = pairs.filter(
    ({ row, printed }) =>
      row.specificGravityRatio !== printed.specificGravityRatio ||
      row.modulusOfElasticityMillionPsi !== printed.modulusOfElasticityMillionPsi,
  );
  expect(differing.map(({ row }) => key(row))).toEqual(['Maple, sugar; 12%']);
});

test('wood that dries gets denser, stiffer, stronger and harder', () => {
  // Wood Handbook, ch. 5: below fibre saturation most properties rise as wood dries.
  const tables = [inchPoundStrength.rows, metricStrength.rows, mapleFlooringStrength.rows];
  const pairs = tables.flatMap((rows) =>
    rows
      .filter(({ moisture }) => moisture === 'green')
      .map((green) => ({
        green,
        dry: rows.find(({ species, moisture }) => species === green.species && moisture === '12%'),
      })),
  );
  expect(pairs).toHaveLength(28);
  const falling = pairs.flatMap(({ green, dry }) =>
    Object.entries(green).flatMap(([property, value]) => {
      const then: unknown = Object.entries(dry ?? {}).find(([name]) => name === property)?.[1];
      return typeof value === 'number' && !(typeof then === 'number' && then >= value)
        ? [`${green.species}: ${property}`]
        : [];
    }),
  );
  // Both tables print less work to maximum load for dry redwood.
  expect(falling).toEqual([
    'Redwood, old-growth: workToMaximumLoadPsi',
    'Redwood, young-growth: workToMaximumLoadPsi',
    'Redwood, old-growth: workToMaximumLoadKPa',
    'Redwood, young-growth: workToMaximumLoadKPa',
  ]);
});

test('the Oregon table repeats tangential shrinkage of the handbook, but for two firs', () => {
  const words = (name: string) =>
    name
      .toLowerCase()
      .match(/[a-z]+/g)
      ?.sort()
      .join(' ');
  const pairs = oregonProperties.rows.flatMap((row) => {
    const handbook = shrinkageTable.find(({ species }) => words(species) === words(row.species));
    return handbook ? [{ row, handbook }] : [];
  });
  expect(pairs).toHaveLength(7);
  const differing = pairs.filter(({ row, handbook }) => row.tangentialPct !== handbook.tangentialPct);
  expect(differing.map(({ row }) => key(row))).toEqual(
    oregonProperties.provenance.errata.flatMap(({ rows }) => rows),
  );
});
