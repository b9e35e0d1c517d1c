import type { Plan } from '../src/index.ts';

const member = (name: string, xMm: number, yMm: number, lengthMm: number, widthMm: number) => ({
  ...{ name, xMm, yMm, lengthMm, widthMm, clearanceMm: 6 },
});
const screw = (name: string, xMm: number, yMm: number, slotMm: number) => ({ name, xMm, yMm, slotMm });

/** A bench with the sections that every plan has, and none besides. */
export const plainBench: Plan = {
  version: 2,
  name: 'Plain bench',
  top: {
    ...{ lengthMm: 1479.55, widthMm: 640, thicknessMm: 44.45, species: 'Maple, sugar' },
    ...{ cut: 'flatsawn', moisturePct: 8 },
    inlays: [
      { name: 'brass cutting guide', xMm: 40, yMm: 28, lengthMm: 1400, widthMm: 25.4, clearanceMm: 12 },
    ],
  },
  seasons: {
    driest: { temperatureC: 21, relativeHumidityPct: 32 },
    wettest: { temperatureC: 24, relativeHumidityPct: 62 },
  },
  base: {
    members: [
      member('left leg frame', 230, 40, 40, 560),
      member('right leg frame', 1210, 40, 40, 560),
      member('front rail', 230, 95, 1020, 40),
      member('back rail', 230, 505, 1020, 40),
    ],
    ...{ fixedLineMm: 320, shankDiameterMm: 6, slotClearanceMm: 0.5, screwClearanceMm: 10 },
    fixings: [
      screw('left front', 250, 70, 14),
      screw('left middle', 250, 320, 7),
      screw('left back', 250, 570, 14),
      screw('right front', 1230, 70, 14),
      screw('right middle', 1230, 320, 7),
      screw('right back', 1230, 570, 14),
    ],
  },
  holes: {
    ...{ diameterMm: 15.875, pitchXMm: 112, pitchYMm: 104, first: { xMm: 68, yMm: 160 } },
    ...{ columns: 13, rows: 5, edgeMarginMm: 40, blocked: 'fail' },
  },
  finish: {
    coats: 3,
    product: { name: 'varnish', parts: 1, volumeSolidsPct: 44, onHandMl: 500 },
    ...{ dryFilmUm: 12, lossPct: 15 },
  },
};
