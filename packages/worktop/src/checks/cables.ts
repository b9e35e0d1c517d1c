import { cablesThatMove, mainsWiring, plugsAreWider } from '../cable-cautions.ts';
import { millimetres, needed, thereIs } from '../lengths.ts';
import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

/** Whether the cables go through their hole, with as much of it left free as the plan asks for. */
export function checkCableHole({ plan, cables }: Computed): Check | null {
  const asked = plan.cables;
  if (!cables || !asked) return null;
  const { cableCount, fillPct, bundleDiameterMm, neededHoleMm } = cables;
  const enough = asked.holeDiameterMm >= neededHoleMm - 1e-9;
  const many = cableCount === 1 ? '1 cable takes' : `${cableCount} cables take`;
  const packed =
    bundleDiameterMm === null
      ? []
      : [`Side by side, as close as they go, they need ${needed(bundleDiameterMm)}.`];
  const room = `${many} up ${fillPct.toFixed(1)} % of it; ${asked.mostFillPct} % are allowed. For conduits codes allow 53 % with one cable, 31 % with two, 40 % with more: a published convention.`;
  return {
    id: 'cable-hole',
    title: 'The cables go through their hole',
    status: enough ? 'pass' : 'fail',
    says: [
      enough
        ? `The hole of ${thereIs(asked.holeDiameterMm)} is wide enough; ${needed(neededHoleMm)} are needed.`
        : `cables.holeDiameter is ${thereIs(asked.holeDiameterMm)}, at least ${needed(neededHoleMm)} is needed; or let cables.mostFillPct be more, or take fewer cables`,
      room,
      ...packed,
      plugsAreWider,
    ].join('\n'),
    figures: [
      figure('hole', asked.holeDiameterMm, 'mm'),
      figure('needed', neededHoleMm, 'mm'),
      figure('taken up', fillPct, '%'),
      ...(bundleDiameterMm === null ? [] : [figure('bundle', bundleDiameterMm, 'mm')]),
    ],
    margin: { given: asked.holeDiameterMm, min: neededHoleMm, unit: 'mm' },
    rules: ['worktop/hole-fill', 'worktop/cable-hole', 'worktop/bundle-diameter'],
  };
}

/** Whether that hole misses what holes have to miss, and the holes. */
export function checkCablePlace({ plan, cables }: Computed): Check | null {
  const asked = plan.cables;
  if (!cables || !asked) return null;
  const { clearanceMm, nearest, why } = cables;
  const place = `cables: the hole at x ${millimetres(asked.xMm)}, y ${millimetres(asked.yMm)}`;
  return {
    id: 'cable-place',
    title: 'The cable hole misses the base, the inlays, the screws, the holes and the edges',
    status: why === null ? 'pass' : 'fail',
    says:
      why === null
        ? `It stays ${thereIs(clearanceMm as number)} clear of ${nearest}, all year.`
        : `${place}: ${why}. Move cables.x or cables.y`,
    figures: clearanceMm === null ? [] : [figure('clearance', clearanceMm, 'mm')],
    rules: ['grids/clearance-over-seasons', 'movement/width-change'],
  };
}

/** Whether the cables are long enough for the base at its highest. */
export function checkCableLength({ plan, cables }: Computed): Check | null {
  const asked = plan.cables;
  if (!cables || !asked) return null;
  const { farthestMm, neededLengthMm } = cables;
  const enough = asked.cableLengthMm >= neededLengthMm - 1e-9;
  const there = `${needed(farthestMm)} from the hole to where they are held, at its highest, and ${asked.slackPct} % slack by convention`;
  return {
    id: 'cable-length',
    title: 'The cables are long enough for the base at its highest',
    status: enough ? 'pass' : 'fail',
    says: [
      enough
        ? `${thereIs(asked.cableLengthMm)} are enough for ${there}: ${needed(neededLengthMm)}.`
        : `cables.cableLength is ${thereIs(asked.cableLengthMm)}, at least ${needed(neededLengthMm)} is needed: ${there}`,
      cablesThatMove,
      mainsWiring,
    ].join('\n'),
    figures: [
      figure('cable', asked.cableLengthMm, 'mm'),
      figure('needed', neededLengthMm, 'mm'),
      figure('distance', farthestMm, 'mm'),
    ],
    margin: { given: asked.cableLengthMm, min: neededLengthMm, unit: 'mm' },
    rules: ['worktop/cable-length'],
  };
}
