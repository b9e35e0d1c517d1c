import type { Comparison, Growth } from '../../../scripts/bench.ts';
import { bestOffset, type GridTerms, type RectangleShape } from '../src/index.ts';

const PITCH_MM = 96;
const MESH_MM = 0.1;

/** The same numbers from 0 to 1 at every run (xorshift, Marsaglia 2003). */
function numbers(): () => number {
  let state = 2463534242;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

type Rail = RectangleShape & GridTerms['keepOuts'][number];

/** A panel that a grid fills, over rails here and there. */
function bench(columns: number, rows: number, rails: number) {
  const next = numbers();
  const panel = { lengthMm: columns * PITCH_MM, widthMm: rows * PITCH_MM };
  const keepOuts = Array.from(
    { length: rails },
    (_, i): Rail => ({
      ...{ shape: 'rectangle', id: `rail ${i}`, clearanceMm: 6, belongsTo: 'base' },
      ...{ xMm: next() * panel.lengthMm, yMm: next() * panel.widthMm },
      ...{ lengthMm: 20 + next() * 100, widthMm: 10 + next() * 30 },
    }),
  );
  return {
    panel,
    ...{ pitchXMm: PITCH_MM, pitchYMm: PITCH_MM, holeDiameterMm: 20, edgeMarginMm: 30, keepOuts },
  };
}

/** The same by trying: every offset of a mesh, every hole, every rail. */
function everyOffset({ panel, keepOuts, holeDiameterMm, edgeMarginMm }: ReturnType<typeof bench>) {
  const awayMm = edgeMarginMm + holeDiameterMm / 2;
  const rails = keepOuts.map(({ xMm, yMm, lengthMm, widthMm, clearanceMm }) => ({
    ...{
      x1: xMm,
      x2: xMm + lengthMm,
      y1: yMm,
      y2: yMm + widthMm,
      neededMm: clearanceMm + holeDiameterMm / 2,
    },
  }));
  let best = { kept: 0, spareMm: 0 };
  const steps = Math.round(PITCH_MM / MESH_MM);
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < steps; j++) {
      let kept = 0;
      let spareMm = Number.POSITIVE_INFINITY;
      for (let x = i * MESH_MM; x <= panel.lengthMm - awayMm; x += PITCH_MM) {
        if (x < awayMm) continue;
        for (let y = j * MESH_MM; y <= panel.widthMm - awayMm; y += PITCH_MM) {
          if (y < awayMm) continue;
          let ofHole = Math.min(x, y, panel.lengthMm - x, panel.widthMm - y) - awayMm;
          for (const { x1, x2, y1, y2, neededMm } of rails) {
            const beyondX = Math.max(x1 - x, x - x2);
            const beyondY = Math.max(y1 - y, y - y2);
            if (Math.max(beyondX, beyondY) - neededMm >= ofHole) continue;
            const outside = beyondX > 0 && beyondY > 0;
            const away = outside ? Math.sqrt(beyondX ** 2 + beyondY ** 2) : Math.max(beyondX, beyondY);
            ofHole = Math.min(ofHole, away - neededMm);
          }
          if (ofHole < 0) continue;
          kept += 1;
          spareMm = Math.min(spareMm, ofHole);
        }
      }
      if (kept > best.kept || (kept === best.kept && spareMm > best.spareMm)) best = { kept, spareMm };
    }
  }
  return [best.kept, best.spareMm];
}

/** Our answer, which must be a proven one. */
function answer(grid: GridTerms) {
  const { keptCount, spareMm, proven } = bestOffset(grid);
  if (!proven) throw new Error('the best offset is not proven');
  return { keptCount, spareMm };
}

const benchTop = bench(16, 10, 12);
const hall = bench(125, 80, 1000);

const comparisons: readonly (Comparison | Growth)[] = [
  {
    name: 'best offset of 160 holes over 12 rails, proven: all of it is one job',
    ours: () => [answer(benchTop)],
    atMostNs: 5e6,
    peers: [
      {
        name: 'mesh of 0.1 mm',
        atLeast: 100,
        run: () => [everyOffset(benchTop)],
        atLeastAsGood: ([ours], [theirs]) => {
          const { keptCount, spareMm } = ours as ReturnType<typeof answer>;
          const [kept = Number.NaN, meshSpareMm = Number.NaN] = theirs as number[];
          return keptCount > kept || (keptCount === kept && (spareMm ?? Number.NaN) >= meshSpareMm);
        },
      },
    ],
  },
  {
    name: 'best offset of 10 000 holes over 1000 rails, proven',
    ours: () => [answer(hall)],
    atMostNs: 200e6,
    peers: [],
  },
  {
    name: 'best offset of n holes over a tenth as many rails',
    sizes: [10, 100, 1000, 10_000],
    job: (size) => {
      const rows = Math.max(2, Math.round(Math.sqrt(size / 1.5)));
      const grid = bench(Math.round(size / rows), rows, size / 10);
      return () => answer(grid);
    },
  },
];

export default comparisons;
