import { boardFeet, surfaceMeasure, tallyLumber } from '@scantling/stock';
import { defineJob } from '../calculator/calculation.ts';

export default defineJob({
  title: 'Board feet of a stack',
  summary:
    'What a stack of boards comes to as it is sold: by surface measure, by nominal sizes, and in cubic metres.',
  group: 'Measure and buy',
  rules: ['stock/board-feet', 'stock/surface-measure'],
  fields: {
    boards: {
      kind: 'rows',
      label: 'Boards, each size once',
      row: 'Size',
      minRows: 1,
      maxRows: 30,
      fields: {
        thicknessMm: {
          kind: 'number',
          label: 'Thickness',
          unit: 'mm',
          min: 1,
          max: 1000,
          help: 'Rough or nominal.',
        },
        widthMm: { kind: 'number', label: 'Width', unit: 'mm', min: 1, max: 5000 },
        lengthMm: { kind: 'number', label: 'Length', unit: 'mm', min: 1, max: 30_000 },
        count: { kind: 'number', label: 'How many', unit: '1', min: 1, max: 10_000, integer: true },
      },
    },
    boardFtPrice: {
      kind: 'number',
      label: 'Price of a board foot',
      unit: '¤',
      min: 0,
      max: 100_000,
      blank: true,
      help: 'In any currency; may be left blank.',
    },
    extraPct: {
      kind: 'number',
      label: 'Bought on top for waste',
      unit: '%',
      min: 0,
      max: 200,
      help: 'Of what these boards come to.',
    },
  },
  first: {
    boards: [
      { thicknessMm: '2 in', widthMm: '9 in', lengthMm: '10 ft', count: '2' },
      { thicknessMm: '1 in', widthMm: '6 in', lengthMm: '8 ft', count: '5' },
    ],
    boardFtPrice: '9.50',
    extraPct: '20',
  },
  compute({ boards, boardFtPrice, extraPct }) {
    const tally = tallyLumber({ boards });
    const bought = tally.soldBoardFt * (1 + extraPct / 100);
    return {
      figures: [
        { name: 'soldBoardFt', label: 'As hardwood is sold', value: tally.soldBoardFt, unit: 'bd ft' },
        { name: 'boughtBoardFt', label: 'To buy, with waste', value: bought, unit: 'bd ft' },
        ...(boardFtPrice === null
          ? []
          : [{ name: 'totalPrice', label: 'Price of it', value: bought * boardFtPrice, unit: '¤' as const }]),
        { name: 'nominalBoardFt', label: 'By nominal sizes', value: tally.nominalBoardFt, unit: 'bd ft' },
        { name: 'volumeM3', label: 'Wood that is there', value: tally.volumeM3, unit: 'm³' },
      ],
      tables: [
        {
          caption: 'Size by size',
          columns: [
            { label: 'Thickness', unit: 'mm' },
            { label: 'Width', unit: 'mm' },
            { label: 'Length', unit: 'mm' },
            { label: 'How many' },
            { label: 'Surface', unit: 'ft²' },
            { label: 'As sold', unit: 'bd ft' },
          ],
          rows: tally.lines.map((line) => [
            line.thicknessMm,
            line.widthMm,
            line.lengthMm,
            line.count,
            line.surfaceFt2,
            line.soldBoardFt,
          ]),
        },
      ],
      reasons: [
        'Hardwood is tallied in whole square feet of surface: of boards that come to a half, the first goes up and the next down.',
        'Thinner than an inch counts as an inch in board feet, and as what it is in cubic metres.',
      ],
      steps: boards.flatMap(({ thicknessMm, widthMm, lengthMm }, i) => [
        {
          what: `Surface of one board of size ${i + 1}`,
          rule: 'stock/surface-measure',
          given: { widthMm, lengthMm },
          gives: surfaceMeasure({ widthMm, lengthMm }),
        },
        {
          what: `Board feet of one board of size ${i + 1}, by its nominal size`,
          rule: 'stock/board-feet',
          given: { thicknessMm, widthMm, lengthMm },
          gives: boardFeet({ thicknessMm, widthMm, lengthMm }),
        },
      ]),
    };
  },
});
