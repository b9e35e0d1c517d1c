import fc from 'fast-check';
import type { GridTerms } from '../src/index.ts';
import { keepInArb, keepOutsArb, mm } from './shapes.ts';

/** The answer stays no further below the best than this. */
export const GAP_MM = 0.01;

/** Grids of every kind over keep-outs of every shape; half of them move, one in five keeps within something. */
export const gridArb: fc.Arbitrary<GridTerms> = fc
  .record({
    panel: fc.record({ lengthMm: mm(150, 500), widthMm: mm(150, 400) }),
    pitchXMm: mm(40, 120),
    pitchYMm: mm(40, 120),
    holeDiameterMm: mm(1, 30),
    edgeMarginMm: mm(0, 30),
    keepOuts: keepOutsArb,
    counts: fc.record(
      { columns: fc.integer({ min: 1, max: 4 }), rows: fc.integer({ min: 1, max: 4 }) },
      { requiredKeys: [] },
    ),
    keepIn: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: keepInArb }),
    staggered: fc.boolean(),
    movement: fc.option(
      fc.record({
        fixedLineYMm: mm(0, 400),
        shrinkPct: fc.double({ min: 0, max: 5, noNaN: true }),
        swellPct: fc.double({ min: 0, max: 5, noNaN: true }),
      }),
    ),
  })
  .map(({ counts, movement, keepIn, ...grid }) => ({
    ...{ ...grid, ...counts, ...(movement && { movement }), ...(keepIn && { keepIn }) },
  }));

export const tooMany: GridTerms = {
  panel: { lengthMm: 150, widthMm: 150 },
  ...{
    pitchXMm: 50.5,
    pitchYMm: 40,
    columns: 4,
    rows: 1,
    holeDiameterMm: 1,
    edgeMarginMm: 24.5,
    keepOuts: [],
  },
};

export const narrow: GridTerms = {
  panel: { lengthMm: 150, widthMm: 150 },
  ...{ pitchXMm: 113, pitchYMm: 40, holeDiameterMm: 26, edgeMarginMm: 29, staggered: true },
  keepOuts: [
    {
      ...{ id: 'brace', shape: 'polygon', clearanceMm: 24.5, belongsTo: 'top' },
      corners: [
        { xMm: 150, yMm: 0 },
        { xMm: -77, yMm: 133.5 },
        { xMm: -2.5, yMm: -4.5 },
      ],
    },
  ],
};

export const roomy: GridTerms = {
  panel: { lengthMm: 440, widthMm: 275.5 },
  ...{ pitchXMm: 88.5, pitchYMm: 48, columns: 3, rows: 4, holeDiameterMm: 27, edgeMarginMm: 0 },
  keepOuts: [],
};

/** Between a rail on the slant and the edges there is a ridge, along which nothing changes for long. */
export const ridge: GridTerms = {
  panel: { lengthMm: 189.5, widthMm: 306 },
  ...{ pitchXMm: 40, pitchYMm: 40, columns: 2, rows: 3, staggered: true, holeDiameterMm: 1, edgeMarginMm: 0 },
  keepOuts: [
    {
      ...{ id: 'rail', shape: 'rectangle', clearanceMm: 1, belongsTo: 'top', angleDeg: -90 },
      ...{ xMm: 170.5, yMm: 211, lengthMm: 116, widthMm: 1 },
    },
  ],
};
