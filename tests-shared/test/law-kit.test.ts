import type { AnyRule } from '@scantling/rules';
import { describe, expect, test } from 'vitest';
import {
  type WidthChangeInput,
  widthChange,
  widthChangeRule,
} from '../../packages/movement/src/rules/width-change.ts';
import { exportProblems, ruleChecks } from '../src/index.ts';
import { real } from './mutants/real-rule.ts';
import { wrongAnswers } from './mutants/wrong-answers.ts';
import { withPeer, wrongCards } from './mutants/wrong-cards.ts';
import { choiceRule, listRule, wrongLists } from './mutants/wrong-lists.ts';

/** The checks that a rule turns red; a check that breaks down is red as well. */
const red = (rule: AnyRule): string[] =>
  Object.entries(ruleChecks)
    .filter(([, check]) => {
      try {
        return check(rule).length > 0;
      } catch {
        return true;
      }
    })
    .map(([name]) => name);

const mutants = { ...wrongAnswers, ...wrongCards, ...wrongLists };

describe('the law kit', () => {
  test('passes rules as they are', () => {
    expect(red(widthChangeRule)).toEqual([]);
    expect(red(real)).toEqual([]);
    expect(red(listRule)).toEqual([]);
    expect(red(choiceRule)).toEqual([]);
  });

  test('passes peers that agree as closely as they say', () => {
    expect(red(withPeer(1.01, { relative: 0.02 }))).toEqual([]);
    expect(red(withPeer(1, { relative: 1e-9 }))).toEqual([]);
  });

  test.each(Object.entries(mutants))('catches %s', (_, [rule, expected]) => {
    expect(red(rule)).toEqual(expected);
  });

  test('has no check that no mutant turns red', () => {
    const turnedRed = new Set(Object.values(mutants).flatMap(([, expected]) => expected));
    expect([...turnedRed].sort()).toEqual(Object.keys(ruleChecks).sort());
  });
});

describe('a rule file', () => {
  const exported = { widthChange, widthChangeRule };
  const problems = (exports: object, files = ['width-change'], name = 'movement') =>
    exportProblems(exports, name, files);

  test('is whole when function and card are exported', () => {
    expect(problems(exported)).toEqual([]);
  });

  const twin = { ...widthChangeRule, compute: widthChange };
  const other = (input: WidthChangeInput) => widthChange(input);
  test.each<[string, object, string[]?, string?]>([
    ['has no export', {}],
    ['has no exported card', { widthChange }],
    ['has no exported function', { widthChangeRule }],
    ['exports another function than its card computes', { widthChange: other, widthChangeRule }],
    ['exports its card under another name', { widthChange, changeOfWidthRule: widthChangeRule }],
    ['is one of two that share an id', { ...exported, twinRule: twin }],
    ['was not found', exported, []],
    ['has another name than its card', exported, ['width-change', 'length-change']],
    ['belongs to another package', exported, ['width-change'], 'grids'],
  ])('is a problem when it %s', (_, exports, files, name) => {
    expect(problems(exports, files, name)).not.toEqual([]);
  });
});
