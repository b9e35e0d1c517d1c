import { stepTemplate, type TemplatePlan, type TemplateSteppingInput } from '@scantling/grids';
import { defineJob, mm, type Outcome } from '../calculator/calculation.ts';
import { drawPlacements } from '../template-placements/drawing.ts';
import { asking } from '../workers/ask.ts';

const MOST_HOLES = 600;

const count = (label: string, min: number) =>
  ({ kind: 'number', label, unit: '1', min, max: 60, integer: true }) as const;

const ask = asking<TemplateSteppingInput, TemplatePlan>(
  () => new Worker(new URL('../workers/step-template.ts', import.meta.url), { type: 'module' }),
);

const people = ({ column, row }: { column: number; row: number }) => `column ${column + 1}, row ${row + 1}`;

function inWords(input: TemplateSteppingInput, plan: TemplatePlan): Outcome {
  const { placements, leastPlacementCount, proven, unreached, why, worstHole, holes } = plan;
  return {
    figures: [
      { name: 'placements', label: 'Placements', value: placements.length, unit: '1' },
      {
        name: 'worstMm',
        label: 'Farthest that a hole may be off, all errors against it',
        value: worstHole?.worstCase.distanceMm ?? null,
        unit: 'mm',
      },
      {
        name: 'likelyMm',
        label: 'The same where errors vary independently',
        value: worstHole?.rootSumSquare.distanceMm ?? null,
        unit: 'mm',
      },
      { name: 'worstHole', label: 'At the hole', text: worstHole ? people(worstHole) : 'none' },
    ],
    verdict: {
      good: unreached.length === 0,
      says: why ?? `All ${holes.length} holes are reached.`,
    },
    drawing: drawPlacements(input, plan),
    tables: [
      {
        caption: 'One placement after the other',
        columns: [
          { label: '' },
          { label: 'Its front-left hole over' },
          { label: 'Pins in' },
          { label: 'Pins apart', unit: 'mm' },
          { label: 'Bores' },
          { label: 'Off by at most', unit: 'mm' },
        ],
        rows: placements.map(({ pins, pinSpanMm, bores, worstCase, ...corner }, i) => [
          i + 1,
          people(corner),
          pins.map(people).join('; ') || 'against the datum edges',
          pinSpanMm,
          bores.length,
          worstCase.distanceMm,
        ]),
      },
    ],
    reasons: [
      proven
        ? `Proven: no plan that bores these holes has fewer than ${placements.length} placements.`
        : `Proven: no plan has fewer than ${leastPlacementCount} placements; whether ${placements.length} is the least is not.`,
      'Columns count from the left, rows from the front. Each placement after the first stands on two pins in finished holes, as far apart as may be; its errors are those of these holes and some more.',
      'Clamp the template before boring, leave the pins in, and check the diagonals of the first holes: all others follow them (common practice, no source).',
    ],
    steps: [],
  };
}

export default defineJob({
  title: 'Stepping a drilling template',
  summary:
    'Where to put a template that is smaller than the grid, in the fewest placements, and how far off its errors may bring the last hole.',
  group: 'Holes',
  rules: [],
  fields: {
    columns: count('Columns of the grid', 1),
    rows: count('Rows of the grid', 1),
    templateColumns: count('Columns of the template', 1),
    templateRows: count('Rows of the template', 1),
    pitchXMm: mm('Pitch along the grain', 0.1, 10_000),
    pitchYMm: mm('Pitch across the grain', 0.1, 10_000),
    leastPinSpanMm: {
      ...mm('Pins apart at least', 0, 20_000),
      help: 'Pins far apart hold the template straighter.',
    },
    playInTemplateMm: { ...mm('Play of a pin in the template', 0, 10), help: 'Hole less pin, in diameter.' },
    playInHoleMm: mm('Play of a pin in a finished hole', 0, 10),
    datumErrorMm: {
      ...mm('Template off the datum edges by', 0, 10),
      help: 'At each of its three contacts, first placement.',
    },
    boringErrorMm: mm('Bored off the guide hole by', 0, 10),
    templatePitchErrorMm: { ...mm('Template’s pitch off by', 0, 10), help: 'For each hole.' },
  },
  first: {
    ...{
      columns: '13',
      rows: '6',
      templateColumns: '5',
      templateRows: '4',
      pitchXMm: '112',
      pitchYMm: '104',
    },
    ...{ leastPinSpanMm: '300', playInTemplateMm: '0.08', playInHoleMm: '0.15', datumErrorMm: '0.15' },
    ...{ boringErrorMm: '0.1', templatePitchErrorMm: '0.02' },
  },
  compute({ templateColumns, templateRows, ...grid }) {
    const question = { ...grid, template: { columns: templateColumns, rows: templateRows } };
    if (!(grid.columns * grid.rows <= MOST_HOLES))
      throw new RangeError(`This requires at most ${MOST_HOLES} holes, got ${grid.columns * grid.rows}`);
    if (!(templateColumns <= grid.columns && templateRows <= grid.rows))
      throw new RangeError('This requires a template no larger than the grid');
    // To prove that there is no shorter plan may take a while: an open page has it done by a worker.
    if (import.meta.env.SSR) return inWords(question, stepTemplate(question));
    return { figures: [], steps: [], later: async () => inWords(question, await ask(question)) };
  },
});
