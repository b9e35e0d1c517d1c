import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';
import { neighbours } from './neighbours.ts';

/**
 * Least and most that a bundle of equal circles measures across, in diameters of one: a ring of up to five, or six round
 * one, by geometry; of more, no less than their areas and no more than rings round rings.
 */
function packings(count: number): readonly [least: number, most: number] {
  const ring = (n: number) => 1 + 1 / Math.sin(Math.PI / n);
  if (count === 1) return [1, 1];
  const closed = count <= 5 ? ring(count) : count <= 7 ? 3 : null;
  if (closed !== null) return [closed, closed];
  const rings = Math.ceil((Math.sqrt(12 * count - 3) - 3) / 6);
  return [Math.max(3, Math.sqrt(count)), 2 * rings + 1];
}

/** Cables by their areas, the hole by its distance from everything, the length by the heights of the base. */
export function recheckCables(result: WorktopPlan): Finding[] {
  const { plan, cables, holes } = result;
  const asked = plan.cables;
  if (!cables || !asked) return same('cables', cables === null, asked == null);
  const { holeDiameterMm, xMm, yMm, mostFillPct, heldBelowMm, slackPct, bundle } = asked;
  const { top, base } = plan;
  const cableCount = bundle.reduce((sum, { count }) => sum + count, 0);
  const squaresMm2 = bundle.reduce((sum, { count, diameterMm }) => sum + count * diameterMm ** 2, 0);
  const byShareMm = Math.sqrt(squaresMm2 / (mostFillPct / 100));
  const diametersMm = bundle.flatMap(({ count, diameterMm }) => Array<number>(count).fill(diameterMm));
  const widestMm = Math.max(...diametersMm);
  const pairMm = Math.max(
    widestMm,
    ...diametersMm.flatMap((a, i) => diametersMm.slice(i + 1).map((b) => a + b)),
  );
  const alike = bundle.every(({ diameterMm }) => diameterMm === widestMm);
  const packedMm = cables.bundleDiameterMm;
  const [leastPackedMm, mostPackedMm] = packings(cableCount).map((times) => times * widestMm) as [
    number,
    number,
  ];
  const riseMm = base.lift ? base.lift.mostHeightMm - base.lift.leastHeightMm : 0;
  const onTop = xMm >= 0 && yMm >= 0 && xMm <= top.lengthMm && yMm <= top.widthMm;
  const around = [
    ...neighbours(result),
    ...holes.map(({ xMm: x, yMm: y, row, column }) => ({
      name: `the hole in row ${row}, column ${column}`,
      neededMm: 0,
      nearestMm: () => Math.hypot(x - xMm, y - yMm) - plan.holes.diameterMm / 2,
    })),
  ].map(({ name, neededMm, nearestMm }) => {
    const clearMm = nearestMm(xMm, yMm) - holeDiameterMm / 2;
    return { name, clearMm, spareMm: clearMm - neededMm };
  });
  const leastMm = Math.min(...around.map(({ clearMm }) => clearMm));
  const spareMm = Math.min(...around.map((one) => one.spareMm));
  const nearestMm = around.find(({ name }) => name === cables.nearest)?.clearMm ?? Number.NaN;
  return [
    ...agree('cables.cableCount', cables.cableCount, cableCount, 0),
    ...agree('cables.fillPct', cables.fillPct, (100 * squaresMm2) / holeDiameterMm ** 2),
    ...same('cables.bundleDiameterMm', packedMm !== null, alike && cableCount <= 20),
    ...(packedMm === null
      ? []
      : holds(
          'cables.bundleDiameterMm',
          packedMm >= leastPackedMm * (1 - 1e-7) && packedMm <= mostPackedMm * (1 + 1e-7),
          `${packedMm} is no packing of ${cableCount} cables`,
        )),
    ...agree('cables.neededHoleMm', cables.neededHoleMm, Math.max(byShareMm, pairMm, packedMm ?? 0)),
    ...agree('cables.farthestMm', cables.farthestMm, heldBelowMm + riseMm),
    ...agree('cables.neededLengthMm', cables.neededLengthMm, (heldBelowMm + riseMm) * (1 + slackPct / 100)),
    ...same('cables.clearanceMm', cables.clearanceMm !== null, onTop),
    ...(cables.clearanceMm === null
      ? [...same('cables.nearest', cables.nearest, ''), ...same('cables.why', cables.why !== null, true)]
      : [
          ...agree('cables.clearanceMm', cables.clearanceMm, leastMm),
          ...agree('cables.nearest', nearestMm, leastMm),
          ...holds(
            'cables.why',
            (cables.why === null) === spareMm >= -1e-6,
            'the hole may be there, or may not',
          ),
        ]),
  ];
}
