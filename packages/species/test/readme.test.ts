import { readFileSync } from 'node:fs';
import type { Citation } from '@scantling/rules';
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
  type WoodFigure,
  woods,
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

test('the counts of woods, figures and botanical names are those of the woods', () => {
  const marked = (all: readonly { readonly citation: Citation }[]) => {
    const seen = all.filter(({ citation }) => citation.confirmed === 'text').length;
    return `${seen} seen in text, ${all.length - seen} from memory`;
  };
  const figures = woods
    .flatMap(({ shrinkage, movement, green, at12Pct }) => [shrinkage, movement, green, at12Pct])
    .flatMap((properties) => Object.values<WoodFigure | null>({ ...properties }))
    .filter((figure) => figure !== null);
  expect(readme).toContain(`- Woods: ${woods.length}, with ${figures.length} figures, ${marked(figures)}.`);
  const named = woods.flatMap(({ botanicalName }) => (botanicalName ? [botanicalName] : []));
  expect(readme).toContain(`- Botanical names: ${named.length}, ${marked(named)}.`);
});
