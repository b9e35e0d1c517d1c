import { specificGravityAtMoisture, woodDensity } from '@scantling/movement';
import type { WoodInBrief } from '@scantling/species';

/**
 * Specific gravity of a wood, ovendry mass over the volume that it has at a moisture content; `null` where no table gives
 * it. Tables give it at 12 %. As it dries, a gram of wood takes up less room by the same amount whatever its gravity.
 */
export function specificGravityOf(wood: WoodInBrief, moisturePct: number): number | null {
  const at12Ratio = wood.at12Pct.specificGravityRatio?.value;
  if (!at12Ratio) return null;
  const roomAt = (pct: number) =>
    1 /
    specificGravityAtMoisture({ basicSpecificGravityRatio: at12Ratio, moisturePct: pct })
      .specificGravityRatio;
  return 1 / (1 / at12Ratio + roomAt(moisturePct) - roomAt(12));
}

/** Density of a wood with its water, kg/m³; `null` where no table gives its specific gravity. */
export function densityKgPerM3(wood: WoodInBrief, moisturePct: number): number | null {
  const specificGravityRatio = specificGravityOf(wood, moisturePct);
  return specificGravityRatio && woodDensity({ specificGravityRatio, moisturePct }).densityKgPerM3;
}
