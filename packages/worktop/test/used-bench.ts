import type { Obstacle, Plan, Point } from '../src/index.ts';

const member = (name: string, at: Point, lengthMm: number, widthMm: number): Obstacle => ({
  ...{ name, ...at, lengthMm, widthMm, clearanceMm: 6 },
});

const fixing = (name: string, xMm: number, yMm: number, slotMm: number) => ({ name, xMm, yMm, slotMm });

/**
 * A bindery bench put to use, and nothing left to choose: its press and sewing frame, its template, its load, a base
 * that rises, its lamp. Its own plan, so that figures worked by hand stay while the examples change.
 */
export const usedBench = (): Plan => ({
  version: 2,
  name: 'Bindery bench in use',
  top: {
    lengthMm: 1479.55,
    widthMm: 640,
    thicknessMm: 44.45,
    species: 'Maple, sugar',
    cut: 'flatsawn',
    moisturePct: 8,
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
      member('left leg frame', { xMm: 230, yMm: 40 }, 40, 560),
      member('right leg frame', { xMm: 1210, yMm: 40 }, 40, 560),
      member('front rail', { xMm: 230, yMm: 95 }, 1020, 40),
      member('back rail', { xMm: 230, yMm: 505 }, 1020, 40),
    ],
    fixedLineMm: 320,
    shankDiameterMm: 6,
    slotClearanceMm: 0.5,
    screwClearanceMm: 10,
    fixings: [250, 1230].flatMap((xMm) => [
      fixing(`front at ${xMm}`, xMm, 70, 14),
      fixing(`middle at ${xMm}`, xMm, 320, 7),
      fixing(`back at ${xMm}`, xMm, 570, 14),
    ]),
    lift: {
      leastHeightMm: 680,
      mostHeightMm: 1080,
      lowestWorkMm: 740,
      highestWorkMm: 1100,
      capacityKg: 160,
      frameMassKg: 18,
      leastMarginPct: 20,
    },
  },
  holes: {
    diameterMm: 15.875,
    pitchXMm: 112,
    pitchYMm: 104,
    first: { xMm: 68, yMm: 160 },
    columns: 13,
    rows: 5,
    edgeMarginMm: 40,
    blocked: 'fail',
  },
  finish: {
    coats: 3,
    product: { name: 'varnish', parts: 1, volumeSolidsPct: 44, onHandMl: 500 },
    dryFilmUm: 12,
    lossPct: 15,
  },
  template: {
    columns: 5,
    rows: 3,
    leastPinSpanMm: 200,
    playInTemplateMm: 0.1,
    playInHoleMm: 0.1,
    datumErrorMm: 0.2,
    boringErrorMm: 0.1,
    templatePitchErrorMm: 0.02,
  },
  accessories: [
    {
      name: 'sewing frame',
      pins: [
        { xMm: 0, yMm: 0 },
        { xMm: 448, yMm: 0 },
      ],
      leastPinMm: 15.2,
      mostPinMm: 15.3,
      leastHoleMm: 15.875,
      mostHoleMm: 15.975,
      pinPositionErrorMm: 0.1,
      holePositionErrorMm: 0.1,
    },
  ],
  load: {
    leftSupport: 'left leg frame',
    rightSupport: 'right leg frame',
    spreadKg: 20,
    heavyThings: [{ name: 'standing press', xMm: 740, massKg: 40 }],
    mostSagMm: 1,
  },
  cables: {
    holeDiameterMm: 30,
    xMm: 1350,
    yMm: 560,
    bundle: [{ name: 'lamp', diameterMm: 7, count: 2 }],
    mostFillPct: 31,
    heldBelowMm: 700,
    cableLengthMm: 1400,
    slackPct: 20,
  },
});
