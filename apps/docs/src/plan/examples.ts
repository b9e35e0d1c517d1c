import {
  binderyBench,
  conservatorsRisingTable,
  gildersSquareTable,
  marblersLongBench,
  trialThatFails,
} from '@scantling/worktop/examples';

/** The sections that every plan has, and none besides. */
const smallTop = {
  version: 2,
  name: 'Small top',
  top: {
    length: 1200,
    width: 600,
    thickness: 40,
    species: 'Maple, sugar',
    cut: 'flatsawn',
    moisturePct: 8,
    inlays: [],
  },
  seasons: {
    driest: { temperatureC: 20, relativeHumidityPct: 30 },
    wettest: { temperatureC: 24, relativeHumidityPct: 60 },
  },
  base: {
    members: [{ name: 'rail', x: 100, y: 280, length: 1000, width: 40, clearance: 5 }],
    fixedLine: 300,
    shankDiameter: 6,
    slotClearance: 0.5,
    screwClearance: 10,
    fixings: [{ name: 'middle', x: 150, y: 300, slot: 7 }],
  },
  holes: {
    diameter: 16,
    pitchX: 120,
    pitchY: 160,
    first: { x: 60, y: 60 },
    columns: 10,
    rows: 4,
    edgeMargin: 40,
    blocked: 'fail',
  },
  finish: {
    coats: 3,
    product: { name: 'varnish', parts: 1, volumeSolidsPct: 44, onHandMl: 600 },
    dryFilmUm: 12,
    lossPct: 15,
  },
};

/** Contents of plan files, by the names in `starts`. */
export const contents: Readonly<Record<string, unknown>> = {
  binderyBench,
  smallTop,
  gildersSquareTable,
  marblersLongBench,
  conservatorsRisingTable,
  trialThatFails,
};
