import type { AccuracyTable, Deviation } from '../../../tests-shared/src/accuracy.ts';
import {
  countersinkDepth,
  countersunkHeads,
  inchMachineScrews,
  inchWoodScrews,
  type MetricHeadRow,
  socketCountersunkHeads,
  woodScrewDiameter,
} from '../src/index.ts';

const height = (headMm: number, shankMm: number, includedAngleDeg: number) =>
  countersinkDepth({ countersinkDiameterMm: headMm, holeDiameterMm: shankMm, includedAngleDeg }).coneDepthMm;

const metricHeight = (row: MetricHeadRow): Deviation => ({
  printed: row.headHeightMm,
  ours: height(row.headDiameterMm, row.diameterMm, 90),
  known: 0.005,
  confirmed: row.confirmed,
});

const inchHeight = (row: {
  readonly headHeightIn: number;
  readonly headDiameterIn: number;
  readonly diameterIn: number;
  readonly confirmed: Deviation['confirmed'];
}): Deviation => ({
  printed: row.headHeightIn,
  ours: height(row.headDiameterIn, row.diameterIn, 82),
  known: 0.0005,
  confirmed: row.confirmed,
});

const tables: readonly AccuracyTable[] = [
  {
    title: '`woodScrewDiameter`: ASME B18.6.1, basic diameters',
    unit: 'in',
    decimals: 4,
    deviations: inchWoodScrews.rows.map(({ gauge, diameterIn, confirmed }) => ({
      printed: diameterIn,
      ours: woodScrewDiameter({ gauge }).diameterMm / 25.4,
      known: 0.0005,
      confirmed,
    })),
  },
  {
    title: '`countersinkDepth`: ISO 7721, head heights',
    unit: 'mm',
    decimals: 3,
    deviations: countersunkHeads.rows.map(metricHeight),
  },
  {
    title: '`countersinkDepth`: ISO 10642, head heights',
    unit: 'mm',
    decimals: 3,
    remark: 'Two rows of the data set contradict themselves; each has an erratum.',
    deviations: socketCountersunkHeads.rows.map(metricHeight),
  },
  {
    title: '`countersinkDepth`: ASME B18.6.1, heights of flat heads of wood screws',
    unit: 'in',
    decimals: 4,
    remark:
      'The printed heights are not those of a cone from head to shank, which is what we reckon; one is that of another screw. Measure the screw in hand.',
    deviations: inchWoodScrews.rows.map(inchHeight),
  },
  {
    title: '`countersinkDepth`: ASME B18.6.3, heights of flat heads of machine screws',
    unit: 'in',
    decimals: 4,
    remark:
      'The printed heights go down to the least diameter of the thread; ours is the cone from head to shank. Measure the screw in hand.',
    deviations: inchMachineScrews.rows.map(inchHeight),
  },
];

export default tables;
