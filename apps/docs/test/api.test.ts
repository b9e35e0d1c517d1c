import { readFileSync } from 'node:fs';
import * as fastening from '@scantling/fastening';
import * as finishing from '@scantling/finishing';
import * as grids from '@scantling/grids';
import * as movement from '@scantling/movement';
import * as rulesPackage from '@scantling/rules';
import * as species from '@scantling/species';
import * as stock from '@scantling/stock';
import * as units from '@scantling/units';
import * as worktop from '@scantling/worktop';
import { expect, test } from 'vitest';
import { ruleHref, rules } from '../src/registry.ts';

const packages = {
  fastening,
  finishing,
  grids,
  movement,
  rules: rulesPackage,
  species,
  stock,
  units,
  worktop,
};

const pageOf = (name: string) => {
  const file = new URL(`../dist/api/${name}/index.html`, import.meta.url);
  return readFileSync(file, 'utf8');
};

test.each(Object.entries(packages))('the page of %s names every function it exports', (name, exported) => {
  const page = pageOf(name);
  const functions = Object.entries(exported).filter(
    ([key, value]) => typeof value === 'function' && /^[a-z]/.test(key),
  );
  expect(functions.length).toBeGreaterThan(0);
  expect(functions.map(([key]) => key).filter((key) => !page.includes(`>${key}()</h3>`))).toEqual([]);
});

test('the function of every rule links to the page of its rule', () => {
  expect(rules.length).toBeGreaterThan(0);
  const linked = Object.keys(packages).map(pageOf).join('');
  expect(rules.map(ruleHref).filter((href) => !linked.includes(`href="${href}">Formula`))).toEqual([]);
});

test('a function is told as its docstring has it, and of no machine', () => {
  const page = pageOf('movement');
  const told = page.slice(page.indexOf('>widthChange()</h3>')).replace(/<[^>]*>/g, '');
  expect(told).toContain('widthChange(input: WidthChangeInput): WidthChange');
  expect(told).toContain('Returns The change in mm: positive where the wood swells');
  expect(told).toContain('Throws RangeError where an input is outside its limits.');
  expect(told).toContain('Source Wood Handbook (FPL-GTR-190), Eq. 13-2');
  const all = Object.keys(packages).map(pageOf).join('');
  expect(all).not.toMatch(/Defined in|file:\/\/|node_modules/);
});
