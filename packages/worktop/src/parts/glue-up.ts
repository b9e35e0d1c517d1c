import { clampCount, clampForce, glueMass, type PlacedBoard, planPanel } from '@scantling/stock';
import { densityKgPerM3 } from '../density.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Basis } from '../season.ts';

/** The wood at one stage of the work. */
export interface GlueUpStage {
  readonly name: string;
  readonly volumeM3: number;
  /** kg; `null` where no table gives the density of the wood. */
  readonly massKg: number | null;
}

/** How the top is glued up. */
export interface PlannedGlueUp {
  /** As many as the plan says, or as many as boards on offer need to be. */
  readonly boardCount: number;
  /** Each rough board must be at least so large, mm. */
  readonly roughLengthMm: number;
  readonly roughWidthMm: number;
  readonly roughThicknessMm: number;
  /** Boards when they are jointed, mm. */
  readonly jointedWidthMm: number;
  /** Boards when they are glued, mm. */
  readonly gluedThicknessMm: number;
  /** In the finished top, from the front edge to the back edge. */
  readonly boards: readonly PlacedBoard[];
  /** Of the wood with its water, kg/m³; `null` where no table gives it. */
  readonly densityKgPerM3: number | null;
  readonly stages: readonly GlueUpStage[];
  /** Of all joints, m². */
  readonly glueLineM2: number;
  /** To have ready, g. */
  readonly glueMassG: number;
  /** The clamps, where there is a joint to press. */
  readonly clamping: {
    /** All clamps together, N. */
    readonly forceN: number;
    readonly clampCount: number;
    /** From clamp to clamp, mm; the first sits half of it from the end. */
    readonly spacingMm: number;
  } | null;
}

/**
 * What the coefficients of a wood stand for: rings along the face, and rings square to it. Lumber counts as quartersawn
 * from 45° on: Wood Handbook (FPL-GTR-190), glossary, from memory.
 */
const RING_ANGLES_DEG = { flatsawn: 0, quartersawn: 90 } as const;

/** The boards of the top, what they weigh stage by stage, and what it takes to glue them. */
export function plannedGlueUp({ top, glueUp }: SettledPlan, { wood }: Basis): PlannedGlueUp | null {
  if (!glueUp) return null;
  const { boardCount: leastBoardCount, glue, clampForceN, ...allowances } = glueUp;
  const density = densityKgPerM3(wood, top.moisturePct);
  const { lengthMm, widthMm, thicknessMm } = top;
  const panel = planPanel({
    ...allowances,
    ...{ lengthMm, widthMm, thicknessMm, leastBoardCount },
    // Where the density is not known, masses are left out below, and any figure serves.
    densityKgPerM3: density ?? 1000,
    ringAnglesDeg: [RING_ANGLES_DEG[top.cut]],
  });
  const { boardCount, jointCount, roughLengthMm, gluedThicknessMm } = panel;
  const joint = { lengthMm: roughLengthMm, thicknessMm: gluedThicknessMm };
  const { forceN } = clampForce({ ...joint, pressureMPa: glue.pressureMPa });
  const { spreadGPerM2, lossPct } = glue;
  const jointedWidthMm = panel.roughWidthMm - glueUp.jointingMm;
  return {
    boardCount,
    roughLengthMm,
    roughWidthMm: panel.roughWidthMm,
    roughThicknessMm: panel.roughThicknessMm,
    jointedWidthMm,
    gluedThicknessMm,
    boards: panel.boards,
    densityKgPerM3: density,
    stages: panel.stages.map((stage) => ({ ...stage, massKg: density && stage.massKg })),
    glueLineM2: panel.glueLineM2,
    glueMassG: glueMass({ ...joint, jointCount, spreadGPerM2, lossPct }).massG,
    clamping: jointCount
      ? {
          forceN,
          // Without a block between them, a clamp's pad is one board away from the first joint.
          ...clampCount({ forceN, clampForceN, lengthMm: roughLengthMm, spreadDepthMm: jointedWidthMm }),
        }
      : null,
  };
}
