import { millimetres, thereIs } from '../lengths.ts';
import type { BlockedHole, Check, Computed, Margin, Status } from '../result.ts';
import { figure, insideMm, least, overlap } from './check.ts';
import { type KindOfThing, nearestOf } from './nearest.ts';

/** What the verdict turns on: the tightest of the holes that are bored, or the worst of those that may not be. */
function marginOf(kinds: readonly KindOfThing[], blocked: readonly BlockedHole[]): Margin | null {
  const pairs = [...kinds.map(({ tightest }) => tightest), ...blocked.flatMap(({ conflicts }) => conflicts)];
  const worst = least(pairs, ({ clearanceMm, neededMm }) => clearanceMm - neededMm);
  return worst && { given: worst.clearanceMm, min: worst.neededMm, unit: 'mm' };
}

export function checkHoles(computed: Computed): Check {
  const { plan, holes, blockedHoles } = computed;
  const kinds = nearestOf(computed);
  const leftOut = plan.holes.blocked === 'leave out' && holes.length > 0;
  const blocked = blockedHoles.map(
    ({ row, column, xMm, yMm, why }) =>
      `holes: row ${row}, column ${column} at x ${millimetres(xMm)}, y ${millimetres(yMm)}: ${why}`,
  );
  const nearest = kinds.map(
    ({ kind, nearest: { hole, beside, clearanceMm } }) =>
      `${kind}: ${thereIs(clearanceMm)} at row ${hole.row}, column ${hole.column}, beside ${beside}`,
  );
  const clear = holes.length
    ? `${holes.length} holes stay clear, all year. Nearest to ${nearest.join('; ')}.`
    : 'No hole stays clear.';
  const advice = leftOut ? 'Left out:' : 'Move holes.first, change the pitch, or move what is in the way:';
  const margin = marginOf(kinds, leftOut ? [] : blockedHoles);
  return {
    id: 'holes',
    title: 'Holes miss the base, the inlays, the screws and the edges',
    status: blocked.length === 0 ? 'pass' : leftOut ? 'warn' : 'fail',
    says: [clear, ...(blocked.length ? [advice, ...blocked] : [])].join('\n'),
    figures: [
      figure('holes', holes.length, '1'),
      figure('blocked', blocked.length, '1'),
      ...kinds.map(({ kind, nearest }) => figure(`least clearance to ${kind}`, nearest.clearanceMm, 'mm')),
    ],
    ...(margin && { margin }),
    rules: ['grids/clearance-over-seasons', 'grids/clearance-to-rectangle', 'movement/width-change'],
  };
}

/** What is let in has to lie in the top, each piece in wood of its own. */
export function checkInlays({ plan: { top } }: Computed): Check {
  const panel = { xMm: 0, yMm: 0, lengthMm: top.lengthMm, widthMm: top.widthMm };
  const outside = top.inlays
    .filter((inlay) => insideMm(inlay, panel) < 0)
    .map(({ name }) => `top.inlays, ${name}: sticks out of the top`);
  const crossing = top.inlays.flatMap((a, i) =>
    top.inlays
      .slice(i + 1)
      .filter((b) => overlap(a, b))
      .map((b) => `top.inlays, ${a.name}: runs into ${b.name}`),
  );
  const wrong = [...outside, ...crossing];
  const edge = least(top.inlays, (inlay) => insideMm(inlay, panel));
  const status: Status = wrong.length ? 'fail' : 'pass';
  const fine = edge
    ? insideMm(edge, panel) > 0
      ? `The wood beside ${edge.name} is at least ${thereIs(insideMm(edge, panel))} wide.`
      : `${edge.name} reaches the edge of the top.`
    : 'Nothing is let in.';
  return {
    id: 'inlays',
    title: 'What is let in lies in the top',
    status,
    says: wrong.length ? wrong.join('\n') : fine,
    figures: edge ? [figure('to the nearest edge', insideMm(edge, panel), 'mm')] : [],
    ...(edge && !crossing.length && { margin: { given: insideMm(edge, panel), min: 0, unit: 'mm' } }),
    rules: [],
  };
}
