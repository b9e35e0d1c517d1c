import { describe, expect, test } from 'vitest';
import { PlanFileError, parsePlan } from '../src/schema.ts';
import { bench, benchContent, changed } from './bindery-bench.ts';

/** The messages that a file is refused with. */
function refusal(content: unknown): readonly string[] {
  try {
    parsePlan(content);
  } catch (error) {
    if (error instanceof PlanFileError) return error.problems;
    throw error;
  }
  return [];
}

test('turns every length into millimetres, whether text or number', () => {
  const { top, holes } = bench();
  // 58 1/4 in = 58.25 × 25.4; 1 3/4 in = 1.75 × 25.4; 5/8 in = 0.625 × 25.4
  expect(top.lengthMm).toBeCloseTo(1479.55, 10);
  expect(top.widthMm).toBe(640);
  expect(top.thicknessMm).toBeCloseTo(44.45, 10);
  expect(holes.diameterMm).toBeCloseTo(15.875, 10);
});

describe('a wrong file is refused with its path, what it says and what is allowed', () => {
  test.each<[string, unknown, RegExp]>([
    ['top.width', undefined, /^top\.width: expected a length between 1 and 10000 mm.*got nothing$/],
    ['top.width', '27 kg', /^top\.width: expected a length.*got "27 kg"$/],
    ['top.width', '27', /^top\.width: expected a length.*got "27"$/],
    ['top.width', -3, /^top\.width: expected a length between 1 and 10000 mm.*got -3$/],
    ['top.width', Number.POSITIVE_INFINITY, /^top\.width: expected a length.*got Infinity$/],
    ['top.width', true, /^top\.width: expected a length.*got true$/],
    ['top.cut', 'rift', /^top\.cut: expected one of "flatsawn", "quartersawn", got "rift"$/],
    ['top.moisturePct', 300, /^top\.moisturePct: expected a number between 0 and 30, got 300$/],
    ['holes.pitchX', 0, /^holes\.pitchX: expected a length between 1 and 2000 mm.*got 0$/],
    ['holes.pitchX', 10, /^holes\.pitchX: expected at least the diameter of a hole, 15\.875 mm, got 10$/],
    ['holes.columns', 2.5, /^holes\.columns: expected a whole number between 1 and 500, got 2\.5$/],
    [
      'base.members.2.width',
      '2 in or so',
      /^base\.members\[2\]\.width: expected a length.*got "2 in or so"$/,
    ],
    ['base.members', 'none', /^base\.members: expected a list.*got "none"$/],
    ['base.wheels', 4, /^base: unknown key "wheels"; known here: members, fixedLine, shankDiameter/],
    ['base.memebers', 4, /^base: unknown key "memebers"; did you mean "members"\?$/],
    ['base.Members', 4, /^base: unknown key "Members"; did you mean "members"\?$/],
    ['glue_up', {}, /^the plan: unknown key "glue_up"; did you mean "glueUp"\?$/],
    ['top.widthMm', 640, /^top: unknown key "widthMm"; did you mean "width"\?$/],
    ['holes.first.xMm', 68, /^holes\.first: unknown key "xMm"; did you mean "x"\?$/],
    ['holes.first.q', 68, /^holes\.first: unknown key "q"; known here: x, y$/],
    ['version', 3, /^version: expected at most 2, the newest version of plan files .*, got 3$/],
    [
      'finish.thinner.parts',
      '1',
      /^finish\.thinner\.parts: expected a number between 0\.01 and 1000, got "1"$/,
    ],
    ['name', '', /^name: expected text of 1 to 60 characters on one line, not blanks alone, got ""$/],
    [
      'name',
      'two\nlines',
      /^name: expected text of 1 to 60 characters on one line, not blanks alone, got "two\\nlines"$/,
    ],
    [
      'holes.first.x',
      '6 ft',
      /^holes\.first\.x: expected a place on the top, between 0 and 1479\.55 mm, got "6 ft"$/,
    ],
    [
      'finish.thinner.parts',
      500,
      /^finish\.thinner\.parts: expected at most ten times the parts of the product, 10, got 500$/,
    ],
    [
      'base.members.0.name',
      'left edge',
      /^base\.members\[0\]\.name: expected a name of its own, got "left edge"$/,
    ],
    ['base.members.1.name', ' ', /^base\.members\[1\]\.name: expected text .* not blanks alone, got " "$/],
    ['base.members.0.name', 'screw left back', /^base\.members\[0\]\.name: expected a name of its own/],
    ['base.members', [], /^base\.members: expected a list of 1 to 100, got a list of 0$/],
    ['top', [], /^top: expected an object with length, width, thickness, species.*got a list of 0$/],
  ])('%s = %j', (path, value, message) => {
    expect(refusal(changed(path, value))).toEqual([expect.stringMatching(message)]);
  });

  test.each([[null], [[]], ['plan'], [7]])('the whole file is %j', (content) => {
    expect(refusal(content)).toEqual([expect.stringMatching(/^the plan: expected an object with version/)]);
  });

  test('more holes than anybody drills are a slip', () => {
    const content = changed('holes.columns', 500);
    (content.holes as { rows: number }).rows = 41;
    expect(refusal(content)).toEqual([
      expect.stringMatching(/^holes\.columns: expected .*20000 holes.*41 rows.*20500, got 500$/),
    ]);
  });

  test('a key that is spelled wrong is named beside the place that it leaves empty', () => {
    const { base, ...content } = benchContent();
    const { members, ...rest } = base as { members: unknown };
    expect(refusal({ ...content, base: { ...rest, memebers: members } })).toEqual([
      'base.members: expected a list of 1 to 100, got nothing',
      'base: unknown key "memebers"; did you mean "members"?',
    ]);
  });

  test('each unknown key has a line, and its line breaks are shown as such', () => {
    const top = { ...(benchContent().top as object), lenght: 1, 'two\nlines': 2 };
    expect(refusal({ ...benchContent(), top })).toEqual([
      'top: unknown key "lenght"; did you mean "length"?',
      'top: unknown key "two\\nlines"; known here: length, width, thickness, species, cut, moisturePct, inlays',
    ]);
  });

  test('what may be left open says so, and what is wrong within is told by its own path', () => {
    expect(refusal(changed('base.fixedLine', 'chose'))).toEqual([
      expect.stringMatching(
        /^base\.fixedLine: expected a length between -10000 and 10000 mm.*, or "choose".*, got "chose"$/,
      ),
    ]);
    expect(refusal(changed('holes.first', 'chose'))).toEqual([
      'holes.first: expected an object with x, y, or "choose", got "chose"',
    ]);
    expect(refusal(changed('holes.first', { x: 'choose', y: 160 }))).toEqual([
      expect.stringMatching(/^holes\.first\.x: expected a length .*, got "choose"$/),
    ]);
  });

  test('two figures that contradict each other are told by their names in a file', () => {
    const lift = {
      leastHeight: '40 in',
      mostHeight: 1000,
      lowestWork: 900,
      highestWork: 1000,
      capacityKg: 120,
      frameMassKg: 20,
      leastMarginPct: 10,
    };
    expect(refusal(changed('base.lift', lift))).toEqual([
      'base.lift.mostHeight: expected at least base.lift.leastHeight, 1016, got 1000',
    ]);
  });

  test('every wrong place is named, not only the first', () => {
    const content = changed('top.width', 'wide');
    content.name = 5;
    expect(refusal(content)).toHaveLength(2);
  });
});

test('prototype keys are unknown keys', () => {
  const content: unknown = JSON.parse(
    JSON.stringify(benchContent()).replace('{', '{"__proto__":{"version":1},'),
  );
  expect(refusal(content)).toEqual([expect.stringMatching(/^the plan: unknown key "__proto__"/)]);
});

test('two things of one name are refused: a report could not tell them apart', () => {
  expect(refusal(changed('base.members.1.name', 'left leg frame'))).toEqual([
    expect.stringMatching(/^base\.members\[1\]\.name: expected a name of its own, got "left leg frame"$/),
  ]);
});
