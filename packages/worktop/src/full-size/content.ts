import { PAST_RIM_MM } from '@scantling/grids/export';
import { printable } from '../pdf.ts';
import type { Point } from '../plan/place.ts';
import type { WorktopPlan } from '../result.ts';
import { around, type Box, boxOf, joined } from './box.ts';
import { type Label, labelBeside, neighbours } from './label.ts';

/** A hole that is bored through the top: its circle, a cross in its middle, and what it is called. */
export interface BoredMark extends Point {
  readonly radiusMm: number;
  /** None where there is no room for it. */
  readonly label: Label | null;
}

/** What the template shows at full size. */
export interface Content {
  readonly top: Box;
  readonly holes: readonly BoredMark[];
  /** Screws come from below: a place to keep the drill from, not to drill at. */
  readonly screws: readonly BoredMark[];
  /** Places of the screws of a strip, which come from above. */
  readonly stripScrews: readonly Point[];
  readonly rabbet: Box | null;
  readonly inlays: readonly { readonly name: string; readonly box: Box }[];
}

/** Half the length of the cross at a screw's place. */
export const SCREW_REACH_MM = 2;
const HEIGHTS_MM = [2.5, 1.8];

/** All that has to be whole on one tile: the circle, its cross, and its label. */
export function extentOf(mark: BoredMark): Box {
  const drawn = around(mark, mark.radiusMm + PAST_RIM_MM);
  return mark.label ? joined(drawn, mark.label.box) : drawn;
}

function gridMarks({ plan, holes }: WorktopPlan, others: readonly Box[]): BoredMark[] {
  const radiusMm = plan.holes.diameterMm / 2;
  const placed = new Map<string, Box>();
  return holes.map((hole) => {
    const { row, column } = hole;
    const near = neighbours(hole, plan.holes);
    const taken = [
      ...others,
      ...[-2, -1, 0, 1, 2].flatMap((along) =>
        [-1, 0, 1].flatMap((across) => placed.get(`${row + across}.${column + along}`) ?? []),
      ),
    ];
    const label = labelBeside({ hole, radiusMm, text: `${row}.${column}`, heights: HEIGHTS_MM, near, taken });
    if (label) placed.set(`${row}.${column}`, label.box);
    return { xMm: hole.xMm, yMm: hole.yMm, radiusMm, label };
  });
}

/** What the template shows, each hole with its number, row first, as in the table of holes. */
export function contentOf(result: WorktopPlan): Content {
  const { plan, holes, fixings, strip } = result;
  const { top, base, cables } = plan;
  const inlays = top.inlays.map((inlay) => ({ name: printable(inlay.name), box: boxOf(inlay) }));
  const inlayBoxes = inlays.map(({ box }) => box);
  const screwBoxes = fixings.map((screw) => around(screw, SCREW_REACH_MM));
  const grid = gridMarks(result, [...inlayBoxes, ...screwBoxes]);
  const rims = holes.map((hole) => ({ ...hole, radiusMm: plan.holes.diameterMm / 2 }));
  const labels = grid.flatMap(({ label }) => label?.box ?? []);
  const named = (place: Point, radiusMm: number, text: string): BoredMark => {
    const taken = [...inlayBoxes, ...labels];
    const label = labelBeside({ hole: place, radiusMm, text, heights: HEIGHTS_MM, near: rims, taken });
    return { xMm: place.xMm, yMm: place.yMm, radiusMm, label };
  };
  const passage = cables ? [named(cables, cables.holeDiameterMm / 2, 'cables')] : [];
  return {
    top: boxOf({ xMm: 0, yMm: 0, ...top }),
    holes: [...grid, ...passage],
    screws: fixings.map((screw) => named(screw, base.shankDiameterMm / 2, 'screw')),
    stripScrews: strip?.screws ?? [],
    rabbet: strip ? boxOf(strip.rabbet) : null,
    inlays,
  };
}
