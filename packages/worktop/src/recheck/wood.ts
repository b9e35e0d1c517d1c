import { woods } from '@scantling/species';
import type { WorktopPlan } from '../result.ts';

/** The printed row of the wood that a finished plan names. */
export const woodOf = ({ movement }: WorktopPlan) =>
  woods.find(({ commonName }) => commonName === movement.species);

/**
 * Density of the wood as it is, kg/m³; `null` where no table gives its gravity. Of a gravity at 12 % moisture content, one
 * at another follows by the shrinkage of 0.265 of the gravity over 30 points (Wood Handbook, ch. 4): as much less room for
 * each gram whatever the wood.
 */
export function densityKgPerM3(result: WorktopPlan): number | null {
  const at12 = woodOf(result)?.at12Pct.specificGravityRatio?.value;
  if (!at12) return null;
  const { moisturePct } = result.plan.top;
  const roomMlPerG = 1 / at12 + (0.265 * (Math.min(30, moisturePct) - 12)) / 30;
  return (1000 * (1 + moisturePct / 100)) / roomMlPerG;
}

/** What the wood of the top weighs on building day, kg: the slab less what is bored and cut out of it. */
export function woodKg(result: WorktopPlan): number | null {
  const { plan, holes } = result;
  const { top, strip, cables } = plan;
  const density = densityKgPerM3(result);
  if (density === null) return null;
  const inlay = top.inlays.find(({ name }) => name === strip?.inlay);
  const bored = holes.length * plan.holes.diameterMm ** 2 + (cables?.holeDiameterMm ?? 0) ** 2;
  const faceMm2 = top.lengthMm * top.widthMm - (bored * Math.PI) / 4;
  const rabbetMm3 =
    strip && inlay ? Math.max(inlay.lengthMm, inlay.widthMm) * strip.rabbetWidthMm * strip.rabbetDepthMm : 0;
  return (Math.max(0, faceMm2 * top.thicknessMm - rabbetMm3) * density) / 1e9;
}

/** What the strip weighs, kg; 0 where there is none. */
export function stripKg({ plan }: WorktopPlan): number {
  const inlay = plan.top.inlays.find(({ name }) => name === plan.strip?.inlay);
  if (!plan.strip || !inlay) return 0;
  return inlay.lengthMm * inlay.widthMm * plan.strip.thicknessMm * plan.strip.densityKgPerM3 * 1e-9;
}
