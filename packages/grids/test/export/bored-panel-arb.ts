import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import type { BoredHole, BoredPanel } from '../../src/export.ts';
import { shapeArb } from '../shapes.ts';

const place = numberArb({ min: -20_000, max: 20_000 });
/** As a plan has them and as nobody has them: what XML, CSV and comments set apart, other scripts, broken halves. */
const text = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: 'binary' }),
  fc.constantFrom(
    'Bindery bench',
    'a "b", c',
    '<b>&amp;</b>',
    'rail\r\nleg',
    '(a) b)',
    'Söhne ½ 台',
    '\ud800',
    '',
  ),
);

const hole = (lengthMm: number, widthMm: number): fc.Arbitrary<BoredHole> =>
  fc.record(
    {
      xMm: numberArb({ min: 0, max: lengthMm }),
      yMm: numberArb({ min: 0, max: widthMm }),
      diameterMm: numberArb({ min: 0.1, max: 1000 }),
      row: fc.nat(1000),
      column: fc.nat(1000),
      clearanceMm: place,
      nearest: text,
    },
    { requiredKeys: ['xMm', 'yMm', 'diameterMm'], noNullPrototype: true },
  );

/** Panels anywhere within the limits, with holes anywhere on them. */
export const boredPanels: fc.Arbitrary<BoredPanel> = fc
  .record({ lengthMm: numberArb({ min: 1, max: 20_000 }), widthMm: numberArb({ min: 1, max: 20_000 }) })
  .chain((panel) =>
    fc.record(
      {
        title: text,
        panel: fc.constant(panel),
        holes: fc.array(hole(panel.lengthMm, panel.widthMm), { maxLength: 8 }),
        keepOuts: fc.array(
          fc.tuple(text, shapeArb).map(([id, shape]) => ({ ...shape, id })),
          { maxLength: 4 },
        ),
      },
      { requiredKeys: ['panel', 'holes'], noNullPrototype: true },
    ),
  );
