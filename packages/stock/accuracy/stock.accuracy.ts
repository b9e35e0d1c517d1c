import { expectedValue } from '@scantling/rules';
import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import { boardFeet, rectangularSection, topSag } from '../src/index.ts';
import { printedLumberScale, scaleLengthsFt } from '../test/printed-lumber-scale.ts';
import { printedSections } from '../test/printed-sections.ts';

const IN = 25.4;

/** Loads of 1 N in all on a span of 1 m, and the constants that the table prints for them. */
const resting = [
  { pointLoads: [], spreadLoadNPerMm: 0.001, bending: 5 / 384, shear: 1 / 8 },
  { pointLoads: [0.5], spreadLoadNPerMm: 0, bending: 1 / 48, shear: 1 / 4 },
  { pointLoads: [0.25, 0.75], spreadLoadNPerMm: 0, bending: 11 / 768, shear: 1 / 8 },
];

/** What the sag of a top has of bending and of shear, found by doubling its modulus of elasticity. */
function constantsOf({ pointLoads, spreadLoadNPerMm }: (typeof resting)[number]) {
  const [modulusOfElasticityMPa, shearModulusMPa] = [1000, 500];
  const section = { widthMm: 100, depthMm: 100 };
  const { secondMomentMm4, shearAreaMm2 } = rectangularSection({ ...section, holesMm: 0 });
  const sagOf = (modulusMPa: number) =>
    topSag({
      ...{ lengthMm: 1000, leftSupportMm: 0, rightSupportMm: 1000, holeRows: [], ...section },
      ...{ modulusOfElasticityMPa: modulusMPa, shearModulusMPa, spreadLoadNPerMm },
      pointLoads: pointLoads.map((share) => ({ atMm: share * 1000, forceN: 1 / pointLoads.length })),
    }).midspanSagMm;
  const bendingMm = 2 * (sagOf(modulusOfElasticityMPa) - sagOf(2 * modulusOfElasticityMPa));
  const shearMm = sagOf(modulusOfElasticityMPa) - bendingMm;
  return {
    bending: (bendingMm * modulusOfElasticityMPa * secondMomentMm4) / 1000 ** 3,
    shear: (shearMm * shearModulusMPa * shearAreaMm2) / 1000,
  };
}

const tables: readonly AccuracyTable[] = [
  {
    title: '`boardFeet`: a lumber scale in tenths, 4 × 4 to 12 × 12 in',
    unit: 'bd ft',
    decimals: 3,
    deviations: printedLumberScale.flatMap(([thicknessIn, widthIn, boardFt]) =>
      boardFt.map((printed, i) => ({
        printed,
        ours: boardFeet({
          thicknessMm: thicknessIn * IN,
          widthMm: widthIn * IN,
          lengthMm: (scaleLengthsFt[i] as number) * 12 * IN,
        }).volumeBoardFt,
        known: 0.05,
        confirmed: 'text' as const,
      })),
    ),
  },
  {
    title: '`rectangularSection`: moments of inertia of dressed sizes, to two to four digits',
    unit: 'in⁴',
    decimals: 3,
    deviations: printedSections.map(([widthIn, depthIn, inertia]) => {
      const { value, tolerance } = expectedValue(inertia);
      const section = { widthMm: widthIn * IN, depthMm: depthIn * IN, holesMm: 0 };
      return {
        printed: value,
        ours: rectangularSection(section).secondMomentMm4 / IN ** 4,
        known: tolerance,
        confirmed: 'text' as const,
      };
    }),
  },
  {
    title: '`topSag`: k_b and k_s of Wood Handbook, Table 9-1, ends resting, which are fractions',
    unit: '',
    decimals: 9,
    deviations: resting.flatMap((printed) => {
      const ours = constantsOf(printed);
      const known = { known: 1e-9, confirmed: 'text' as const };
      return [
        { printed: printed.bending, ours: ours.bending, ...known },
        { printed: printed.shear, ours: ours.shear, ...known },
      ];
    }),
  },
];

export default tables;
