import type { StripPlan, StripRabbet } from '@scantling/fastening';
import type { Drawing, Say } from '../calculator/calculation.ts';
import { piece } from '../calculator/piece.ts';
import { dimension } from '../drawing/dimension.ts';
import { hatching, label } from '../drawing/marks.ts';
import { SHEET_WIDTH, short, through, viewOf } from '../drawing/sheet.ts';

const HATCHING = 'strip-section';
const [PLAN_LEFT, PLAN_RIGHT, PLAN_Y] = [30, SHEET_WIDTH - 30, 306];

interface Strip {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly wallCount: number;
  readonly shankDiameterMm: number;
  readonly headDiameterMm: number;
  readonly headHeightMm: number;
  readonly headBelowFaceMm: number;
}

/** A section through the strip at a screw, and the whole strip from above with its screws numbered. */
export function drawStrip(strip: Strip, rabbet: StripRabbet, plan: StripPlan, say: Say): Drawing {
  const { widthMm, thicknessMm, wallCount, lengthMm } = strip;
  const { widthMm: cutMm, depthMm } = rabbet;
  const wallMm = 0.35 * cutMm;
  const frontMm = wallCount === 2 ? -wallMm : 0;
  const backMm = cutMm + wallMm;
  const baseMm = -Math.max(2.2 * depthMm, 0.5 * cutMm);
  const room = { left: 70, top: 44, width: 320, height: 180 };
  const { at } = viewOf(room, frontMm, baseMm, backMm, 0);
  const wood = [
    ...(wallCount === 2 ? [at(frontMm, baseMm), at(frontMm, 0), at(0, 0)] : [at(0, baseMm)]),
    ...[at(0, -depthMm), at(cutMm, -depthMm), at(cutMm, 0), at(backMm, 0), at(backMm, baseMm)],
  ];
  // In a rabbet the strip is flush with the edge, in a groove it lies in the middle.
  const leftMm = wallCount === 2 ? (cutMm - widthMm) / 2 : 0;
  const topMm = thicknessMm - depthMm;
  const box = [
    at(leftMm, -depthMm),
    at(leftMm, topMm),
    at(leftMm + widthMm, topMm),
    at(leftMm + widthMm, -depthMm),
  ];
  const centreMm = leftMm + widthMm / 2;
  const headMm = topMm - strip.headBelowFaceMm;
  const neckMm = headMm - strip.headHeightMm;
  const [head, shank] = [strip.headDiameterMm / 2, strip.shankDiameterMm / 2];
  const screw = [
    ...[at(centreMm - head, headMm), at(centreMm + head, headMm), at(centreMm + shank, neckMm)],
    ...[at(centreMm + shank, baseMm), at(centreMm - shank, baseMm), at(centreMm - shank, neckMm)],
  ];
  const along = (mm: number) => PLAN_LEFT + (mm / lengthMm) * (PLAN_RIGHT - PLAN_LEFT);
  return {
    title: `Section: a strip of ${say(widthMm)} by ${say(thicknessMm)} in a ${wallCount === 2 ? 'groove' : 'rabbet'} ${say(depthMm)} deep and ${say(cutMm)} wide. Below it the strip from above, with ${plan.screws.length} screws.`,
    box: [0, 0, SHEET_WIDTH, PLAN_Y + 60],
    shapes: [
      piece('defs', {}, hatching(HATCHING)),
      piece('path', { class: 'wood outline', d: through(wood, true) }),
      piece('path', { class: 'paper', d: through(box, true) }),
      piece('path', { class: 'outline', fill: `url(#${HATCHING})`, d: through(box, true) }),
      piece('path', { class: 'paper thin', d: through(screw, true) }),
      piece('path', {
        class: 'centre',
        d: through([at(centreMm, 0.3 * depthMm), at(centreMm, baseMm - 0.15 * depthMm)]),
      }),
      dimension(at(0, 0), at(cutMm, 0), -20, say(cutMm)),
      dimension(at(cutMm, -depthMm), at(cutMm, 0), at(backMm, 0)[0] - at(cutMm, 0)[0] + 24, say(depthMm)),
      piece('rect', {
        class: 'outline paper',
        ...{ x: PLAN_LEFT, y: PLAN_Y - 13, width: PLAN_RIGHT - PLAN_LEFT, height: 26 },
      }),
      ...plan.screws.flatMap(({ atMm, slot }, i) => [
        piece('rect', {
          class: slot ? 'thin' : 'outline',
          ...{
            x: short(along(atMm) - (slot ? 10 : 5)),
            y: PLAN_Y - 5,
            width: slot ? 20 : 10,
            height: 10,
            rx: 5,
          },
        }),
        ...(plan.screws.length > 12 ? [] : [label([along(atMm), PLAN_Y - 20], `${i + 1}`)]),
      ]),
      dimension([PLAN_LEFT, PLAN_Y + 13], [PLAN_RIGHT, PLAN_Y + 13], 26, say(lengthMm)),
    ],
  };
}
