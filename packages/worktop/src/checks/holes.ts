import { millimetres, thereIs } from '../lengths.ts';
import type { Check, Computed, Status } from '../result.ts';
import { figure, insideMm, least, overlap } from './check.ts';

export function checkHoles({ plan, holes, blockedHoles }: Computed): Check {
  const tightest = least(holes, ({ clearanceMm }) => clearanceMm);
  const leftOut = plan.holes.blocked === 'leave out' && tightest !== null;
  const blocked = blockedHoles.map(
    ({ row, column, xMm, yMm, why }) =>
      `holes: row ${row}, column ${column} at x ${millimetres(xMm)}, y ${millimetres(yMm)}: ${why}`,
  );
  const clear = tightest
    ? `${holes.length} holes stay clear, all year. The tightest is row ${tightest.row}, column ${tightest.column}: ${thereIs(tightest.clearanceMm)} beside ${tightest.nearest}.`
    : 'No hole stays clear.';
  const advice = leftOut ? 'Left out:' : 'Move holes.first, change the pitch, or move what is in the way:';
  return {
    id: 'holes',
    title: 'Holes miss the base, the inlays, the screws and the edges',
    status: blocked.length === 0 ? 'pass' : leftOut ? 'warn' : 'fail',
    says: [clear, ...(blocked.length ? [advice, ...blocked] : [])].join('\n'),
    figures: [
      figure('holes', holes.length, '1'),
      figure('blocked', blocked.length, '1'),
      ...(tightest ? [figure('tightest clearance', tightest.clearanceMm, 'mm')] : []),
    ],
    rules: ['grids/clearance-over-seasons', 'movement/width-change'],
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
    ? `The wood beside ${edge.name} is at least ${thereIs(insideMm(edge, panel))} wide.`
    : 'Nothing is let in.';
  return {
    id: 'inlays',
    title: 'What is let in lies in the top',
    status,
    says: wrong.length ? wrong.join('\n') : fine,
    figures: edge ? [figure('to the nearest edge', insideMm(edge, panel), 'mm')] : [],
    rules: [],
  };
}
