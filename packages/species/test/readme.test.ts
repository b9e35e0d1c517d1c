import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  assignedSpecificGravity,
  inchPoundStrength,
  mapleFlooringStrength,
  metricStrength,
  movementCoefficientProvenance,
  movementCoefficientTable,
  oregonProperties,
  ruptureStrength,
  type SpeciesRow,
  shrinkageTable,
  tabulatedStrength,
} from '../src/index.ts';

const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8');

const counts = (rows: readonly SpeciesRow[]) => {
  const seen = rows.filter(({ confirmed }) => confirmed === 'text').length;
  return `${rows.length} rows, ${seen} seen in text, ${rows.length - seen} from memory`;
};

test('the counts in the README are those of the tables', () => {
  const errata = movementCoefficientProvenance.errata.flatMap(({ rows }) => rows);
  expect(readme).toContain(`- Shrinkage: ${counts(shrinkageTable)}.`);
  expect(readme).toContain(
    `- Movement coefficients: ${counts(movementCoefficientTable)}; ${errata.length} have an erratum.`,
  );
  const strength = [
    inchPoundStrength,
    metricStrength,
    oregonProperties,
    tabulatedStrength,
    mapleFlooringStrength,
    ruptureStrength,
    assignedSpecificGravity,
  ].flatMap(({ rows }): readonly SpeciesRow[] => rows);
  expect(readme).toContain(`- Strength: ${counts(strength)}.`);
});
