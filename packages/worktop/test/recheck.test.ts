import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as examples from '../src/examples.ts';
import { planWorktop, recheckPlan, type WorktopPlan } from '../src/index.ts';
import { PlanFileError, parsePlan } from '../src/schema.ts';
import { exampleContents } from './example-files.ts';
import { placesIn, valueAt, withPlace } from './fields.ts';

type Path = readonly (string | number)[];

/** Sentences say what figures say; names and units stand beside figures; what was asked for is not claimed. */
const prose = new Set([
  ...['says', 'why', 'title', 'caution', 'cautions', 'citation', 'rules', 'name', 'unit', 'mend'],
  ...['reasons', 'asked', 'chosen', 'plan'],
]);

/**
 * What a finished plan says that another figure would be as true of: a template that stands a column further still drills
 * its holes, sag is flat where it is most, and how errors of a template add up is bounded, not repeated. The slot that
 * would help is advice.
 */
const free =
  /^(template\.steps\.#\.(column|row|worstCaseMm)|template\.(farthestOff|tightest)\.rootSumSquareMm|sag\.sag\.atMm|accessories\.#\.fit\.(slot|\w+\.limitingPins).*|cables\.bundleDiameterMm)$/;

const kindOf = (path: Path) => path.map((key) => (typeof key === 'number' ? '#' : key)).join('.');

/** Every place of a finished plan that claims something. */
function claims(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return free.test(kindOf(path)) ? [] : [path];
  return Object.entries(value)
    .filter(([key]) => !prose.has(key))
    .flatMap(([key, item]) => claims(item, [...path, Array.isArray(value) ? Number(key) : key]));
}

const at = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>((of, key) => (of as Record<string | number, unknown>)[key], value);

function put(result: WorktopPlan, path: Path, value: unknown): WorktopPlan {
  const copy = structuredClone(result) as unknown;
  const last = path.at(-1) as string | number;
  (at(copy, path.slice(0, -1)) as Record<string | number, unknown>)[last] = value;
  return copy as WorktopPlan;
}

/** Something else of the same kind, too far off to be rounding. */
function spoilt(value: unknown, by: number): unknown {
  if (typeof value === 'number') return value + by * Math.max(0.1, Math.abs(value) / 100);
  if (typeof value === 'boolean') return !value;
  if (value === null) return 1;
  return `not ${String(value)}`;
}

const finished = Object.entries(examples).map(([name, content]) => ({
  name,
  result: planWorktop(parsePlan(content)),
}));

const spoiledBy = (result: WorktopPlan, path: Path, by: number) =>
  recheckPlan(put(result, path, spoilt(at(result, path), by)));

describe.each(finished)('the finished plan of $name', ({ result }) => {
  test('is borne out by the other computation, read back from a file too', () => {
    expect(recheckPlan(result).findings).toEqual([]);
    expect(recheckPlan(JSON.parse(JSON.stringify(result)) as WorktopPlan).agrees).toBe(true);
  });

  test('has every kind of claim watched, both ways', () => {
    const kinds = new Map(claims(result).map((path) => [kindOf(path), path]));
    const unwatched = [...kinds]
      .filter(([, path]) => [-1, 1].some((by) => spoiledBy(result, path, by).agrees))
      .map(([kind]) => kind);
    expect(kinds.size).toBeGreaterThan(80);
    expect(unwatched).toEqual([]);
  });

  test.each(['holes', 'fixings', 'checks'] as const)('misses none of its %s and has none twice', (list) => {
    const items = result[list] as readonly unknown[];
    expect(recheckPlan({ ...result, [list]: items.slice(1) } as WorktopPlan).agrees).toBe(false);
    expect(recheckPlan({ ...result, [list]: [...items, items[0]] } as WorktopPlan).agrees).toBe(false);
  });
});

test('a finished plan is found out wherever it is broken', () => {
  const places = finished.flatMap(({ result }) => claims(result).map((path) => ({ result, path })));
  const by = fc.oneof(
    fc.double({ min: 1, max: 1e6, noNaN: true }),
    fc.double({ min: -1e6, max: -1, noNaN: true }),
  );
  expect(places.length).toBeGreaterThan(1000);
  fc.assert(
    fc.property(fc.constantFrom(...places), by, ({ result, path }, off) => {
      expect(spoiledBy(result, path, off).agrees, path.join('.')).toBe(false);
    }),
  );
});

test('what stands in a plan is what it is rechecked by', () => {
  const [{ result }] = finished as [(typeof finished)[number]];
  const { plan } = result;
  const thicker = { ...plan, top: { ...plan.top, thicknessMm: plan.top.thicknessMm + 1 } };
  const paths = recheckPlan({ ...result, plan: thicker }).findings.map(({ path }) => path);
  expect(paths).toEqual(expect.arrayContaining(['finish.areaM2', 'glueUp.roughThicknessMm']));
});

/** The plan of a file, or nothing where the file is refused. */
function plannedFrom(content: unknown): WorktopPlan | null {
  try {
    return planWorktop(parsePlan(content));
  } catch (error) {
    if (error instanceof PlanFileError || error instanceof RangeError) return null;
    throw error;
  }
}

test('whatever figure of an example is changed, both computations agree on what follows', () => {
  const places = [...exampleContents().values()].flatMap((content) =>
    placesIn(content).flatMap(({ path, field }) =>
      field.kind === 'figure' ? [{ content, path, limits: field.limits }] : [],
    ),
  );
  const changed = fc.constantFrom(...places).chain(({ content, path, limits }) => {
    const old = valueAt(content, path);
    const near = typeof old === 'number' && !limits.integer;
    const anyFigure = fc.double({ min: limits.min, max: limits.max, noNaN: true });
    const whole = fc.integer({ min: Math.ceil(limits.min), max: Math.floor(limits.max) });
    const nearby = fc.double({ min: 0.5, max: 2, noNaN: true }).map((times) => Number(old) * times);
    const figure = limits.integer ? whole : near ? fc.oneof(nearby, anyFigure) : anyFigure;
    return figure.map((value) => ({ path, value, content: withPlace(content, path, value) }));
  });
  let planned = 0;
  fc.assert(
    fc.property(changed, ({ content }) => {
      const result = plannedFrom(content);
      if (!result) return;
      expect(recheckPlan(result).findings).toEqual([]);
      planned += 1;
    }),
    { numRuns: 300 },
  );
  expect(planned).toBeGreaterThan(50);
});
