import { layoutHoles } from '@scantling/grids';
import type { Comparison } from '../../../scripts/bench.ts';
import { binderyBench } from '../src/examples.ts';
import { type Plan, planWorktop, type WorktopPlan } from '../src/index.ts';
import { gridOver } from '../src/parts/holes.ts';
import { parsePlan } from '../src/schema.ts';

/** A page plans anew with every key that is pressed. */
const AT_MOST_NS = 30e6;

const MESH_MM = 1;

const plan = parsePlan(binderyBench);

/** Nothing said of where the top is held, how far the base is slid, or where the grid begins. */
const undecided: Plan = {
  ...plan,
  base: {
    ...plan.base,
    fixedLineMm: 'choose',
    ...(plan.base.sliding && {
      sliding: plan.base.sliding.map((part) => ({ ...part, slideMm: 'choose' as const })),
    }),
  },
  holes: { ...plan.holes, first: 'choose' },
};

/** The base as it is slid, the grid still to be placed. */
const { asked, plan: settled, swing } = planWorktop(plan);
const toPlace: Plan = {
  ...asked,
  base: { ...settled.base, sliding: [] },
  holes: { ...plan.holes, first: 'choose' },
};

/** Holes that are kept, and what the tightest has beyond the clearance asked for. */
function worthOf({ holes, checks }: WorktopPlan) {
  const { given = Number.NaN, min = Number.NaN } = checks.find(({ id }) => id === 'holes')?.margin ?? {};
  return { kept: holes.length, spareMm: given - min };
}

/** The same by trying: every offset of a mesh laid out, and the one planned that leaves the holes most room. */
function overMesh(): WorktopPlan {
  const grid = gridOver({ ...settled, holes: plan.holes }, settled.base.fixedLineMm, swing);
  const { lengthMm, widthMm } = grid.panel;
  const xMost = lengthMm - (grid.columns - 1) * grid.pitchXMm;
  const yMost = widthMm - (grid.rows - 1) * grid.pitchYMm;
  let best = { kept: -1, roomMm: 0, first: { xMm: 0, yMm: 0 } };
  for (let xMm = 0; xMm <= xMost; xMm += MESH_MM) {
    for (let yMm = 0; yMm <= yMost; yMm += MESH_MM) {
      const first = { xMm, yMm };
      const { holes } = layoutHoles({ ...grid, firstHole: first });
      const roomMm = Math.min(...holes.map(({ clearanceMm }) => clearanceMm));
      const kept = holes.length;
      if (kept > best.kept || (kept === best.kept && roomMm > best.roomMm)) best = { kept, roomMm, first };
    }
  }
  return planWorktop({ ...toPlace, holes: { ...plan.holes, first: best.first } });
}

const comparisons: readonly Comparison[] = [
  {
    name: 'the bindery bench, planned and checked',
    ours: () => [planWorktop(plan)],
    atMostNs: AT_MOST_NS,
    peers: [],
  },
  {
    name: 'the bindery bench with fixed line, slides and first hole all left open',
    ours: () => [planWorktop(undecided)],
    atMostNs: AT_MOST_NS,
    peers: [],
  },
  {
    name: 'the bindery bench, its first hole chosen',
    ours: () => [worthOf(planWorktop(toPlace))],
    atMostNs: AT_MOST_NS,
    peers: [
      {
        name: `mesh of ${MESH_MM} mm`,
        atLeast: 50,
        run: () => [worthOf(overMesh())],
        atLeastAsGood: ([ours], [theirs]) => {
          const [one, other] = [ours, theirs] as ReturnType<typeof worthOf>[];
          if (!one || !other) return false;
          return one.kept > other.kept || (one.kept === other.kept && one.spareMm >= other.spareMm - 0.01);
        },
      },
    ],
  },
];

export default comparisons;
