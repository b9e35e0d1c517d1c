import type { Drawing, Say } from '../calculator/calculation.ts';
import { piece } from '../calculator/piece.ts';
import { along } from '../drawing/axis.ts';
import { dimension } from '../drawing/dimension.ts';
import { label } from '../drawing/marks.ts';
import { SHEET_WIDTH, short } from '../drawing/sheet.ts';

const [TOP, BOTTOM] = [26, 226];
const BAR = 62;

interface Limits {
  readonly holeLowerLimitMm: number;
  readonly holeUpperLimitMm: number;
  readonly shaftLowerLimitMm: number;
  readonly shaftUpperLimitMm: number;
}

/** Tolerance zones of pin and hole side by side, diameters upwards: a hole is as narrow as it is across the grain. */
export function drawZones(
  { holeLowerLimitMm, holeUpperLimitMm, shaftLowerLimitMm, shaftUpperLimitMm }: Limits,
  { shrinkPct }: { readonly shrinkPct: number },
  leastClearanceMm: number,
  say: Say,
): Drawing {
  const dry = 1 - shrinkPct / 100;
  const zones = [
    { name: 'pin', style: 'metal zone-pin', low: shaftLowerLimitMm, high: shaftUpperLimitMm },
    { name: 'hole', style: 'wood outline', low: holeLowerLimitMm, high: holeUpperLimitMm },
    { name: 'hole, dry', style: 'wood then', low: holeLowerLimitMm * dry, high: holeUpperLimitMm * dry },
  ];
  const least = Math.min(...zones.map(({ low }) => low));
  const most = Math.max(...zones.map(({ high }) => high));
  const y = along(least, most, BOTTOM, TOP);
  const centre = (i: number) => 112 + i * 128;
  const pinTop = y(shaftUpperLimitMm);
  return {
    title: `Tolerance zones: pins from ${say(shaftLowerLimitMm)} to ${say(shaftUpperLimitMm)}, holes from ${say(holeLowerLimitMm)} to ${say(holeUpperLimitMm)}, and the holes in the dry season.`,
    box: [0, 0, SHEET_WIDTH, BOTTOM + 50],
    shapes: [
      piece('path', { class: 'centre', d: `M40 ${short(pinTop)}H${SHEET_WIDTH - 20}` }),
      ...zones.flatMap(({ name, style, low, high }, i) => [
        piece('rect', {
          class: style,
          x: centre(i) - BAR / 2,
          y: short(y(high)),
          width: BAR,
          height: short(Math.max(1, y(low) - y(high))),
        }),
        label([centre(i), BOTTOM + 40], name),
        label([centre(i), y(high) - 5], say(high), 'middle', 'remark over'),
        label([centre(i), y(low) + 16], say(low), 'middle', 'remark over'),
      ]),
      leastClearanceMm > 0 &&
        dimension([centre(0) + 64, pinTop], [centre(0) + 64, y(holeLowerLimitMm)], 0, say(leastClearanceMm)),
    ].filter((shape) => typeof shape === 'object'),
  };
}
