import { toRectangleMm } from '../geometry.ts';
import { byTheFace, millimetres, needed, thereIs } from '../lengths.ts';
import type { PlannedStrip } from '../parts/strip.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

const ROUNDING = 1e-6;

/** What the wood beside the rabbet leaves standing towards each edge of the top. */
const walls = ({ top }: SettledPlan, { rabbet }: PlannedStrip) => [
  { edge: 'left', leftMm: rabbet.xMm },
  { edge: 'right', leftMm: top.lengthMm - rabbet.xMm - rabbet.lengthMm },
  { edge: 'front', leftMm: rabbet.yMm },
  { edge: 'back', leftMm: top.widthMm - rabbet.yMm - rabbet.widthMm },
];

/** How the face of the strip lies, over the year. */
function faceSays({ belowFaceMm, belowFaceDriestMm, belowFaceWettestMm }: PlannedStrip): string {
  return `The strip lies ${byTheFace(belowFaceMm)} on building day, ${byTheFace(belowFaceDriestMm)} at the driest, ${byTheFace(belowFaceWettestMm)} at the wettest.`;
}

/** Whether the strip finds room in its rabbet, and the rabbet in the wood. */
export function checkStripRabbet({ plan, strip, holes }: Computed): Check | null {
  if (!strip || !plan.strip) return null;
  const { rabbet } = strip;
  const { acrossMm, neededAcrossMm, depthMm } = rabbet;
  const narrow =
    acrossMm >= neededAcrossMm - ROUNDING
      ? []
      : [
          `strip.rabbetWidth is ${thereIs(acrossMm, 2)}, at least ${needed(neededAcrossMm, 2)} is needed: the strip is ${millimetres(strip.widthMm)} wide and outgrows the wood beside it`,
        ];
  const sides = walls(plan, strip);
  const open = sides.flatMap(({ edge, leftMm }) =>
    leftMm < -ROUNDING
      ? [
          `strip.inlay, ${strip.name}: its rabbet comes out of the ${edge} edge by ${needed(-leftMm)}; move top.inlays`,
        ]
      : [],
  );
  const hit = holes.flatMap((hole) => {
    const leftMm = toRectangleMm(hole, rabbet) - plan.holes.diameterMm / 2;
    return leftMm < 0
      ? [`holes: row ${hole.row}, column ${hole.column} breaks into the rabbet by ${needed(-leftMm)}`]
      : [];
  });
  // That a wall of end grain or long grain thinner than the rabbet is deep breaks out is common practice, no source.
  const thin = sides.flatMap(({ edge, leftMm }) =>
    leftMm > ROUNDING && leftMm < depthMm
      ? [
          `strip.inlay, ${strip.name}: ${thereIs(leftMm)} of wood is left towards the ${edge} edge, less than the rabbet is deep; it breaks out easily`,
        ]
      : [],
  );
  const proudMm = -Math.min(strip.belowFaceMm, strip.belowFaceDriestMm, strip.belowFaceWettestMm);
  const proud =
    proudMm <= plan.strip.toleranceMm
      ? []
      : [
          `strip.rabbetDepth is ${millimetres(depthMm)}: the strip stands up to ${needed(proudMm, 2)} proud, strip.tolerance is ${thereIs(plan.strip.toleranceMm, 2)}`,
        ];
  const failed = [...narrow, ...open, ...hit];
  const underMm = plan.top.thicknessMm - depthMm;
  return {
    id: 'strip-rabbet',
    title: 'The strip fits its rabbet',
    status: failed.length ? 'fail' : thin.length + proud.length ? 'warn' : 'pass',
    says: [
      ...failed,
      ...thin,
      ...proud,
      faceSays(strip),
      `${thereIs(underMm)} of wood stays beneath the rabbet.`,
    ].join('\n'),
    figures: [
      figure('rabbet across the strip', acrossMm, 'mm'),
      figure('needed there', neededAcrossMm, 'mm'),
      figure('below the face on building day', strip.belowFaceMm, 'mm'),
      figure('at the driest', strip.belowFaceDriestMm, 'mm'),
      figure('at the wettest', strip.belowFaceWettestMm, 'mm'),
      figure('wood beneath the rabbet', underMm, 'mm'),
    ],
    ...(open.length + hit.length === 0 && {
      margin: { given: acrossMm, min: neededAcrossMm, unit: 'mm' as const },
    }),
    rules: ['fastening/strip-rabbet', 'movement/change-beside-metal', 'movement/width-change'],
  };
}
