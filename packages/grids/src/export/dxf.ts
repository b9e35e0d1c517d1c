/**
 * A panel with its holes as a DXF drawing. A subpath of its own, so that nobody else carries the library that writes it.
 *
 * @module grids/export/dxf
 */
import { Colors, DxfWriter, LWPolylineFlags, point2d, point3d, Units } from '@tarikjabiri/dxf';
import type { Point } from '../geometry.ts';
import type { BoredHole, BoredPanel } from './bored-panel.ts';
import { rounded } from './decimal.ts';
import { DASHED_MM, LONG_DASH_DOT_MM, PAST_RIM_MM } from './line-types.ts';
import { cornersOf, extentOf, requireDrawable } from './outlines.ts';

export type { BoredHole, BoredPanel, NamedShape } from './bored-panel.ts';

/** A nanometre: finer than anything, and coarse enough that no number needs an exponent. */
const DECIMALS = 6;
const n = (valueMm: number) => rounded(valueMm, DECIMALS);

/** Dashes are lengths above 0, gaps below it. */
const pattern = (lengthsMm: readonly number[]) =>
  lengthsMm.map((lengthMm, i) => (i % 2 === 0 ? lengthMm : -lengthMm));

const METRIC = 1;

/**
 * The panel as a DXF drawing at full size in millimetres, y up, with its datum corner at the origin. Layers: `PANEL`
 * and `KEEP_OUTS` hold closed outlines and circles, `HOLES` a circle for each hole, `CENTRE_MARKS` two lines across each.
 *
 * @param input - The panel, its holes and what they miss, all in mm from the front-left corner seen from above.
 * @returns The text of a DXF file; coordinates to a millionth of a millimetre.
 * @throws RangeError where a field is missing or outside its limits, by its path: `holes[3].xMm`.
 * @example
 * ```ts
 * import { holeDxf } from '@scantling/grids/export/dxf';
 * const panel = { lengthMm: 600, widthMm: 400 };
 * const drawing = holeDxf({ panel, holes: [{ xMm: 60, yMm: 56, diameterMm: 20 }] });
 * drawing.match(/^CIRCLE$/gm).length // => 1
 * holeDxf({ panel, holes: [{ xMm: 601, yMm: 56, diameterMm: 20 }] }) // throws holeDxf requires holes[0].xMm between 0 and 600, got 601
 * ```
 */
export function holeDxf(input: BoredPanel): string {
  requireDrawable('holeDxf', input);
  const { panel, holes, keepOuts = [] } = input;
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: METRIC });
  const { low, high } = extentOf(input);
  dxf.setVariable('$EXTMIN', { 10: n(low.xMm), 20: n(low.yMm), 30: 0 });
  dxf.setVariable('$EXTMAX', { 10: n(high.xMm), 20: n(high.yMm), 30: 0 });
  dxf.addLType('DASHED', '__ __ __', pattern(DASHED_MM));
  dxf.addLType('LONG_DASH_DOT', '____ . ____', pattern(LONG_DASH_DOT_MM));
  dxf.addLayer('PANEL', Colors.White, 'Continuous');
  dxf.addLayer('HOLES', Colors.White, 'Continuous');
  dxf.addLayer('CENTRE_MARKS', Colors.White, 'LONG_DASH_DOT');
  dxf.addLayer('KEEP_OUTS', Colors.White, 'DASHED');

  const closed = (corners: readonly Point[], layerName: string) =>
    dxf.addLWPolyline(
      corners.map(({ xMm, yMm }) => ({ point: point2d(n(xMm), n(yMm)) })),
      { flags: LWPolylineFlags.Closed, layerName },
    );
  // A circle without size is a point.
  const circle = ({ xMm, yMm, diameterMm }: BoredHole, layerName: string) =>
    n(diameterMm / 2) > 0
      ? dxf.addCircle(point3d(n(xMm), n(yMm)), n(diameterMm / 2), { layerName })
      : dxf.addPoint(n(xMm), n(yMm), 0, { layerName });
  const { lengthMm, widthMm } = panel;
  closed(
    [
      { xMm: 0, yMm: 0 },
      { xMm: lengthMm, yMm: 0 },
      { xMm: lengthMm, yMm: widthMm },
      { xMm: 0, yMm: widthMm },
    ],
    'PANEL',
  );
  for (const keepOut of keepOuts) {
    if (keepOut.shape === 'circle') circle(keepOut, 'KEEP_OUTS');
    else closed(cornersOf(keepOut, panel), 'KEEP_OUTS');
  }
  for (const { xMm, yMm, diameterMm } of holes) {
    circle({ xMm, yMm, diameterMm }, 'HOLES');
    const reachMm = diameterMm / 2 + PAST_RIM_MM;
    const mark = (alongMm: number, acrossMm: number) =>
      dxf.addLine(
        point3d(n(xMm - alongMm), n(yMm - acrossMm)),
        point3d(n(xMm + alongMm), n(yMm + acrossMm)),
        { layerName: 'CENTRE_MARKS' },
      );
    mark(reachMm, 0);
    mark(0, reachMm);
  }
  return dxf.stringify();
}
