import { expectedValue } from '@scantling/rules';
import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import { boardFeet, rectangularSection } from '../src/index.ts';
import { printedLumberScale, scaleLengthsFt } from '../test/printed-lumber-scale.ts';
import { printedSections } from '../test/printed-sections.ts';

const IN = 25.4;

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
];

export default tables;
