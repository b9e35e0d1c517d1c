import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';
import { neighbours } from './neighbours.ts';

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
  const widestMm = Math.max(...bundle.map(({ diameterMm }) => diameterMm));
  const alike = bundle.every(({ diameterMm }) => diameterMm === widestMm);
  // Whatever the packing, equal circles side by side need their area, and a ring of their own width for all but one.
  const packedMm = cables.bundleDiameterMm;
  const leastPackedMm = widestMm * Math.max(Math.sqrt(cableCount), cableCount > 1 ? 2 : 1);
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
          packedMm >= leastPackedMm - 1e-9 && packedMm <= widestMm * (1 + 2 * Math.sqrt(cableCount)),
          `${packedMm} is no packing of ${cableCount} cables`,
        )),
    ...agree('cables.neededHoleMm', cables.neededHoleMm, Math.max(byShareMm, packedMm ?? 0)),
    ...agree('cables.farthestMm', cables.farthestMm, heldBelowMm + riseMm),
    ...agree('cables.neededLengthMm', cables.neededLengthMm, (heldBelowMm + riseMm) * (1 + slackPct / 100)),
    ...same('cables.clearanceMm', cables.clearanceMm !== null, onTop),
    ...(cables.clearanceMm === null
      ? []
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
