import { equilibriumMoistureRule, widthChangeRule } from '@scantling/movement';
import { checkRange } from '@scantling/rules';
import { clampForceRule } from '@scantling/stock';
import type { Rectangle } from '../../plan/place.ts';
import { apartMm } from '../neighbours.ts';
import { atLeast, graver, lowest, type Verdicts } from './expected.ts';

/** What is left between a rectangle and the edges of a panel: left, right, front, back. */
const around = ({ xMm, yMm, lengthMm, widthMm }: Rectangle, panel: { lengthMm: number; widthMm: number }) => [
  xMm,
  panel.lengthMm - xMm - lengthMm,
  yMm,
  panel.widthMm - yMm - widthMm,
];

const crosses = (a: Rectangle, b: Rectangle) =>
  Math.min(a.xMm + a.lengthMm, b.xMm + b.lengthMm) > Math.max(a.xMm, b.xMm) &&
  Math.min(a.yMm + a.widthMm, b.yMm + b.widthMm) > Math.max(a.yMm, b.yMm);

export const onWood: Verdicts = {
  species: ({ movement: { citation, coefficientPerPct } }) => ({
    status: graver(false, citation.confirmed !== 'text' || Boolean(citation.erratum)),
    figures: [coefficientPerPct],
  }),
  moisture: ({ plan, movement }) => {
    const { driestMoisturePct: dry, wettestMoisturePct: wet, coefficientPerPct } = movement;
    const { moisturePct: fromMoisturePct, widthMm } = plan.top;
    const outOfRange = [
      ...Object.values(plan.seasons).flatMap((air) => checkRange(equilibriumMoistureRule, air)),
      ...[dry, wet].flatMap((toMoisturePct) =>
        checkRange(widthChangeRule, { widthMm, coefficientPerPct, fromMoisturePct, toMoisturePct }),
      ),
    ];
    const outside = !(fromMoisturePct >= dry && fromMoisturePct <= wet);
    return {
      status: graver(false, outside || outOfRange.length > 0),
      figures: [fromMoisturePct, dry, wet, movement.driestChangeMm, movement.wettestChangeMm],
    };
  },
  boards: ({ plan, glueUp }) => {
    const asked = plan.glueUp;
    if (!asked || !glueUp) return null;
    const eachMm = (plan.top.widthMm + asked.trimWidthMm) / asked.boardCount + asked.jointingMm;
    const offered = plan.stock?.boards ?? [];
    const [end, edge] = [plan.stock?.boardEndTrimMm ?? 0, plan.stock?.boardEdgeTrimMm ?? 0];
    const fits = offered.some(
      (board) =>
        atLeast(board.lengthMm, glueUp.roughLengthMm + 2 * end) &&
        atLeast(board.widthMm, glueUp.roughWidthMm + 2 * edge) &&
        atLeast(board.thicknessMm, glueUp.roughThicknessMm),
    );
    const lacking = offered.length > 0 && !fits;
    return {
      status: graver(asked.boardCount < glueUp.boardCount || lacking),
      figures: [glueUp.boardCount, glueUp.roughLengthMm, glueUp.roughWidthMm, glueUp.roughThicknessMm],
      ...(lacking ? {} : { margin: [asked.mostWidthMm, eachMm] as const }),
    };
  },
  gluing: ({ plan, glueUp }) => {
    if (!plan.glueUp || !glueUp?.clamping) return null;
    const { glue } = plan.glueUp;
    const { moisturePct } = plan.top;
    const { forceN, clampCount, spacingMm } = glueUp.clamping;
    const [below, above] = [moisturePct - glue.leastMoisturePct, glue.mostMoisturePct - moisturePct];
    const unproven = checkRange(clampForceRule, {
      pressureMPa: glue.pressureMPa,
      lengthMm: glueUp.roughLengthMm,
      thicknessMm: glueUp.gluedThicknessMm,
    });
    return {
      status: graver(!(below >= 0 && above >= 0), unproven.length > 0),
      figures: [moisturePct, glueUp.glueMassG, forceN, clampCount, spacingMm],
      margin: [moisturePct, below < above ? glue.leastMoisturePct : glue.mostMoisturePct],
    };
  },
  panel: ({ plan, glueUp }) => {
    if (!plan.glueUp || !glueUp) return null;
    const { boards, jointedWidthMm } = glueUp;
    const narrowMm = Math.min(...boards.map(({ widthMm }) => widthMm));
    const several = boards.length > 1;
    const bows = several && plan.top.cut === 'flatsawn' && plan.glueUp.order === 'match';
    const massKg = glueUp.stages.at(-1)?.massKg ?? null;
    return {
      status: graver(false, bows || (several && !atLeast(2 * narrowMm, jointedWidthMm))),
      figures: [narrowMm, ...(massKg === null ? [] : [massKg])],
      ...(several && !bows ? { margin: [narrowMm, jointedWidthMm / 2] as const } : {}),
    };
  },
  inlays: ({ plan: { top } }) => {
    const walls = top.inlays.map((inlay) => Math.min(...around(inlay, top)));
    const crossing = top.inlays.some((a, i) => top.inlays.slice(0, i).some((b) => crosses(a, b)));
    const wallMm = Math.min(...walls);
    return {
      status: graver(walls.some((mm) => mm < 0) || crossing),
      figures: walls.length ? [wallMm] : [],
      ...(walls.length && !crossing ? { margin: [wallMm, 0] as const } : {}),
    };
  },
  'strip-rabbet': ({ plan, strip, holes }) => {
    if (!plan.strip || !strip) return null;
    const { rabbet, belowFaceMm, belowFaceDriestMm, belowFaceWettestMm } = strip;
    const walls = around(rabbet, plan.top);
    const hit = holes.some(({ xMm, yMm }) => apartMm(xMm, yMm, rabbet) < plan.holes.diameterMm / 2);
    const proud = -Math.min(belowFaceMm, belowFaceDriestMm, belowFaceWettestMm) > plan.strip.toleranceMm;
    const thin = walls.some((mm) => mm > 1e-6 && mm < rabbet.depthMm);
    const underMm = plan.top.thicknessMm - rabbet.depthMm;
    const astray = walls.some((mm) => mm < -1e-6) || hit;
    return {
      status: graver(!atLeast(rabbet.acrossMm, rabbet.neededAcrossMm) || astray, proud || thin),
      figures: [
        rabbet.acrossMm,
        rabbet.neededAcrossMm,
        belowFaceMm,
        belowFaceDriestMm,
        belowFaceWettestMm,
        underMm,
      ],
      ...(astray ? {} : { margin: [rabbet.acrossMm, rabbet.neededAcrossMm] as const }),
    };
  },
  'strip-movement': ({ plan, strip }) => {
    const asked = plan.strip;
    if (!asked || !strip) return null;
    const held = lowest(strip.screws, ({ outMm, inMm }) => outMm + inMm)?.item.atMm ?? 0;
    const coneMm = strip.head.countersinkDiameterMm / 2;
    // Each screw takes its cone out of the strip, and in a slot the way of its shank besides.
    const cuts = strip.screws.map(({ atMm, slot }) => {
      const inner = slot ? slot.screwFromInnerEndMm - asked.shankDiameterMm / 2 : 0;
      const outer = slot ? slot.lengthMm - asked.shankDiameterMm - inner : 0;
      const [left, right] = atMm < held ? [outer, inner] : [inner, outer];
      return [atMm - coneMm - left, atMm + coneMm + right] as const;
    });
    const stops = [...cuts.map(([from]) => from), strip.lengthMm];
    const leftMm = Math.min(...stops.map((stop, i) => stop - (cuts[i - 1]?.[1] ?? 0)));
    const slots = strip.screws.filter(({ slot }) => slot).length;
    const { metalOutgrowsMm, woodOutgrowsMm, start, end } = strip;
    return {
      status: graver(!atLeast(leftMm, 0)),
      figures: [metalOutgrowsMm, woodOutgrowsMm, start.gapMm, end.gapMm, strip.screws.length, slots, leftMm],
      margin: [leftMm, 0],
    };
  },
  'strip-screws': ({ plan, strip, holes, screws, fixings }) => {
    const asked = plan.strip;
    if (!asked || !strip) return null;
    const { head } = strip;
    const inWoodMm = asked.screwLengthMm + asked.headBelowFaceMm - asked.thicknessMm;
    const leftMm = plan.top.thicknessMm - asked.rabbetDepthMm - inWoodMm;
    const meets = (x: number, y: number, other: { xMm: number; yMm: number }, diameterMm: number) =>
      Math.hypot(x - other.xMm, y - other.yMm) < (diameterMm + asked.shankDiameterMm) / 2;
    const hits = strip.screws.some(
      ({ xMm: x, yMm: y }) =>
        holes.some((hole) => meets(x, y, hole, plan.holes.diameterMm)) ||
        fixings.some((fixing) => {
          const reachMm = screws?.at.find(({ name }) => name === fixing.name)?.penetrationMm;
          return meets(x, y, fixing, plan.base.shankDiameterMm) && (reachMm ?? plan.top.thicknessMm) > leftMm;
        }),
    );
    const wrong =
      inWoodMm <= 0 ||
      asked.headBelowFaceMm >= asked.thicknessMm ||
      head.countersinkDiameterMm > strip.widthMm ||
      hits;
    return {
      status: graver(wrong || leftMm < -1e-9),
      figures: [inWoodMm, leftMm, head.countersinkDiameterMm, head.inWoodMm],
      ...(wrong ? {} : { margin: [leftMm, 0] as const }),
    };
  },
};
