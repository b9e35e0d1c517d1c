import { clearanceOverSeasons, holeCount } from '@scantling/grids';
import { defineJob, mm, type Outcome, type Say } from '../calculator/calculation.ts';
import { drawGrid, letterOf } from '../hole-grid/drawing.ts';
import {
  type Grid,
  layOut,
  type Neighbour,
  overSeasons,
  type Place,
  roomAfter,
} from '../hole-grid/layout.ts';

const MOST_HOLES = 1500;
const MOST_LINES = 60;

const count = (label: string) =>
  ({
    kind: 'number',
    label,
    unit: '1',
    min: 1,
    max: 200,
    integer: true,
    blank: true,
  }) as const;

/** The answer where the grid begins at a certain hole. */
function outcomeAt(grid: Grid, first: Place, draggable: boolean, say: Say): Outcome {
  const { lengthMm, pitchXMm, pitchYMm, members } = grid;
  const laidOut = layOut(grid, first);
  const { columns, rows, holes } = laidOut;
  const nameOf = ({ to }: Neighbour) =>
    typeof to === 'string' ? to : `${letterOf(to)} ${members[to]?.name}`.trim();
  const kept = holes.filter(({ conflicts }) => conflicts.length === 0);
  const conflicts = holes.flatMap((hole) => hole.conflicts.map((with_) => ({ hole, with_ })));
  const tightest = kept.reduce(
    (a, b) => (a && a.nearest.clearanceMm <= b.nearest.clearanceMm ? a : b),
    kept[0],
  );
  const where = tightest && `column ${tightest.column}, row ${tightest.row}`;
  const under = tightest && members[Number(tightest.nearest.to)];
  const room = roomAfter(grid, lengthMm, first.xMm, pitchXMm);
  const seasons = under && overSeasons(grid, tightest, under);
  const lost = holes.length - kept.length;
  return {
    figures: [
      { name: 'kept', label: 'Holes to bore', value: kept.length, unit: '1' },
      {
        name: 'clearanceMm',
        label: 'Least clearance of a hole’s rim, all year',
        value: tightest ? tightest.nearest.clearanceMm : null,
        unit: 'mm',
      },
      {
        name: 'tightest',
        label: 'There',
        text: tightest ? `${where}, to ${nameOf(tightest.nearest)}` : 'no hole',
      },
    ],
    verdict: {
      good: lost === 0,
      says: `${lost ? `${lost} of ${columns} × ${rows} holes are lost` : `All ${columns} × ${rows} holes stay clear all year`}.`,
    },
    drawing: drawGrid(grid, laidOut, tightest, draggable, say),
    tables: [
      {
        caption: 'The base beneath',
        columns: [
          { label: '' },
          { label: 'Member' },
          { label: 'Asks for', unit: 'mm' as const },
          { label: 'Holes lost' },
        ],
        rows: members.map(({ name, clearanceMm }, i) => [
          letterOf(i),
          name,
          clearanceMm,
          conflicts.filter(({ with_ }) => with_.to === i).length,
        ]),
      },
      {
        caption: conflicts.length > MOST_LINES ? `Holes lost: the first ${MOST_LINES}` : 'Holes lost',
        columns: [
          { label: 'Column' },
          { label: 'Row' },
          { label: 'Too near to' },
          { label: 'There is', unit: 'mm' as const },
          { label: 'Needs', unit: 'mm' as const },
        ],
        rows: conflicts
          .slice(0, MOST_LINES)
          .map(({ hole, with_ }) => [
            hole.column,
            hole.row,
            nameOf(with_),
            with_.clearanceMm,
            with_.neededMm,
          ]),
      },
      {
        caption: 'Centre lines from the front-left corner',
        columns: [
          { label: '' },
          { label: 'Column', unit: 'mm' as const },
          { label: 'Row', unit: 'mm' as const },
        ],
        rows: Array.from({ length: Math.max(columns, rows) }, (_, i) => [
          i + 1,
          i < columns ? first.xMm + i * pitchXMm : null,
          i < rows ? first.yMm + i * pitchYMm : null,
        ]),
      },
    ].filter((table) => table.rows.length > 0),
    reasons: [
      'Columns count from the left, rows from the front. A clearance below 0 is an overlap.',
      'A hole moves with the top, away from the line where that is held and towards it; clearances are those of the worst time of the year.',
    ],
    steps: [
      ...(grid.columns === null
        ? [{ what: 'Columns that fit', rule: 'grids/hole-count', given: room, gives: holeCount(room) }]
        : []),
      ...(seasons
        ? [
            {
              what: `Tightest hole: ${where}`,
              rule: 'grids/clearance-over-seasons',
              given: seasons,
              gives: clearanceOverSeasons(seasons),
            },
          ]
        : []),
    ],
  };
}

export default defineJob({
  title: 'Hole grid on a base',
  summary:
    'Which holes of a grid clear the rails and legs beneath a solid top, all year. Drag the base or the first hole, or have the best place found.',
  group: 'Holes',
  rules: ['grids/hole-count', 'grids/clearance-over-seasons'],
  cautions: ['Before you drill, mark on the top itself where rails, legs, screws and cables are beneath it.'],
  fields: {
    lengthMm: mm('Top, along the grain', 1, 20_000),
    widthMm: mm('Top, across the grain', 1, 20_000),
    holeDiameterMm: mm('Diameter of the holes', 0.1, 1000),
    edgeMarginMm: mm('Least from rim to edge', 0, 20_000),
    pitchXMm: mm('Pitch along the grain', 1, 10_000),
    pitchYMm: mm('Pitch across the grain', 1, 10_000),
    columns: { ...count('Columns'), help: 'Left blank, as many as fit.' },
    rows: { ...count('Rows'), help: 'Left blank, as many as fit.' },
    place: {
      kind: 'choice',
      label: 'The first hole is',
      options: { mine: 'where I put it', best: 'at the best place there is' },
    },
    firstXMm: mm('First hole, from the left', 0, 20_000),
    firstYMm: mm('First hole, from the front', 0, 20_000),
    swellMm: { ...mm('Top swells by at most', 0, 4000), help: 'Its whole width, after the holes are bored.' },
    shrinkMm: mm('Top shrinks by at most', 0, 4000),
    heldAtMm: {
      ...mm('Top is held at', 0, 20_000),
      help: 'From the front: the line that stays where it is.',
    },
    members: {
      kind: 'rows',
      label: 'The base: rails, legs, plates',
      row: 'Member',
      help: 'Its front-left corner from that of the top, seen from above.',
      minRows: 0,
      maxRows: 20,
      fields: {
        name: { kind: 'text', label: 'Name', longest: 40 },
        xMm: mm('From the left', -20_000, 20_000),
        yMm: mm('From the front', -20_000, 20_000),
        lengthMm: mm('Along the grain', 0, 20_000),
        widthMm: mm('Across the grain', 0, 20_000),
        clearanceMm: mm('Least from a rim', 0, 1000),
      },
    },
  },
  first: {
    ...{ lengthMm: '58 1/4 in', widthMm: '640', holeDiameterMm: '5/8 in', edgeMarginMm: '40' },
    ...{ pitchXMm: '112', pitchYMm: '104', columns: '', rows: '', place: 'mine' },
    ...{ firstXMm: '68', firstYMm: '56', swellMm: '7', shrinkMm: '4', heldAtMm: '320' },
    members: [
      { name: 'left leg frame', xMm: '230', yMm: '40', lengthMm: '40', widthMm: '560', clearanceMm: '6' },
      { name: 'right leg frame', xMm: '1210', yMm: '40', lengthMm: '40', widthMm: '560', clearanceMm: '6' },
      { name: 'front rail', xMm: '270', yMm: '95', lengthMm: '940', widthMm: '40', clearanceMm: '6' },
      { name: 'back rail', xMm: '270', yMm: '505', lengthMm: '940', widthMm: '40', clearanceMm: '6' },
    ],
  },
  compute(values, say) {
    const { lengthMm, widthMm, holeDiameterMm, pitchXMm, pitchYMm, firstXMm, firstYMm } = values;
    const { swellMm, shrinkMm, columns, rows } = values;
    const require = (ok: boolean, what: string) => {
      if (!ok) throw new RangeError(`This requires ${what}`);
    };
    require(firstXMm <= lengthMm && firstYMm <= widthMm, 'a first hole on the top');
    require(pitchXMm >= holeDiameterMm && pitchYMm >= holeDiameterMm, 'holes that do not overlap');
    require(Math.max(swellMm, shrinkMm) <
      widthMm / 5, `movement below a fifth of the width, ${say(widthMm / 5)}`);
    const places = (columns ?? lengthMm / pitchXMm) * (rows ?? widthMm / pitchYMm);
    require(places <= MOST_HOLES, `at most ${MOST_HOLES} holes`);
    const grid: Grid = {
      ...values,
      fixedLineYMm: values.heldAtMm,
      swellPct: (100 * swellMm) / widthMm,
      shrinkPct: (100 * shrinkMm) / widthMm,
    };
    const at = (first: Place) => outcomeAt(grid, first, values.place === 'mine', say);
    const outcome = at({ xMm: firstXMm, yMm: firstYMm });
    if (values.place === 'mine') return outcome;
    return {
      ...outcome,
      notes: ['Looking for the best place…'],
      later: async () => (await import('../hole-grid/best-place.ts')).bestPlace(grid, outcome, at, say),
    };
  },
});
