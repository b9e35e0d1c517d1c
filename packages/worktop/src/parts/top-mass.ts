import type { WoodInBrief } from '@scantling/species';
import { densityKgPerM3 } from '../density.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { PlannedHole } from '../result.ts';
import type { PlannedStrip } from './strip.ts';

/** What the top weighs on building day. */
export interface TopMass {
  /** Of its wood, water and all: holes and the rabbet for a strip taken out; `null` where no table gives its density. */
  readonly woodKg: number | null;
  /** Of the metal strip; 0 where there is none. */
  readonly stripKg: number;
}

export function topMass(
  { top, holes: { diameterMm }, cables }: SettledPlan,
  wood: WoodInBrief,
  holes: readonly PlannedHole[],
  strip: PlannedStrip | null,
): TopMass {
  const mouthMm2 = (mm = 0) => (Math.PI / 4) * mm ** 2;
  const mouthsMm2 = holes.length * mouthMm2(diameterMm) + mouthMm2(cables?.holeDiameterMm);
  const rabbetMm3 = strip ? strip.lengthMm * strip.rabbet.acrossMm * strip.rabbet.depthMm : 0;
  const solidMm3 = top.lengthMm * top.widthMm * top.thicknessMm;
  const density = densityKgPerM3(wood, top.moisturePct);
  const woodM3 = Math.max(0, solidMm3 - mouthsMm2 * top.thicknessMm - rabbetMm3) / 1e9;
  return { woodKg: density === null ? null : woodM3 * density, stripKg: strip?.massKg ?? 0 };
}
