import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DrillingInput, drillingProgram } from '../../src/export.ts';
import { boredPanels } from './bored-panel-arb.ts';
import { type Move, type Run, run, type Spot } from './rs274.ts';

const height = numberArb({ min: 0.1, max: 1000 });
const share = numberArb({ min: 0, max: 1 });

const drillings: fc.Arbitrary<DrillingInput> = fc
  .record({
    bored: boredPanels.filter(({ holes }) => holes.length > 0),
    diameterMm: numberArb({ min: 0.1, max: 1000 }),
    retractPlaneMm: height,
    above: share,
    betweenHolesAt: fc.constantFrom('safe height' as const, 'retract plane' as const),
    depthMm: height,
    peckShare: fc.option(numberArb({ min: 0.02, max: 1 }), { nil: undefined }),
    feedMmPerMin: numberArb({ min: 1, max: 20_000 }),
    speedRpm: fc.integer({ min: 1, max: 100_000 }),
    spindleStartMs: fc.option(numberArb({ min: 1, max: 60_000 }), { nil: undefined }),
  })
  .map(({ bored, diameterMm, above, peckShare, spindleStartMs, ...rest }) => ({
    ...rest,
    ...(bored.title === undefined ? {} : { title: bored.title }),
    panel: bored.panel,
    holes: bored.holes.map((hole) => ({ ...hole, diameterMm })),
    safeHeightMm: rest.retractPlaneMm + above * (1000 - rest.retractPlaneMm),
    ...(peckShare === undefined ? {} : { peckMm: Math.max(0.1, peckShare * rest.depthMm) }),
    ...(spindleStartMs === undefined ? {} : { spindleStartMs }),
  }));

/** Wherever the spindle stands before the program, not in the work. */
const starts: fc.Arbitrary<Spot> = fc.tuple(
  numberArb({ min: -500, max: 500 }),
  numberArb({ min: -500, max: 500 }),
  numberArb({ min: 0, max: 1500 }),
);

/** Half of the last digit that the program writes, and a rounding error. */
const HALF_DIGIT = 0.0005 + 1e-9;
const near = (a: number, b: number) => Math.abs(a - b) <= HALF_DIGIT;

const sideways = ({ from, to }: Move) => from[0] !== to[0] || from[1] !== to[1];

/** What of a run could hurt a drill, a clamp or a hand. */
function hazards({ moves, ended, spindleTurns, end }: Run, input: DrillingInput): string[] {
  const { safeHeightMm, retractPlaneMm, betweenHolesAt, feedMmPerMin, speedRpm } = input;
  const travelMm = betweenHolesAt === 'safe height' ? safeHeightMm : retractPlaneMm;
  const found: string[] = [];
  const say = (holds: boolean, what: string) => {
    if (!holds) found.push(what);
  };
  // Where the drill has been in the hole that it stands over.
  let bottom = Number.POSITIVE_INFINITY;
  for (const move of moves) {
    const { kind, from, to, feedRate, spindleSpeed, unit } = move;
    say(unit === 21, 'moves before millimetres are set');
    if (sideways(move)) {
      bottom = Number.POSITIVE_INFINITY;
      say(from[2] === to[2], 'moves sideways and up or down at once');
      say(Math.min(from[2], to[2]) >= travelMm - HALF_DIGIT, 'moves sideways too low');
      say(kind === 'traverse', 'feeds sideways');
    } else if (kind === 'traverse' && to[2] < from[2]) {
      say(to[2] >= Math.min(retractPlaneMm - HALF_DIGIT, bottom), 'rapid down into the work');
    }
    if (kind === 'feed') {
      bottom = Math.min(bottom, to[2]);
      say(spindleSpeed === speedRpm, 'feeds without the spindle at its speed');
      say(near(feedRate, feedMmPerMin), 'feeds at another rate');
    }
  }
  const [first] = moves;
  say(!first || first.to[2] >= safeHeightMm - HALF_DIGIT, 'the first move is not to the safe height');
  say(near(end[2], safeHeightMm), 'does not end at the safe height');
  say(ended && !spindleTurns, 'does not end with the spindle stopped');
  return found;
}

/** The deepest place of each hole, in the order of drilling. */
function drilled({ moves }: Run): Spot[] {
  const deepest: Spot[] = [];
  let here: Spot | null = null;
  for (const move of moves) {
    if (sideways(move)) here = null;
    if (move.kind !== 'feed') continue;
    if (here) deepest.pop();
    here = move.to;
    deepest.push(here);
  }
  return deepest;
}

const base: DrillingInput = {
  title: 'Bindery bench',
  panel: { lengthMm: 600, widthMm: 400 },
  holes: [60, 156, 252].flatMap((xMm) => [56, 152].map((yMm) => ({ xMm, yMm, diameterMm: 20 }))),
  safeHeightMm: 25,
  retractPlaneMm: 3,
  betweenHolesAt: 'safe height',
  depthMm: 42,
  peckMm: 15,
  feedMmPerMin: 300,
  speedRpm: 1500,
};

describe('drillingProgram', () => {
  test('drills every hole, to its depth, and hurts nothing on the way', () => {
    fc.assert(
      fc.property(drillings, starts, (input, start) => {
        const done = run(drillingProgram(input), start);
        expect(hazards(done, input)).toEqual([]);
        const places = drilled(done);
        const open = [...input.holes];
        for (const [x, y, z] of places) {
          const i = open.findIndex(({ xMm, yMm }) => near(x, xMm) && near(y, yMm));
          // Two holes in one place are drilled without a move between them, and count once.
          expect(i).not.toBe(-1);
          expect(near(z, -input.depthMm)).toBe(true);
          open.splice(i, 1);
        }
        for (const { xMm, yMm } of open)
          expect(places.some(([x, y]) => near(x, xMm) && near(y, yMm))).toBe(true);
      }),
    );
  });

  test('pecks as deep as it was told, and comes out after each', () => {
    fc.assert(
      fc.property(drillings, (input) => {
        const { peckMm, retractPlaneMm, depthMm } = input;
        fc.pre(peckMm !== undefined);
        const one = { ...input, holes: input.holes.slice(0, 1) };
        const { moves } = run(drillingProgram(one), [0, 0, 1500]);
        const bottoms = moves.filter(({ kind }) => kind === 'feed').map(({ to }) => to[2]);
        expect(bottoms.length).toBeGreaterThanOrEqual(
          Math.floor((depthMm + retractPlaneMm) / (peckMm + 0.001)),
        );
        let before = retractPlaneMm;
        for (const bottom of bottoms) {
          expect(before - bottom).toBeLessThanOrEqual(peckMm + 2 * HALF_DIGIT);
          before = bottom;
        }
        const outs = moves.filter(({ kind, from, to }) => kind === 'traverse' && from[2] < 0 && to[2] > 0);
        expect(outs).toHaveLength(bottoms.filter((bottom) => bottom < 0).length);
      }),
    );
  });

  test('is ASCII in lines of at most 256 characters, with plain numbers and no −0', () => {
    fc.assert(
      fc.property(drillings, (input) => {
        const program = drillingProgram(input);
        expect(program).toMatch(/^[\x20-\x7e\n]*\n$/);
        for (const line of program.split('\n')) {
          expect(line.length).toBeLessThanOrEqual(256);
          const words = line.replace(/\(.*\)/, '').split(' ');
          for (const word of words.filter(Boolean)) {
            // G, M and the whole speed are integers, every other number has its decimal point.
            expect(word).toMatch(/^(?:[GMS]\d+|[XYZRQFP]-?\d+\.\d{1,3})$/);
            expect(word).not.toMatch(/^[A-Z]-0\.0*$/);
          }
        }
      }),
    );
  });

  test('does not mind in which order the holes come', () => {
    fc.assert(
      fc.property(drillings, (input) => {
        const program = drillingProgram(input);
        expect(drillingProgram(input)).toBe(program);
        expect(drillingProgram({ ...input, holes: [...input.holes].reverse() })).toBe(program);
      }),
    );
  });

  test('goes row by row, there and back: no shorter way with straight rows', () => {
    const even = fc.integer({ min: 1, max: 7 });
    fc.assert(
      fc.property(even, even, numberArb({ min: 25, max: 90 }), share, (columns, rows, pitchXMm, extra) => {
        // The next row is no nearer than the next hole: every step of the way is as short as any step can be.
        const pitchYMm = pitchXMm + extra;
        const holes = Array.from({ length: columns * rows }, (_, i) => ({
          ...{ xMm: (i % columns) * pitchXMm, yMm: Math.floor(i / columns) * pitchYMm, diameterMm: 20 },
        }));
        const program = drillingProgram({ ...base, panel: { lengthMm: 999, widthMm: 999 }, holes });
        const places = drilled(run(program, [0, 0, 100]));
        const wayMm = places
          .slice(1)
          .reduce(
            (sum, [x, y], i) => sum + Math.hypot(x - (places[i]?.[0] ?? 0), y - (places[i]?.[1] ?? 0)),
            0,
          );
        expect(wayMm).toBeCloseTo(rows * (columns - 1) * pitchXMm + (rows - 1) * pitchYMm, 1);
        expect(places[0]?.slice(0, 2)).toEqual([0, 0]);
      }),
    );
  });

  test('holes that miss their row by a little stay in it', () => {
    const holes = [
      { xMm: 60, yMm: 56.4, diameterMm: 20 },
      { xMm: 252, yMm: 56, diameterMm: 20 },
      { xMm: 156, yMm: 56.2, diameterMm: 20 },
      { xMm: 252, yMm: 152, diameterMm: 20 },
      { xMm: 60, yMm: 152.3, diameterMm: 20 },
    ];
    const places = drilled(run(drillingProgram({ ...base, holes }), [0, 0, 100]));
    expect(places.map(([x, y]) => [x, y])).toEqual([
      [60, 56.4],
      [156, 56.2],
      [252, 56],
      [252, 152],
      [60, 152.3],
    ]);
  });

  test('waits for the spindle only where told to', () => {
    const asked = run(drillingProgram({ ...base, spindleStartMs: 2500 }), [0, 0, 100]);
    expect(asked.dwells).toEqual([{ at: [0, 0, 25], seconds: 2.5 }]);
    expect(run(drillingProgram(base), [0, 0, 100]).dwells).toEqual([]);
  });

  test('opens with what it is for and with its cautions, in comments', () => {
    const comments = drillingProgram({ ...base, title: 'Söhne (2)\nG0 Z-9' }).split('\nG21')[0] ?? '';
    for (const line of comments.split('\n')) expect(line).toMatch(/^\([^()]+\)$/);
    expect(comments).toContain('Sohne [2]?G0 Z-9');
    for (const said of [
      '6 holes of 20 mm',
      'manual',
      'zero',
      'backing board',
      'in the air',
      'hand on the stop',
    ])
      expect(comments).toContain(said);
  });

  // What is looked for is found: one fault at a time put into a good program.
  test.each<[string, (program: string) => string, string]>([
    ['moves at the retract plane', (p) => p.replace('G98', 'G99'), 'moves sideways too low'],
    ['a spindle that stands', (p) => p.replace(' M3', ''), 'feeds without the spindle at its speed'],
    ['another feed', (p) => p.replace('F300.0', 'F3000.0'), 'feeds at another rate'],
    ['inches', (p) => p.replace('G21', 'G20'), 'moves before millimetres are set'],
    ['a retract plane in the work', (p) => p.replace('R3.0', 'R-3.0'), 'rapid down into the work'],
    ['no way up first', (p) => p.replace('G0 Z25.0\n', ''), 'moves sideways too low'],
    [
      'no way up at the end',
      (p) => p.replace('G0 Z25.0\nM5', 'G0 Z9.0\nM5'),
      'does not end at the safe height',
    ],
    ['no end', (p) => p.replace('M5\nM2\n', ''), 'does not end with the spindle stopped'],
    [
      'a slanting way',
      (p) => p.replace('G0 Z25.0\nM5', 'G0 X9.0 Z30.0\nG0 Z25.0\nM5'),
      'moves sideways and up or down at once',
    ],
  ])('the hazards of %s are seen', (_, fault, found) => {
    const program = drillingProgram(base);
    expect(hazards(run(program, [0, 0, 2]), base)).toEqual([]);
    expect(fault(program)).not.toBe(program);
    expect(hazards(run(fault(program), [0, 0, 2]), base)).toContain(found);
  });
});
