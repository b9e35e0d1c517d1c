import type { TableRow } from '@scantling/rules';
import type { MetricHeadRow, MetricWoodScrewRow } from './rows.ts';
import { figureOf, mmFromIn, pitchFromThreads, type Screw, type ScrewHead } from './screw.ts';
import {
  coarseThreads,
  countersunkHeads,
  countersunkWoodScrews,
  crossRecessedWoodScrews,
  type FastenerTable,
  inchLagScrews,
  inchMachineScrews,
  inchWoodScrews,
  lagScrewTips,
  metricLagScrews,
  roundHeadWoodScrews,
  socketCountersunkHeads,
  woodScrewRoots,
} from './screw-tables.ts';

const unknown = {
  bodyDiameterMm: null,
  rootDiameterMm: null,
  pitchMm: null,
  tipLengthMm: null,
  tapDrillDiameterMm: null,
} as const;

const plainHead = { angleDeg: null, diameterMm: null, edgeDiameterMm: null, acrossFlatsMm: null } as const;

const inchSize = (printed: string) => (printed.startsWith('No.') ? printed : `${printed} in`);

function inchWood(): Screw[] {
  const table = inchWoodScrews;
  return table.rows.map((row) => {
    const root = woodScrewRoots.rows.find(({ gauge }) => gauge === row.gauge);
    return {
      ...unknown,
      name: `No. ${row.gauge} wood screw`,
      kind: 'wood screw',
      series: 'inch',
      size: `No. ${row.gauge}`,
      diameterMm: figureOf(table, row, 'diameterIn', mmFromIn),
      bodyDiameterMm: figureOf(table, row, 'bodyDiameterIn', mmFromIn),
      rootDiameterMm: root ? figureOf(woodScrewRoots, root, 'rootDiameterIn', mmFromIn) : null,
      pitchMm: figureOf(table, row, 'threadsPerIn', pitchFromThreads),
      heads: [
        {
          ...plainHead,
          shape: 'countersunk',
          angleDeg: 82,
          diameterMm: figureOf(table, row, 'headDiameterIn', mmFromIn),
          edgeDiameterMm: figureOf(table, row, 'headEdgeDiameterIn', mmFromIn),
          heightMm: figureOf(table, row, 'headHeightIn', mmFromIn),
        },
      ],
    };
  });
}

function inchMachine(): Screw[] {
  const table = inchMachineScrews;
  return table.rows.map((row) => ({
    ...unknown,
    name: `${inchSize(row.size)} machine screw`,
    kind: 'machine screw',
    series: 'inch',
    size: inchSize(row.size),
    diameterMm: figureOf(table, row, 'diameterIn', mmFromIn),
    pitchMm: figureOf(table, row, 'threadsPerIn', pitchFromThreads),
    heads: [
      {
        ...plainHead,
        shape: 'countersunk',
        angleDeg: 82,
        diameterMm: figureOf(table, row, 'headDiameterIn', mmFromIn),
        heightMm: figureOf(table, row, 'headHeightIn', mmFromIn),
      },
    ],
  }));
}

function inchLag(): Screw[] {
  const table = inchLagScrews;
  return table.rows.map((row) => {
    const tip = lagScrewTips.rows.find(({ size }) => size === row.size);
    return {
      ...unknown,
      name: `${inchSize(row.size)} lag screw`,
      kind: 'lag screw',
      series: 'inch',
      size: inchSize(row.size),
      diameterMm: figureOf(table, row, 'diameterIn', mmFromIn),
      rootDiameterMm: figureOf(table, row, 'rootDiameterIn', mmFromIn),
      pitchMm: figureOf(table, row, 'threadsPerIn', pitchFromThreads),
      tipLengthMm: tip ? figureOf(lagScrewTips, tip, 'tipLengthIn', mmFromIn) : null,
      heads: [],
    };
  });
}

function metricLag(): Screw[] {
  const table = metricLagScrews;
  return table.rows.map((row) => ({
    ...unknown,
    name: `${row.diameterMm} mm lag screw`,
    kind: 'lag screw',
    series: 'metric',
    size: `${row.diameterMm} mm`,
    diameterMm: figureOf(table, row, 'diameterMm'),
    rootDiameterMm: figureOf(table, row, 'rootDiameterMm'),
    pitchMm: figureOf(table, row, 'pitchMm'),
    heads: [
      {
        ...plainHead,
        shape: 'hexagon',
        acrossFlatsMm: figureOf(table, row, 'acrossFlatsMm'),
        heightMm: figureOf(table, row, 'headHeightMm'),
      },
    ],
  }));
}

function roundHead(table: FastenerTable<MetricWoodScrewRow>, row: MetricWoodScrewRow): ScrewHead {
  return {
    ...plainHead,
    shape: 'round',
    diameterMm: figureOf(table, row, 'headDiameterMm'),
    heightMm: figureOf(table, row, 'headHeightMm'),
  };
}

/** The rows of one size, each with its table. */
function rowsOf<Row extends TableRow>(
  tables: readonly FastenerTable<Row>[],
  isOfSize: (row: Row) => boolean,
) {
  return tables.flatMap((table) => table.rows.filter(isOfSize).map((row) => ({ table, row })));
}

function metricWood(): Screw[] {
  const threads = [roundHeadWoodScrews, crossRecessedWoodScrews];
  const diameters = new Set(threads.flatMap(({ rows }) => rows.map(({ diameterMm }) => diameterMm)));
  return [...diameters].flatMap((diameterMm) => {
    const rounds = rowsOf(threads, (row) => row.diameterMm === diameterMm);
    const flats = rowsOf([countersunkWoodScrews], (row) => row.diameterMm === diameterMm);
    return rounds.slice(0, 1).map(({ table, row }) => ({
      ...unknown,
      name: `${diameterMm} mm wood screw`,
      kind: 'wood screw',
      series: 'metric',
      size: `${diameterMm} mm`,
      diameterMm: figureOf(table, row, 'diameterMm'),
      rootDiameterMm: figureOf(table, row, 'rootDiameterMm'),
      pitchMm: figureOf(table, row, 'pitchMm'),
      heads: [
        ...flats.map(
          (flat): ScrewHead => ({
            ...plainHead,
            shape: 'countersunk',
            angleDeg: 90,
            edgeDiameterMm: figureOf(flat.table, flat.row, 'headDiameterMm'),
            heightMm: figureOf(flat.table, flat.row, 'headHeightMm'),
          }),
        ),
        ...rounds.map((round) => roundHead(round.table, round.row)),
      ],
    }));
  });
}

function metricHead(table: FastenerTable<MetricHeadRow>, row: MetricHeadRow): ScrewHead {
  return {
    ...plainHead,
    shape: 'countersunk',
    angleDeg: 90,
    diameterMm: figureOf(table, row, 'headDiameterMm'),
    edgeDiameterMm: figureOf(table, row, 'headEdgeDiameterMm'),
    heightMm: figureOf(table, row, 'headHeightMm'),
  };
}

function metricMachine(): Screw[] {
  const headTables = [countersunkHeads, socketCountersunkHeads];
  const sizes = new Set([coarseThreads, ...headTables].flatMap(({ rows }) => rows.map(({ size }) => size)));
  return [...sizes].flatMap((size) => {
    const [thread] = rowsOf([coarseThreads], (row) => row.size === size);
    const heads = rowsOf(headTables, (row) => row.size === size);
    const diameterMm = thread
      ? figureOf(thread.table, thread.row, 'diameterMm')
      : heads.map(({ table, row }) => figureOf(table, row, 'diameterMm'))[0];
    if (!diameterMm) return [];
    return {
      ...unknown,
      name: `${size} machine screw`,
      kind: 'machine screw',
      series: 'metric',
      size,
      diameterMm,
      pitchMm: thread ? figureOf(thread.table, thread.row, 'pitchMm') : null,
      tapDrillDiameterMm: thread ? figureOf(thread.table, thread.row, 'tapDrillDiameterMm') : null,
      heads: heads.map(({ table, row }) => metricHead(table, row)),
    } as const;
  });
}

/** Every screw of the tables, those of a kind and series by their diameter. */
export const joinScrews = (): readonly Screw[] =>
  [inchWood, metricWood, inchLag, metricLag, inchMachine, metricMachine].flatMap((join) =>
    join().sort((a, b) => a.diameterMm.value - b.diameterMm.value),
  );
