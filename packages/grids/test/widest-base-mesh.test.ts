import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type KeepOut, layoutHoles, type SlidingBase, widestBase } from '../src/index.ts';
import { GAP_MM } from './grid-arbitraries.ts';
import { mm } from './shapes.ts';
import { slid, stricter } from './sliding-arbitraries.ts';

// Few holes with room to shift, between things that stay and parts that slide: the best offset is seldom in the middle
// of the room or at its ends.

const thing = fc.oneof(
  fc.record({ shape: fc.constant('circle' as const), diameterMm: mm(2, 25) }),
  fc.record({
    shape: fc.constant('rectangle' as const),
    ...{ lengthMm: mm(2, 40), widthMm: mm(2, 40), angleDeg: fc.constantFrom(0, 0, 20, -35, 45) },
  }),
);

const things = (id: string, belongsTo: 'top' | 'base', minLength: number, maxLength: number) =>
  fc
    .array(fc.record({ it: thing, xMm: mm(-20, 90), yMm: mm(-20, 90), clearanceMm: mm(0, 8) }), {
      minLength,
      maxLength,
    })
    .map((list) =>
      list.map(({ it, ...terms }, i): KeepOut => ({ ...it, ...terms, id: `${id} ${i}`, belongsTo })),
    );

const MOST_SLIDE_MM = 40;

const ways = fc.uniqueArray(fc.constantFrom('left', 'right', 'front', 'back'), {
  minLength: 1,
  maxLength: 2,
});

const small: fc.Arbitrary<SlidingBase> = fc
  .record({
    ...{ columns: fc.integer({ min: 1, max: 2 }), rows: fc.integer({ min: 1, max: 2 }) },
    ...{ pitchXMm: mm(30, 80), pitchYMm: mm(30, 80), holeDiameterMm: mm(1, 12) },
    ...{ roomX: mm(0, 40), roomY: mm(0, 40) },
    ...{ staying: things('staying', 'top', 0, 3), widensTowards: ways },
    carried: fc.tuple(things('first', 'base', 1, 2), things('second', 'base', 1, 2)),
    movement: fc.record({ fixedLineYMm: mm(-400, 200), shrinkPct: mm(0, 8), swellPct: mm(0, 8) }),
  })
  .map(({ roomX, roomY, staying, carried, widensTowards, ...grid }) => {
    const kept = carried.slice(0, widensTowards.length);
    return {
      ...{ ...grid, edgeMarginMm: 0, mostDroppedCount: 0, keepOuts: [...staying, ...kept.flat()] },
      panel: {
        lengthMm: (grid.columns - 1) * grid.pitchXMm + grid.holeDiameterMm + roomX,
        widthMm: (grid.rows - 1) * grid.pitchYMm + grid.holeDiameterMm + roomY,
      },
      parts: widensTowards.map((way, i) => ({
        ...{ id: `part ${i}`, keepOutIds: (kept[i] ?? []).map(({ id }) => id), widensTowards: way },
        ...{ leastSlideMm: 0, mostSlideMm: MOST_SLIDE_MM },
      })),
    };
  });

const MESH_MM = 2;
const SLIDE_MM = 1;

/** The widest setting of a mesh that drops no hole: then the parts do not matter to each other. */
function widestOfMesh(base: SlidingBase): number {
  const { panel, columns, rows, pitchXMm, pitchYMm, holeDiameterMm, edgeMarginMm, parts, keepOuts } = base;
  const awayMm = edgeMarginMm + holeDiameterMm / 2;
  const sliding = new Set(parts.flatMap(({ keepOutIds }) => keepOutIds));
  const staying = keepOuts.filter(({ id }) => !sliding.has(id));
  const clear = (keepOut: readonly KeepOut[], firstHole: { xMm: number; yMm: number }) =>
    layoutHoles({ ...base, keepOuts: keepOut, firstHole }).dropped.length === 0;
  let widestMm = Number.NEGATIVE_INFINITY;
  for (let xMm = awayMm; xMm <= panel.lengthMm - awayMm - (columns - 1) * pitchXMm; xMm += MESH_MM) {
    for (let yMm = awayMm; yMm <= panel.widthMm - awayMm - (rows - 1) * pitchYMm; yMm += MESH_MM) {
      if (!clear(staying, { xMm, yMm })) continue;
      const slides = parts.map(({ keepOutIds, leastSlideMm, mostSlideMm }, i) => {
        for (let slideMm = mostSlideMm; slideMm >= leastSlideMm; slideMm -= SLIDE_MM) {
          const moved = slid(
            base,
            parts.map((_, j) => (j === i ? slideMm : 0)),
          );
          const own = moved.filter(({ id }) => keepOutIds.includes(id));
          if (clear(own, { xMm, yMm })) return slideMm;
        }
        return Number.NEGATIVE_INFINITY;
      });
      widestMm = Math.max(
        widestMm,
        slides.reduce((sum, slideMm) => sum + slideMm, 0),
      );
    }
  }
  return widestMm;
}

test('none of a mesh of offsets and slides is wider than the bound', () => {
  let hindered = 0;
  fc.assert(
    fc.property(small, (base) => {
      const { settings, proven } = widestBase(base);
      fc.pre(proven);
      const spreadMm = widestOfMesh(stricter(base, GAP_MM));
      if (spreadMm === Number.NEGATIVE_INFINITY) return;
      if (spreadMm < MOST_SLIDE_MM * base.parts.length) hindered += 1;
      expect(spreadMm).toBeLessThanOrEqual((settings[0]?.spreadBoundMm ?? Number.NaN) + 1e-6);
    }),
    { numRuns: 400 },
  );
  expect(hindered).toBeGreaterThan(5);
});
