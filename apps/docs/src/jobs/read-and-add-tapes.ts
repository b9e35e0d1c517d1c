import { requireThat } from '@scantling/rules';
import {
  type Denominator,
  equalSpacing,
  formatLength,
  nearestMark,
  stackUp,
  steppingError,
  sumOfReadings,
} from '@scantling/units';
import { defineJob, type Outcome, type Step } from '../calculator/calculation.ts';
import { printLength } from '../calculator/lengths.ts';
import { drawTapes } from '../drawing/tapes.ts';

/** Less than this is rounding, not length. */
const NANOMETRE = 1e-6;

/** Does not part a mark from its unit where a line ends. */
const SPACE = '\u00a0';

/** A mark, and how far beyond it or before it the length ends. */
function withOffset(mark: string, offsetMm: number): string {
  if (Math.abs(offsetMm) < NANOMETRE) return mark;
  return `${mark} ${offsetMm < 0 ? '−' : '+'}${SPACE}${Math.abs(offsetMm).toFixed(2)}${SPACE}mm`;
}

function onInchTape(lengthMm: number, denominator: Denominator): string {
  const { markMm, offsetMm } = nearestMark({ lengthMm, denominator });
  const [inches = '', feet] = (['in', 'ft-in'] as const).map((unit) =>
    formatLength(markMm, { unit, denominator }).replace('-', '−').replaceAll(' ', SPACE),
  );
  return withOffset(inches === feet ? inches : `${inches} (${feet})`, offsetMm);
}

function onMetricTape(lengthMm: number, stepMm: number): string {
  const { markMm, offsetMm } = nearestMark({ lengthMm, stepMm });
  return withOffset(printLength(markMm, 'mm', true).replace(' ', SPACE), offsetMm);
}

export default defineJob({
  title: 'Read and add tapes',
  summary:
    'Readings from any tape, in inches, feet or millimetres: each one said on both tapes, their sum, what it may be off by, and the sum divided into equal parts.',
  group: 'Measure and buy',
  rules: ['units/sum-of-readings', 'units/stack-up', 'units/equal-spacing', 'units/stepping-error'],
  fields: {
    readings: {
      kind: 'rows',
      label: 'Readings',
      row: 'Reading',
      help: 'Each as it stands on its tape. Held at: 0, or the mark that you held at the start because the hook is worn, as 1 in or 100 mm.',
      minRows: 1,
      maxRows: 30,
      fields: {
        readingMm: { kind: 'number', label: 'Reads', unit: 'mm', min: 0, max: 30_000 },
        heldAtMm: { kind: 'number', label: 'Held at', unit: 'mm', min: 0, max: 30_000 },
        counts: { kind: 'choice', label: 'Counts', options: { added: 'added', less: 'taken away' } },
      },
    },
    offMm: {
      kind: 'number',
      label: 'Each may be off by',
      unit: 'mm',
      min: 0,
      max: 100,
      help: 'Either way, beginning and end of the tape together.',
    },
    parts: {
      kind: 'number',
      label: 'Equal parts of the sum',
      unit: '1',
      min: 1,
      max: 100,
      integer: true,
    },
    inchMarks: {
      kind: 'choice',
      label: 'Finest marks of the inch tape',
      options: { 8: '1/8 in', 16: '1/16 in', 32: '1/32 in', 64: '1/64 in' },
    },
    metricMarks: {
      kind: 'choice',
      label: 'Finest marks of the metric tape',
      options: { 1: '1 mm', 0.5: '0.5 mm' },
    },
  },
  first: {
    readings: [
      { readingMm: '58 1/4 in', heldAtMm: '0', counts: 'added' },
      { readingMm: '68 mm', heldAtMm: '0', counts: 'less' },
      { readingMm: '3 11/16 in', heldAtMm: '1 in', counts: 'less' },
    ],
    offMm: '0.5',
    parts: '12',
    inchMarks: '32',
    metricMarks: '0.5',
  },
  compute({ readings, offMm, parts, inchMarks, metricMarks }, say): Outcome {
    const denominator = Number(inchMarks) as Denominator;
    const stepMm = Number(metricMarks);
    const inchStepMm = 25.4 / denominator;
    const onBoth = (lengthMm: number) => [onInchTape(lengthMm, denominator), onMetricTape(lengthMm, stepMm)];

    const distancesMm = readings.map(({ readingMm, heldAtMm }, i) => {
      requireThat(
        'reading',
        readingMm >= heldAtMm,
        `reading ${i + 1} to lie beyond the mark that its tape is held at`,
      );
      return sumOfReadings({ readingsMm: [readingMm, -heldAtMm] }).sumMm;
    });
    const lengthsMm = distancesMm.map((mm, i) => (readings[i]?.counts === 'less' ? 0 - mm : mm));
    const sum = { readingsMm: lengthsMm };
    const { sumMm } = sumOfReadings(sum);
    const stack = { lengthsMm, tolerancesMm: lengthsMm.map(() => offMm) };
    const { worstCaseMm, rootSumSquareMm } = stackUp(stack);
    const steps: Step[] = [
      { what: 'Sum', rule: 'units/sum-of-readings', given: sum, gives: { sumMm } },
      {
        what: 'What the sum may be off by',
        rule: 'units/stack-up',
        given: stack,
        gives: stackUp(stack),
      },
    ];

    const spacing = { startMm: 0, lengthMm: Math.max(0, sumMm), spaces: parts, ends: 'open' as const };
    const { pitchMm, positionsMm } = equalSpacing(spacing);
    const divided = sumMm > 0 && parts > 1;
    const reasons = [
      'Likely means by root-sum-square: for readings that err each by itself. Where one worn hook or one wrong tape made them all, the whole counts.',
    ];
    if (divided) {
      steps.push({
        what: `${parts} equal parts`,
        rule: 'units/equal-spacing',
        given: spacing,
        gives: { pitchMm, positionsMm },
      });
    }
    if (divided && pitchMm <= 10_000 && pitchMm >= 0.001) {
      const worst = [inchStepMm, stepMm].map((tapeStepMm) => {
        const given = { pitchMm, marks: parts - 1, tapeStepMm };
        const gives = steppingError(given);
        const what = `Stepping off, with marks of ${say(tapeStepMm)}`;
        steps.push({ what, rule: 'units/stepping-error', given, gives });
        return `${say(gives.steppedWorstMm)} (${say(gives.fromDatumWorstMm)} from the end)`;
      });
      reasons.unshift(
        `Measure every mark from the end. Stepped off one after the other, the worst would be off by ${worst[0]} on the inch tape, and by ${worst[1]} on the metric one.`,
      );
    }

    return {
      figures: [
        { name: 'sumMm', label: 'Sum', value: sumMm, unit: 'mm', exact: true },
        { name: 'inchTape', label: 'Sum on the inch tape', text: onInchTape(sumMm, denominator) },
        { name: 'metricTape', label: 'Sum on the metric tape', text: onMetricTape(sumMm, stepMm) },
        { name: 'partMm', label: 'One equal part', value: sumMm < 0 ? null : pitchMm, unit: 'mm' },
        { name: 'worstCaseMm', label: 'The sum is off by at most', value: worstCaseMm, unit: 'mm' },
        { name: 'rootSumSquareMm', label: 'and likely by no more than', value: rootSumSquareMm, unit: 'mm' },
      ],
      drawing: drawTapes(lengthsMm, sumMm, divided ? positionsMm : [], say),
      tables: [
        {
          caption: 'The readings on both tapes',
          columns: [
            { label: 'Reading' },
            { label: 'Distance', unit: 'mm' },
            { label: 'Inch tape' },
            { label: 'Metric tape' },
            { label: 'More than the one before', unit: 'mm' },
          ],
          rows: distancesMm.map((mm, i) => [
            `${i + 1}, ${readings[i]?.counts === 'less' ? 'taken away' : 'added'}`,
            mm,
            ...onBoth(mm),
            i === 0 ? null : sumOfReadings({ readingsMm: [mm, -(distancesMm[i - 1] as number)] }).sumMm,
          ]),
        },
        ...(divided
          ? [
              {
                caption: 'Marks for the equal parts, each from the same end',
                columns: [
                  { label: 'Mark' },
                  { label: 'From the end', unit: 'mm' as const },
                  { label: 'Inch tape' },
                  { label: 'Metric tape' },
                ],
                rows: positionsMm.map((mm, i) => [`${i + 1}`, mm, ...onBoth(mm)]),
              },
            ]
          : []),
      ],
      reasons,
      notes: sumMm < 0 ? ['More is taken away than added: there is nothing to divide.'] : [],
      steps,
    };
  },
});
