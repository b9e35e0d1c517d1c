import { sandingSequence } from '@scantling/finishing';
import { defineJob } from '../calculator/calculation.ts';

export default defineJob({
  title: 'Abrasive sequence',
  summary:
    'Which grades to sand with, from the coarsest to the last: as few as can be, with no step too large.',
  group: 'Finish',
  rules: [],
  fields: {
    from: {
      kind: 'text',
      label: 'Begin with',
      longest: 20,
      help: 'A grade with its list: P80, ANSI 80, JIS 80; 15 µm.',
    },
    to: { kind: 'text', label: 'End with', longest: 20 },
    onHand: {
      kind: 'text',
      label: 'Grades on hand in between',
      longest: 300,
      help: 'With commas between them, in any order.',
    },
    largestSizeRatio: {
      kind: 'number',
      label: 'Largest step',
      unit: '1',
      min: 1.05,
      max: 10,
      help: 'How many times the grain of the next grade; 1.5 to 2 is common practice.',
    },
    dampWipe: {
      kind: 'choice',
      label: 'Wipe with a damp cloth, and let dry',
      options: {
        never: 'never',
        beforeLastGrade: 'before the last grade',
        betweenGrades: 'between grades',
      },
    },
  },
  first: {
    from: 'P80',
    to: 'P220',
    onHand: 'P100, P120, P150, P180',
    largestSizeRatio: '1.7',
    dampWipe: 'beforeLastGrade',
  },
  compute({ onHand, ...asked }) {
    const grades = onHand.split(/[,;]/).flatMap((grade) => grade.trim() || []);
    const { passes, gaps, cautions } = sandingSequence({ ...asked, onHand: grades });
    if (!passes) {
      const open = gaps.map(({ fromGrade, toGrade, sizeRatio, buy }) =>
        [
          `From ${fromGrade} to ${toGrade} grains are ${sizeRatio.toFixed(2)} times as fine, a step too large.`,
          buy ? `Buy ${buy.join(', ')}.` : 'No grade of that list closes it.',
        ].join(' '),
      );
      return {
        verdict: { good: false, says: 'What is on hand leaves a step too large.' },
        figures: [
          { name: 'gaps', label: 'Too large', text: `${gaps.length} ${gaps.length > 1 ? 'steps' : 'step'}` },
        ],
        reasons: open,
        cautions,
        steps: [],
      };
    }
    return {
      figures: [{ name: 'passes', label: 'Sand with', text: passes.map(({ grade }) => grade).join(', ') }],
      tables: [
        {
          caption: 'Pass by pass',
          columns: [
            { label: 'Grade' },
            { label: 'Median grain', unit: 'µm' },
            { label: 'Times the next' },
            { label: 'Scratches left, of the first pass', unit: '%' },
            { label: 'Before it' },
          ],
          rows: passes.map(({ grade, medianUm, scratchesPct, wipeBefore }, i) => [
            grade,
            medianUm,
            passes[i + 1]?.sizeRatio ?? null,
            scratchesPct,
            wipeBefore ? 'wipe damp, let dry' : '',
          ]),
        },
      ],
      reasons: [
        'As few as can be: from each grade the finest on hand that the step allows. Whoever steps less far has the same grades before them, and further to go.',
        'Scratches are taken in proportion to the grain, as measured on wood from P60 to P150; finer grades leave more than this, for wood has pores of its own.',
        'Grades are compared by the median size of their grains: the same number is not the same size in every list.',
      ],
      cautions,
      steps: [],
    };
  },
});
