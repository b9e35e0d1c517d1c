import { thermalExpansionTable } from '@scantling/movement';
import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';
import { stripKg, woodOf } from './wood.ts';

/** The strip in its recess: where its screws stand, what each travels, what stays free around it. */
export function recheckStrip(result: WorktopPlan): Finding[] {
  const { plan, strip, movement } = result;
  const asked = plan.strip;
  const inlay = plan.top.inlays.find(({ name }) => name === asked?.inlay);
  if (!strip || !asked || !inlay) return same('strip', strip === null, asked == null);
  const { top } = plan;
  const along = inlay.lengthMm >= inlay.widthMm;
  const lengthMm = Math.max(inlay.lengthMm, inlay.widthMm);
  const widthMm = Math.min(inlay.lengthMm, inlay.widthMm);
  const { rabbet, screws, head, metalOutgrowsMm: metal, woodOutgrowsMm: wood } = strip;
  const startMm = along ? inlay.xMm : inlay.yMm;
  const midMm = along ? inlay.yMm + inlay.widthMm / 2 : inlay.xMm + inlay.lengthMm / 2;
  const spaces = Math.max(1, Math.ceil((lengthMm - 2 * asked.endDistanceMm) / asked.mostPitchMm - 1e-9));
  const pitchMm = (lengthMm - 2 * asked.endDistanceMm) / spaces;
  const held = { first: 0, middle: Math.floor(spaces / 2), last: spaces }[asked.fixedScrew];
  const heldMm = asked.endDistanceMm + held * pitchMm;
  const lengthwise = parting(result, along, lengthMm);
  // Held in the middle, half of its width moves each way, towards as many walls as there are.
  const crosswise = parting(result, !along, widthMm / 2);
  const acrossFromMm = along ? inlay.yMm : inlay.xMm;
  const acrossPanelMm = along ? top.widthMm : top.lengthMm;
  const atEdge = acrossFromMm <= 1e-6 || acrossFromMm + widthMm >= acrossPanelMm - 1e-6;
  const walls = atEdge ? 1 : 2;
  // At an edge of the top all room is at the one wall, else half at each.
  const spareMm = asked.rabbetWidthMm - widthMm;
  const beforeMm = acrossFromMm <= 1e-6 ? 0 : atEdge ? spareMm : spareMm / 2;
  const share = (atMm: number) => Math.abs(atMm - heldMm) / lengthMm;
  const end = (name: 'start' | 'end', atMm: number): Finding[] => {
    const gapMm = asked.endClearanceMm + metal * share(atMm);
    return [
      ...agree(`strip.${name}.gapMm`, strip[name].gapMm, gapMm),
      ...agree(`strip.${name}.mostGapMm`, strip[name].mostGapMm, gapMm + wood * share(atMm)),
    ];
  };
  // The cone of a head: as high as half of what it widens by, over the tangent of half its angle.
  const halfAngle = ((head.coneAngleDeg / 2) * Math.PI) / 180;
  const heightMm = (asked.headDiameterMm - asked.shankDiameterMm) / 2 / Math.tan(halfAngle);
  const sunkMm = asked.headBelowFaceMm + heightMm - asked.thicknessMm;
  const depthMm = asked.rabbetDepthMm;
  const inRecess =
    rabbet.xMm <= inlay.xMm + 1e-6 &&
    rabbet.yMm <= inlay.yMm + 1e-6 &&
    rabbet.xMm + rabbet.lengthMm >= inlay.xMm + inlay.lengthMm - 1e-6 &&
    rabbet.yMm + rabbet.widthMm >= inlay.yMm + inlay.widthMm - 1e-6;
  const recessMm = along ? rabbet.lengthMm : rabbet.widthMm;
  const panelMm = along ? top.lengthMm : top.widthMm;
  const openStart = startMm <= 1e-6;
  const openEnd = startMm + lengthMm >= panelMm - 1e-6;
  // In thickness a top moves by the other of its two coefficients, where that is known.
  const { radialPerPct, tangentialPerPct } = woodOf(result)?.movement ?? {};
  const other = top.cut === 'quartersawn' ? tangentialPerPct : radialPerPct;
  const perPct = other?.value ?? movement.coefficientPerPct;
  const swollen = (toPct: number) => depthMm * (1 + perPct * (toPct - top.moisturePct)) - asked.thicknessMm;
  return [
    ...same('strip.name', strip.name, inlay.name),
    ...same('strip.runs', strip.runs, along ? 'along the grain' : 'across the grain'),
    ...agree('strip.lengthMm', strip.lengthMm, lengthMm),
    ...agree('strip.widthMm', strip.widthMm, widthMm),
    ...agree('strip.massKg', strip.massKg, stripKg(result)),
    ...agree('strip.metalOutgrowsMm', metal, lengthwise.metalMm),
    ...agree('strip.woodOutgrowsMm', wood, lengthwise.woodMm),
    ...agree('strip.pitchMm', strip.pitchMm, pitchMm),
    ...agree('strip.screws', screws.length, spaces + 1, 0),
    ...screws.flatMap((screw, i) => {
      const path = `strip.screws[${i}]`;
      const atMm = asked.endDistanceMm + i * pitchMm;
      const outMm = wood * share(atMm);
      const inMm = metal * share(atMm);
      const binds = Math.max(outMm, inMm) > asked.toleranceMm;
      const roomMm = asked.shankDiameterMm + 2 * asked.slotClearanceMm;
      const slotMm = roomMm + outMm + inMm;
      return [
        ...agree(`${path}.atMm`, screw.atMm, atMm),
        ...agree(`${path}.xMm`, screw.xMm, along ? startMm + atMm : midMm),
        ...agree(`${path}.yMm`, screw.yMm, along ? midMm : startMm + atMm),
        ...agree(`${path}.outMm`, screw.outMm, outMm),
        ...agree(`${path}.inMm`, screw.inMm, inMm),
        ...same(`${path}.slot`, screw.slot !== null, binds),
        ...(screw.slot
          ? [
              ...agree(`${path}.slot.lengthMm`, screw.slot.lengthMm, slotMm),
              ...agree(`${path}.slot.screwFromInnerEndMm`, screw.slot.screwFromInnerEndMm, roomMm / 2 + inMm),
              ...agree(
                `${path}.slot.countersinkLengthMm`,
                screw.slot.countersinkLengthMm,
                asked.headDiameterMm + slotMm - asked.shankDiameterMm,
              ),
            ]
          : []),
      ];
    }),
    ...end('start', 0),
    ...end('end', lengthMm),
    ...holds('strip.rabbet', inRecess || rabbet.acrossMm < widthMm, 'does not hold the strip'),
    ...agree(
      'strip.rabbet',
      recessMm,
      lengthMm + (openStart ? 0 : strip.start.gapMm) + (openEnd ? 0 : strip.end.gapMm),
    ),
    ...agree(
      'strip.rabbet.xMm',
      along ? startMm - rabbet.xMm : startMm - rabbet.yMm,
      openStart ? 0 : strip.start.gapMm,
    ),
    ...agree('strip.rabbet', along ? rabbet.yMm : rabbet.xMm, acrossFromMm - beforeMm),
    ...agree('strip.rabbet.acrossMm', rabbet.acrossMm, asked.rabbetWidthMm),
    ...agree('strip.rabbet.acrossMm', along ? rabbet.widthMm : rabbet.lengthMm, asked.rabbetWidthMm),
    ...agree('strip.rabbet.depthMm', rabbet.depthMm, depthMm),
    ...agree('strip.rabbet.neededAcrossMm', rabbet.neededAcrossMm, widthMm + walls * crosswise.metalMm),
    ...agree('strip.belowFaceMm', strip.belowFaceMm, depthMm - asked.thicknessMm),
    ...agree('strip.belowFaceDriestMm', strip.belowFaceDriestMm, swollen(movement.driestMoisturePct)),
    ...agree('strip.belowFaceWettestMm', strip.belowFaceWettestMm, swollen(movement.wettestMoisturePct)),
    ...agree('strip.head.coneAngleDeg', heightMm, asked.headHeightMm),
    ...agree(
      'strip.head.countersinkDiameterMm',
      head.countersinkDiameterMm,
      asked.headDiameterMm + 2 * asked.headBelowFaceMm * Math.tan(halfAngle),
    ),
    ...agree('strip.head.inWoodMm', head.inWoodMm, Math.max(0, sunkMm)),
    ...same('strip.head.inWoodDiameterMm', head.inWoodDiameterMm !== null, sunkMm > 1e-9),
    ...(head.inWoodDiameterMm === null
      ? []
      : agree(
          'strip.head.inWoodDiameterMm',
          head.inWoodDiameterMm,
          asked.shankDiameterMm + 2 * sunkMm * Math.tan(halfAngle),
        )),
  ];
}

/** Thermal expansion of wood, µm/(m·K): as tables print it along the grain, by gravity across (Wood Handbook, ch. 4). */
function woodExpansions(result: WorktopPlan, along: boolean): readonly number[] {
  if (along) {
    return thermalExpansionTable
      .filter(({ material, direction }) => material === 'wood' && direction === 'along')
      .flatMap(({ lowUmPerMK, highUmPerMK }) => [lowUmPerMK, highUmPerMK]);
  }
  const at12 = woodOf(result)?.at12Pct.specificGravityRatio?.value;
  const gravities = at12 ? [1 / (1 / at12 - (0.265 * 12) / 30)] : [0.1, 0.8];
  return gravities.map((g) => 32.4 * g + (result.plan.top.cut === 'flatsawn' ? 18.4 : 9.9));
}

/**
 * Most by which metal and wood part along a stretch, mm: warmth and damp may come at any time, so that the worst of each
 * add up.
 */
function parting(result: WorktopPlan, along: boolean, lengthMm: number) {
  const { plan, movement } = result;
  const { top, seasons, strip } = plan;
  const metal = strip?.expansionUmPerMK ?? 0;
  const buildingC = strip?.buildingDayC ?? 0;
  const kelvins = [0, seasons.driest.temperatureC - buildingC, seasons.wettest.temperatureC - buildingC];
  const points = [
    0,
    movement.driestMoisturePct - top.moisturePct,
    movement.wettestMoisturePct - top.moisturePct,
  ];
  // Along the grain wood shrinks by 0.2 % at most, green to ovendry (ch. 4), as footnote 1 of Table 13-5 turns it into a coefficient.
  const perPct = along ? 1 / ((100 * 30) / 0.2 - 30 + 10) : movement.coefficientPerPct;
  const heat = woodExpansions(result, along).flatMap((wood) =>
    kelvins.map((kelvin) => ((metal - wood) * kelvin) / 1e6),
  );
  return {
    metalMm: lengthMm * (Math.max(...heat) - perPct * Math.min(...points)),
    woodMm: lengthMm * (perPct * Math.max(...points) - Math.min(...heat)),
  };
}
