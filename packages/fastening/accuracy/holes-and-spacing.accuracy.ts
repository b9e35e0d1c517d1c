import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import { pulledScrewSpacing, screwSpacing, woodScrewLeadHole } from '../src/index.ts';

/**
 * Thickness of a member and the thickest nail or screw in its edge, mm: driven, predrilled, pulled. The table's last row,
 * 75 mm, is left out: it stops at the 12 mm that the table is for.
 */
const edgewise = [
  [27, 1.9, 4.5, 3.4],
  [33, 2.4, 5.5, 4.1],
  [39, 2.8, 6.5, 4.9],
  [45, 3.2, 7.5, 5.6],
  [51, 3.6, 8.5, 6.4],
  [57, 4.1, 9.5, 7.1],
  [63, 4.5, 10.5, 7.9],
  [69, 4.9, 11.5, 8.6],
] as const;

/** The thickest that has its edge distance on both sides, where that is so many times the diameter. */
const thickest = (thicknessMm: number, edgeMm: number, diameterMm: number) =>
  (thicknessMm * diameterMm) / (2 * edgeMm);

const ofMm = 1;
const lateral = { threadDiameterMm: ofMm, loadToGrainDeg: 0 } as const;
const drivenMm = screwSpacing({ ...lateral, densityKgPerM3: 480, hole: 'none' }).plainEdgeMm;
const drilledMm = screwSpacing({ ...lateral, densityKgPerM3: 480, hole: 'predrilled' }).plainEdgeMm;
const pulledMm = pulledScrewSpacing({ threadDiameterMm: ofMm }).edgeMm;

/** Gauge, root diameter, and drills for softwood and hardwood by 70 and 90 % of it, in, drills in 64ths. */
const drills = [
  [2, 0.054, 2, 3],
  [4, 0.075, 3, 4],
  [6, 0.094, 4, 5],
  [8, 0.112, 5, 6],
  [10, 0.13, 6, 7],
  [12, 0.148, 7, 8],
  [14, 0.165, 7, 9],
  [16, 0.184, 9, 10],
] as const;

const holeIn = (rootIn: number, ovendrySpecificGravityRatio: number) => {
  const hole = woodScrewLeadHole({
    rootDiameterMm: rootIn * 25.4,
    shankDiameterMm: rootIn * 25.4 * 1.5,
    ovendrySpecificGravityRatio,
    load: 'withdrawal',
  });
  return (hole.threadHoleMm ?? Number.NaN) / 25.4;
};

const tables: readonly AccuracyTable[] = [
  {
    title: '`screwSpacing`, `pulledScrewSpacing`: LVL Handbook, Table 5.2, thickest screw in an edge',
    unit: 'mm',
    decimals: 3,
    deviations: edgewise.flatMap(([thicknessMm, driven, drilled, pulled]) =>
      (
        [
          [driven, drivenMm],
          [drilled, drilledMm],
          [pulled, pulledMm],
        ] as const
      ).map(([printed, edgeMm]) => ({
        printed,
        ours: thickest(thicknessMm, edgeMm, ofMm),
        known: 0.05,
        confirmed: 'text' as const,
      })),
    ),
  },
  {
    title: '`woodScrewLeadHole`: drills of a table by the American rule, to 1/64 in',
    unit: 'in',
    decimals: 4,
    remark: 'The table names some drill that is not the nearest 64th to what the rule gives.',
    deviations: drills.flatMap(([, rootIn, soft, hard]) =>
      (
        [
          [soft, 0.55],
          [hard, 0.66],
        ] as const
      ).map(([sixtyFourths, gravity]) => ({
        printed: sixtyFourths / 64,
        ours: holeIn(rootIn, gravity),
        known: 1 / 128,
        confirmed: 'text' as const,
      })),
    ),
  },
];

export default tables;
