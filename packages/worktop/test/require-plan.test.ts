import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop } from '../src/index.ts';
import { bench } from './bindery-bench.ts';

describe('a plan made by a program', () => {
  const spoilt = (path: string, value: unknown): Plan => {
    const plan = structuredClone(bench()) as unknown as Record<string, unknown>;
    const keys = path.split('.');
    const last = keys.pop() as string;
    const parent = keys.reduce((at, key) => at[key] as Record<string, unknown>, plan);
    parent[last] = value;
    return plan as unknown as Plan;
  };

  test.each<[string, unknown, string]>([
    ['version', 1, 'version to be 2, got 1'],
    ['version', undefined, 'version to be 2, got undefined'],
    ['name', '', 'name to be text of 1 to 60 characters on one line, got ""'],
    ['name', 'two\nlines', 'name to be text of 1 to 60 characters on one line, got "two\\nlines"'],
    ['top.thicknessMm', -5, 'top.thicknessMm between 5 and 300, got -5'],
    ['top.thicknessMm', Number.NaN, 'top.thicknessMm between 5 and 300, got NaN'],
    ['top.cut', 'rift', 'top.cut to be one of flatsawn, quartersawn, got "rift"'],
    ['holes.blocked', 'x', 'holes.blocked to be one of fail, leave out, got "x"'],
    ['base.fixings.1.slotMm', Number.NaN, 'base.fixings[1].slotMm between 1 and 200, got NaN'],
    ['base.members', 'none', 'base.members to be a list'],
    ['finish.product.onHandMl', Number.NaN, 'finish.product.onHandMl between 0 and 100000, got NaN'],
    ['holes.first', undefined, 'holes.first to be an object'],
    ['holes.pitchXMm', 12, 'holes.pitchXMm to be at least the diameter of a hole, 15.875 mm, got 12'],
  ])('%s = %j is refused by its path', (path, value, message) => {
    expect(() => planWorktop(spoilt(path, value))).toThrow(`planWorktop requires ${message}`);
  });

  test.each([[{}], [null], [undefined]])('%j is refused', (plan) => {
    expect(() => planWorktop(plan as unknown as Plan)).toThrow(RangeError);
  });
});
