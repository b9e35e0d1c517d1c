import jscad from '@jscad/modeling';
import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BoredHoles, type FinishAreasInput, finishAreas, type Rabbet } from '../src/index.ts';

// Outside check: the same solid built with a general-purpose library for solids (@jscad/modeling) out of a box less
// cylinders and boxes, its polygons then measured one by one. Cylinders are prisms of this many sides there.
const SIDES = 96;
/** A regular prism in a circle falls short by π²/6 of the square of 2/SIDES in its wall, four times that in its mouth. */
const SHORT = 4 * (Math.PI ** 2 / 6) * (1 / SIDES) ** 2;

const { primitives, booleans, geometries } = jscad;
type Vector = [number, number, number];

function box(ranges: readonly (readonly [number, number])[]) {
  return primitives.cuboid({
    size: ranges.map(([from, to]) => to - from) as Vector,
    center: ranges.map(([from, to]) => (from + to) / 2) as Vector,
  });
}

/** z runs down from the top. */
function cut({ edge, face, widthMm: w, depthMm: d, fromMm, toMm }: Rabbet, panel: FinishAreasInput) {
  const { lengthMm: l, widthMm: b, thicknessMm: t } = panel;
  const z: [number, number] = face === 'top' ? [-1, d] : [t - d, t + 1];
  const run = (full: number): [number, number] => [
    fromMm === 0 ? -1 : fromMm,
    toMm === full ? full + 1 : toMm,
  ];
  if (edge === 'front') return box([run(l), [-1, w], z]);
  if (edge === 'back') return box([run(l), [b - w, b + 1], z]);
  if (edge === 'left') return box([[-1, w], run(b), z]);
  return box([[l - w, l + 1], run(b), z]);
}

function bore(hole: BoredHoles, at: number, { lengthMm, widthMm, thicknessMm: t }: FinishAreasInput) {
  const center = [lengthMm * (0.3 + 0.13 * at), widthMm / 2];
  const [from, to] =
    hole.bored === 'through'
      ? [-1, t + 1]
      : hole.bored === 'from the top'
        ? [-1, hole.depthMm]
        : [t - hole.depthMm, t + 1];
  const height = to - from;
  return primitives.cylinder({
    radius: hole.diameterMm / 2,
    height,
    segments: SIDES,
    center: [...center, (from + to) / 2] as Vector,
  });
}

/** One hole of each size, in a row in the middle, clear of each other and of the rabbets. */
function build(panel: FinishAreasInput) {
  const { lengthMm, widthMm, thicknessMm } = panel;
  const tools = [
    ...panel.holes.map((hole, i) => bore(hole, i, panel)),
    ...panel.rabbets.map((rabbet) => cut(rabbet, panel)),
  ];
  const whole = box([
    [0, lengthMm],
    [0, widthMm],
    [0, thicknessMm],
  ]);
  return tools.reduce((solid, tool) => booleans.subtract(solid, tool), whole);
}

/** Area of the polygons that lie in a plane square to an axis, m². */
function inPlane(polygons: readonly { vertices: Vector[] }[], axis: 0 | 1 | 2, at: number): number {
  return polygons
    .filter(({ vertices }) => vertices.every((corner) => Math.abs(corner[axis] - at) < 1e-6))
    .reduce((sum, polygon) => sum + geometries.poly3.measureArea(polygon as never) / 1e6, 0);
}

const panels: fc.Arbitrary<FinishAreasInput> = fc
  .record({
    lengthMm: fc.integer({ min: 400, max: 900 }),
    widthMm: fc.integer({ min: 300, max: 600 }),
    thicknessMm: fc.integer({ min: 30, max: 90 }),
  })
  .chain((panel) => {
    const hole: fc.Arbitrary<BoredHoles> = fc
      .record({
        count: fc.constant(1),
        diameterMm: fc.integer({ min: 8, max: 30 }),
        bored: fc.constantFrom('through', 'from the top', 'from the underside'),
        depthMm: fc.integer({ min: 5, max: 25 }),
      })
      .map((one) => one as BoredHoles);
    const rabbet = (edge: Rabbet['edge'], along: number): fc.Arbitrary<Rabbet> =>
      fc.record({
        edge: fc.constant(edge),
        face: fc.constantFrom('top', 'underside'),
        widthMm: fc.integer({ min: 5, max: 80 }),
        depthMm: fc.integer({ min: 3, max: 25 }),
        fromMm: fc.constantFrom(0, 90),
        toMm: fc.constantFrom(along - 95, along),
      });
    const rabbets = fc.oneof(
      fc.tuple(rabbet('front', panel.lengthMm), rabbet('back', panel.lengthMm)),
      fc.tuple(rabbet('left', panel.widthMm), rabbet('right', panel.widthMm)),
      fc.tuple(rabbet('front', panel.lengthMm)),
      fc.constant([]),
    );
    return fc.record({
      lengthMm: fc.constant(panel.lengthMm),
      widthMm: fc.constant(panel.widthMm),
      thicknessMm: fc.constant(panel.thicknessMm),
      holes: fc.array(hole, { maxLength: 4 }),
      rabbets,
    });
  });

describe('finishAreas', () => {
  test('is the area of the solid, face by face, as a library for solids measures it', () => {
    let bored = 0;
    fc.assert(
      fc.property(panels, (panel) => {
        const areas = finishAreas(panel);
        const polygons = geometries.geom3.toPolygons(build(panel)) as { vertices: Vector[] }[];
        const total = polygons.reduce(
          (sum, polygon) => sum + geometries.poly3.measureArea(polygon as never) / 1e6,
          0,
        );
        const mouthsM2 = panel.holes.reduce((sum, { diameterMm }) => sum + (diameterMm / 1000) ** 2, 0);
        const near = (ours: number, theirs: number, round: number) =>
          expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(SHORT * round + 1e-9 * theirs);
        near(areas.totalM2, total, 2 * mouthsM2 + areas.holeWallsM2);
        near(areas.topM2, inPlane(polygons, 2, 0), mouthsM2);
        near(areas.undersideM2, inPlane(polygons, 2, panel.thicknessMm), mouthsM2);
        near(areas.leftM2, inPlane(polygons, 0, 0), 0);
        near(areas.rightM2, inPlane(polygons, 0, panel.lengthMm), 0);
        near(areas.frontM2, inPlane(polygons, 1, 0), 0);
        near(areas.backM2, inPlane(polygons, 1, panel.widthMm), 0);
        if (panel.holes.length > 0) bored += 1;
      }),
      {
        numRuns: 30,
        // Once refused by this very check: rabbets on both ends of the top that stop short of its back, and a hole.
        examples: [
          [
            {
              lengthMm: 408,
              widthMm: 307,
              thicknessMm: 34,
              holes: [{ count: 1, diameterMm: 8, bored: 'through' }],
              rabbets: [
                { edge: 'left', face: 'top', widthMm: 77, depthMm: 3, fromMm: 0, toMm: 212 },
                { edge: 'right', face: 'top', widthMm: 5, depthMm: 3, fromMm: 0, toMm: 212 },
              ],
            },
          ],
        ],
      },
    );
    expect(bored).toBeGreaterThan(5);
  });

  // The bindery bench: a maple top of 1500 × 600 × 45 mm, 96 peg holes of 20 mm, a strip 25 × 4 mm let in along the
  // front edge. Worked by hand: 1 500 × 600 = 900 000 mm²; a mouth is 100 π = 314.159 mm², 96 of them 30 159.3 mm²; the
  // rabbet takes 25 × 1500 = 37 500 of the top, 4 × 1500 = 6000 of the front and 100 of each end.
  test('of the bindery bench, worked by hand', () => {
    const areas = finishAreas({
      lengthMm: 1500,
      widthMm: 600,
      thicknessMm: 45,
      holes: [{ count: 96, diameterMm: 20, bored: 'through' }],
      rabbets: [{ edge: 'front', face: 'top', widthMm: 25, depthMm: 4, fromMm: 0, toMm: 1500 }],
    });
    expect(areas.topM2).toBeCloseTo(0.8323407, 7);
    expect(areas.undersideM2).toBeCloseTo(0.8698407, 7);
    expect(areas.frontM2).toBeCloseTo(0.0615, 12);
    expect(areas.backM2).toBeCloseTo(0.0675, 12);
    expect(areas.leftM2).toBeCloseTo(0.0269, 12);
    expect(areas.rabbetsM2).toBeCloseTo(0.0435, 12);
    expect(areas.holeWallsM2).toBeCloseTo(0.2714336, 7);
    expect(areas.holeFloorsM2).toBe(0);
    expect(areas.totalM2).toBeCloseTo(
      0.8323407 + 0.8698407 + 0.0615 + 0.0675 + 2 * 0.0269 + 0.0435 + 0.2714336,
      6,
    );
  });

  test('a hole through adds wall and takes two mouths; a floor makes up for the mouth over it', () => {
    const sizes = fc.record({ count: fc.nat(40), diameterMm: numberArb({ min: 1, max: 20 }) });
    const plain = { lengthMm: 800, widthMm: 400, thicknessMm: 40, holes: [], rabbets: [] };
    fc.assert(
      fc.property(sizes, numberArb({ min: 1, max: 39 }), (size, depthMm) => {
        const bare = finishAreas(plain);
        const through = finishAreas({ ...plain, holes: [{ ...size, bored: 'through' }] });
        const blind = finishAreas({ ...plain, holes: [{ ...size, bored: 'from the top', depthMm }] });
        expect(bare.topM2 - through.topM2).toBeCloseTo(bare.undersideM2 - through.undersideM2, 12);
        expect(blind.totalM2 - blind.holeWallsM2).toBeCloseTo(bare.totalM2, 12);
        expect(blind.undersideM2).toBe(bare.undersideM2);
        expect(through.holeWallsM2 * depthMm).toBeCloseTo(blind.holeWallsM2 * 40, 9);
        const flipped = finishAreas({ ...plain, holes: [{ ...size, bored: 'from the underside', depthMm }] });
        expect(flipped).toEqual({ ...blind, topM2: blind.undersideM2, undersideM2: blind.topM2 });
      }),
    );
  });

  test('grows with the square of the size', () => {
    fc.assert(
      fc.property(panels, numberArb({ min: 0.5, max: 3 }), (panel, times) => {
        const grown = JSON.parse(JSON.stringify(panel), (key, value) =>
          key.endsWith('Mm') ? value * times : value,
        ) as FinishAreasInput;
        // Rounding may leave the end of a rabbet short of the end of the panel.
        const along = (rabbet: Rabbet) => (['front', 'back'].includes(rabbet.edge) ? 'lengthMm' : 'widthMm');
        const rabbets = grown.rabbets.map((rabbet, i) =>
          panel.rabbets[i]?.toMm === panel[along(rabbet)]
            ? { ...rabbet, toMm: grown[along(rabbet)] }
            : rabbet,
        );
        const ours = finishAreas({ ...grown, rabbets });
        for (const [name, area] of Object.entries(finishAreas(panel))) {
          expect(ours[name as keyof typeof ours]).toBeCloseTo(area * times ** 2, 9);
        }
      }),
    );
  });
});
