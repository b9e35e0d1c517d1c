import type { Plan } from '../src/index.ts';
import { bench } from './bindery-bench.ts';

/** The bindery bench put to use: its press and sewing frame, its template, its load, a base that rises, its lamp. */
export const usedBench = (): Plan => {
  const plan = bench();
  return {
    ...plan,
    base: {
      ...plan.base,
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
  };
};
